import { describe, expect, it } from 'vitest'
import type { Move } from '../../lib/record/store-diary.ts'
import { outingsOf, staysOf } from '../../lib/services/whereabouts.ts'
import { day, record } from '../database/samples.ts'

const seen = (on: string | null, box?: string) => ({
  recordedOn: on === null ? null : day(on),
  record: record('TW-1', box === undefined ? {} : { box }),
})
const moved = (on: string, move: Move, box: string | null, more: object = {}) => ({
  on: day(on),
  box,
  given: { move, ...more },
})
const stays = (...args: Parameters<typeof staysOf> extends [string, ...infer Rest] ? Rest : never) =>
  staysOf('f', ...args).map(({ box, from, to }) => [box, from, to])

describe('where a find lay', () => {
  it('is told by its records, from the day of each until the day before the next', () => {
    expect(stays([seen('2026-01-10', 'B1'), seen('2026-03-01', 'B1'), seen('2026-05-01', 'B2')], [])).toEqual(
      [
        ['B1', '2026-01-10', '2026-04-30'],
        ['B2', '2026-05-01', null],
      ],
    )
  })

  it('stays the same where a later record names no box', () => {
    expect(stays([seen('2026-01-10', 'B1'), seen('2026-03-01')], [])).toEqual([['B1', '2026-01-10', null]])
  })

  it('was ever so where the record names no day', () => {
    expect(stays([seen(null, 'B1'), seen('2026-03-01', 'B2')], [])).toEqual([
      ['B1', null, '2026-02-28'],
      ['B2', '2026-03-01', null],
    ])
  })

  it('changes with a move, also on the day of a record', () => {
    expect(stays([seen('2026-01-10', 'B1')], [moved('2026-01-10', 'to-box', 'B2')])).toEqual([
      ['B2', '2026-01-10', null],
    ])
    expect(
      stays(
        [seen('2026-01-10', 'B1')],
        [moved('2026-02-01', 'to-box', 'B2'), moved('2026-03-01', 'out', 'B2')],
      ),
    ).toEqual([
      ['B1', '2026-01-10', '2026-01-31'],
      ['B2', '2026-02-01', null],
    ])
  })

  it('is nowhere known without a box', () => {
    expect(stays([seen('2026-01-10')], [])).toEqual([])
  })
})

describe('the times a find was out', () => {
  it('end when it comes back, or is put in another box', () => {
    const out = outingsOf([
      moved('2026-01-01', 'out', 'B1', { where: 'bench', why: 'drawing' }),
      moved('2026-01-09', 'back', 'B1'),
      moved('2026-03-01', 'out', 'B1', { from_box: 'B1' }),
      moved('2026-03-05', 'to-box', 'B2'),
      moved('2026-06-01', 'out', 'B2'),
    ])
    expect(out).toEqual([
      { from: '2026-01-01', to: '2026-01-09', box: 'B1', where: 'bench', why: 'drawing' },
      { from: '2026-03-01', to: '2026-03-05', box: 'B1', where: '', why: '' },
      { from: '2026-06-01', to: null, box: 'B2', where: '', why: '' },
    ])
  })

  it('are none where nothing went out', () => {
    expect(outingsOf([moved('2026-01-09', 'back', 'B1')])).toEqual([])
  })
})
