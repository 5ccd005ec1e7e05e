import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { given, refused, type Outcome } from '../../lib/base/outcome.ts'
import type { Trouble } from '../../lib/base/trouble.ts'
import { hashed } from '../../lib/services/diary-hash.ts'
import type { NewEntry } from '../../lib/services/diary.ts'
import type { Writes } from '../../lib/services/ports.ts'
import { nothingSet } from '../../lib/services/store-setting.ts'
import { engines, openEmpty, type Opened } from './engines.ts'
import { assistant, day } from './samples.ts'

function value<Value>(outcome: Outcome<Value, Trouble>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

describe.each(engines)("the store's own tables on %s", (engine) => {
  let opened: Opened
  beforeAll(async () => {
    opened = await openEmpty(engine)
  })
  afterAll(() => opened.close())

  const write = async <Value>(work: (writes: Writes) => Promise<Value>) =>
    value(await opened.store.write('test', assistant, async (writes) => given(await work(writes))))
  const project = async (name: string) =>
    (await write((writes) => writes.projects.add({ name, invented: true }))).id
  const logger = async (projectId: string, serial: string) => {
    await write((writes) => writes.loggers.keep(projectId, [{ given: { serial, stood: [] }, version: null }]))
    return (await write((writes) => writes.loggers.bySerials(projectId, [serial])))[0]!
  }
  const round = (box: string, more: Partial<NewEntry> = {}): NewEntry =>
    ({
      kind: 'round',
      box,
      room: null,
      findId: null,
      on: day('2026-03-01'),
      atMs: null,
      given: {},
      ...more,
    }) as NewEntry

  it('hold an entry of the diary once, in the order in which it was told', async () => {
    const id = await project('Diary')
    const entries = ['B3', 'B1', 'B2'].map((box) => hashed(round(box)))
    expect(await write((writes) => writes.diary.add(id, entries))).toHaveLength(3)
    expect(await write((writes) => writes.diary.add(id, [...entries, hashed(round('B4'))]))).toHaveLength(1)
    const list = await write((writes) => writes.diary.list({ projectId: id }))
    expect(list.map(({ box }) => box)).toEqual(['B3', 'B1', 'B2', 'B4'])
    const moments = [hashed(round('B5', { atMs: 9 })), hashed(round('B6', { atMs: 3 }))]
    await write((writes) => writes.diary.add(id, moments))
    const some = await write((writes) => writes.diary.list({ projectId: id, boxes: ['B5', 'B6', 'B9'] }))
    expect(some.map(({ box }) => box)).toEqual(['B6', 'B5'])
  })

  it('narrow the diary by kind, day, room and find', async () => {
    const id = await project('Narrow')
    const water: NewEntry = {
      kind: 'flood',
      box: null,
      room: 'Cold',
      findId: null,
      on: day('2026-04-01'),
      atMs: null,
      given: { cause: 'leak' },
    }
    await write((writes) => writes.diary.add(id, [hashed(round('B1')), hashed(water)]))
    const kinds = async (query: object) =>
      (await write((writes) => writes.diary.list({ projectId: id, ...query }))).map(({ kind }) => kind)
    expect(await kinds({ kinds: ['flood'] })).toEqual(['flood'])
    expect(await kinds({ rooms: ['Cold'] })).toEqual(['flood'])
    expect(await kinds({ to: day('2026-03-31') })).toEqual(['round'])
    expect(await kinds({ findIds: ['none'] })).toEqual([])
  })

  it('refuse all days of readings where one was written meanwhile', async () => {
    const { id } = await logger(await project('Readings'), 'L1')
    const reading = (text: string, on = '2026-03-01') => ({
      loggerId: id,
      channel: '',
      day: day(on),
      block: text,
      sketch: '{}',
    })
    expect(await write((writes) => writes.readings.keep([{ ...reading('one'), version: null }]))).toEqual(
      given(null),
    )
    const again = await write((writes) => writes.readings.keep([{ ...reading('two'), version: null }]))
    expect(again).toMatchObject({ ok: false, problems: { kind: 'changed-meanwhile', what: 'logger' } })
    expect(await write((writes) => writes.readings.keep([{ ...reading('three'), version: 1 }]))).toEqual(
      given(null),
    )
    const late = await opened.store.write('test', assistant, async (writes) => {
      const kept = await writes.readings.keep([
        { ...reading('new', '2026-03-02'), version: null },
        { ...reading('four'), version: 1 },
      ])
      return kept.ok ? kept : refused(kept.problems)
    })
    expect(late).toMatchObject({ ok: false, problems: { kind: 'changed-meanwhile' } })
    const days = await write((writes) => writes.readings.days({ loggerId: id, channel: '' }))
    expect(days.map(({ day: on, block, version }) => [on, block, version])).toEqual([
      ['2026-03-01', 'three', 2],
    ])
    expect(await write((writes) => writes.readings.extents([id]))).toMatchObject([
      { firstDay: '2026-03-01', days: 1 },
    ])
    await write((writes) => writes.readings.clear([id]))
    expect(await write((writes) => writes.readings.extents([id]))).toEqual([])
  })

  it('hold a file once, whatever it is called', async () => {
    const projectId = await project('Files')
    const file = {
      projectId,
      name: 'a.csv',
      sha256: 'abc',
      bytes: 3,
      answers: { read: { timeZone: null, dateOrder: null, temperatureUnit: null }, serials: {} },
      brought: [],
      packed: ['x', 'y'],
    }
    const first = await write((writes) => writes.logFiles.add(file))
    expect(await write((writes) => writes.logFiles.add({ ...file, name: 'b.csv' }))).toBeNull()
    expect(await write((writes) => writes.logFiles.packed(first!))).toEqual(['x', 'y'])
    const [kept] = await write((writes) => writes.logFiles.ofProject(projectId))
    expect(kept).toMatchObject({ name: 'a.csv', by: assistant })
    const anew = { answers: { ...file.answers, serials: { '': 'L1' } }, brought: [] }
    expect((await write((writes) => writes.logFiles.readAnew(kept!, anew))).ok).toBe(true)
    expect(await write((writes) => writes.logFiles.readAnew(kept!, anew))).toMatchObject({
      ok: false,
      problems: { kind: 'changed-meanwhile', what: 'log file' },
    })
  })

  it('hold where finds lay as it was last made, and nothing else', async () => {
    const projectId = await project('Stays')
    const [find] = await write(async (writes) =>
      writes.finds.ensure(await writes.sites.ensure(projectId, 'TW'), ['TW-1']),
    )
    const stay = (box: string, from: string | null, to: string | null) => ({
      findId: find!.id,
      box,
      from: from === null ? null : day(from),
      to: to === null ? null : day(to),
    })
    const first = [stay('B1', null, '2026-01-31'), stay('B2', '2026-02-01', null)]
    await write((writes) => writes.stays.keep(projectId, [find!.id], first))
    expect(await write((writes) => writes.stays.ofFinds([find!.id]))).toEqual(first)
    await write((writes) => writes.stays.keep(projectId, [find!.id], [stay('B3', null, null)]))
    expect(await write((writes) => writes.stays.inBoxes(projectId, ['B1', 'B2']))).toEqual([])
    expect(await write((writes) => writes.stays.inBoxes(projectId, ['B3']))).toEqual([stay('B3', null, null)])
  })

  it('hold one setting of a project, by its version', async () => {
    const projectId = await project('Setting')
    const keep = (gelDryKg: number, version: number | null) =>
      write((writes) => writes.settings.keep(projectId, { given: { ...nothingSet, gelDryKg }, version }))
    expect((await keep(1, null)).ok).toBe(true)
    expect((await keep(2, 1)).ok).toBe(true)
    expect(await keep(3, 1)).toMatchObject({ ok: false, problems: { what: 'store setting' } })
    expect(await write((writes) => writes.settings.ofProject(projectId))).toMatchObject({
      version: 2,
      given: { gelDryKg: 2 },
    })
  })

  it('have sent nothing outside the SQL that all engines share', () => {
    expect(opened.strays()).toEqual([])
  })
})
