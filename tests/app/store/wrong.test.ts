import { describe, expect, test } from 'vitest'
import { countsOf, roomsSeen } from '../../../app/store/places-of.ts'
import { mostPressingFirst, presses, wrongOf } from '../../../app/store/wrong-of.ts'
import { stopsByBox } from '../../../app/store/stops-of.ts'
import type { Standing } from '../../../lib/services/standing.ts'
import type { BoxLine } from '../../../lib/services/show-store.ts'
import { standsWords } from '../../../lib/wording/store-place.ts'
import { wrongWords } from '../../../lib/wording/store-wrong.ts'
import { day, outlook, quiet, today, tub } from './lines.ts'

const asked = { today, roundEveryDays: 90 }
const said = (line: BoxLine) => wrongOf(line, asked).map(wrongWords)
const codes = (line: BoxLine) => wrongOf(line, asked).map(({ code }) => code)

describe('what is wrong with a box', () => {
  test('nothing, where it was read lately and holds what its finds bear', () => {
    expect(said({ ...quiet, outlook })).toEqual([])
  })
  test('a strip above the limit is too damp; one that reaches over it only perhaps', () => {
    const read = (low: number, high: number): BoxLine => ({
      ...quiet,
      newest: { on: day('2026-11-20'), by: 'strip', lowRhPercent: low, highRhPercent: high },
    })
    expect(said(read(20, 30))).toEqual([
      'too damp: 20 to 30 % on a strip, 20 November 2026, and its finds bear no more than 15 %',
    ])
    expect(said(read(10, 20))[0]).toMatch(/^perhaps too damp/)
    expect(said(read(10, 15))).toEqual([])
  })
  test('drier than an organic find bears', () => {
    const dry: BoxLine = {
      ...quiet,
      needs: { min: 40, max: 55 },
      newest: { ...quiet.newest!, lowRhPercent: 20, highRhPercent: 30 },
    }
    expect(codes(dry)).toEqual(['below'])
  })
  test('a box that leaves its forecast is told by its lid, with the day', () => {
    expect(said({ ...quiet, outlook: { ...outlook, departedSince: day('2026-03-14') } })).toEqual([
      'lid probably not seated since 14 March 2026: it has left its forecast',
    ])
  })
  test('a lid that somebody saw is not guessed at besides', () => {
    const line: BoxLine = {
      ...quiet,
      lid: { state: 'not-seated', on: day('2026-11-02') },
      outlook: { ...outlook, departedSince: day('2026-03-14') },
    }
    expect(codes(line)).toEqual(['lid-not-seated'])
  })
  test('gel is past its date only when all of the stretch is', () => {
    const due = (early: string, late: string | null): BoxLine => ({
      ...quiet,
      outlook: {
        ...outlook,
        renewOn: { early: day(early), likely: null, late: late === null ? null : day(late) },
      },
    })
    expect(codes(due('2026-05-01', '2026-09-01'))).toEqual(['past-date'])
    expect(codes(due('2026-05-01', '2027-02-01'))).toEqual(['perhaps-due'])
    expect(codes(due('2026-05-01', null))).toEqual(['perhaps-due'])
    expect(codes(due('2027-02-01', '2027-05-01'))).toEqual([])
  })
  test('not read matters where a humidity is needed, and not before a round is due', () => {
    expect(said({ ...quiet, unreadSince: day('2026-06-03') })).toEqual(['not read since 3 June 2026'])
    expect(said({ ...quiet, unreadSince: null, newest: null })).toEqual(['never read'])
    expect(said({ ...quiet, unreadSince: null, newest: null, needs: null })).toEqual([])
    expect(said({ ...quiet, unreadSince: day('2026-08-27') })).toEqual([])
  })
  test('a tub past its days says how long and how long at most', () => {
    expect(said(tub)).toEqual(['55 days in water, past the 42 that wet finds should wait'])
  })
})

describe('a stop', () => {
  const stopped = (box: string, text: string, number: string) =>
    ({
      line: { box, findNumber: number, stops: [{ code: 'ammunition', text, who: 'Police' }] },
    }) as unknown as Standing
  const stops = stopsByBox([stopped('TW-B01', 'Keep away.', 'TW-7'), stopped('TW-B01', 'Keep away.', 'TW-9')])
  test('stands before everything else that is wrong, once, with the finds and whom to call', () => {
    const damp: BoxLine = { ...quiet, newest: { ...quiet.newest!, lowRhPercent: 40, highRhPercent: 50 } }
    const wrong = wrongOf(damp, { ...asked, stops: stops.get('TW-B01')! })
    expect(wrong.map(({ code }) => code)).toEqual(['stop', 'above'])
    expect(wrongWords(wrong[0]!)).toBe('stop: Keep away. Call Police. (TW-7, TW-9)')
  })
  test('a box without one has none', () => {
    expect(stops.get('TW-B02')).toBeUndefined()
  })
})

describe('the store in order', () => {
  const leaking: BoxLine = { ...quiet, outlook: { ...outlook, departedSince: day('2026-03-14') } }
  const unread: BoxLine = { ...quiet, unreadSince: null, newest: null }
  const seen = [quiet, unread, leaking].map((line) => ({ line, wrong: wrongOf(line, asked) }))
  test('most pressing first, and what only waits for a walk does not press', () => {
    expect(mostPressingFirst(seen).map(({ line }) => line)).toEqual([leaking, unread, quiet])
    expect(seen.filter(({ wrong }) => wrong.some(presses))).toHaveLength(1)
  })
  test('counts boxes, tubs and what presses; rooms keep their order', () => {
    const rooms = roomsSeen(
      {
        today,
        rooms: [
          {
            room: null,
            name: 'Metal store',
            surroundings: outlook.surroundings,
            shelves: [{ shelf: 'A', boxes: [quiet, leaking, tub] }],
          },
        ],
      },
      90,
      new Map(),
    )
    expect(rooms[0]?.counts).toEqual({ boxes: 2, finds: 36, tubs: 1, tubsPast: 1, pressing: 2, unread: 0 })
    expect(standsWords(countsOf(rooms[0]!.shelves[0]!.boxes))).toBe(
      '2 boxes with 36 finds; one tub, one past its days',
    )
  })
})
