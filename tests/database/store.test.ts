import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { given, refused, type Outcome } from '../../lib/base/outcome.ts'
import { problem } from '../../lib/record/problem.ts'
import { placeOf } from '../../lib/services/find-query.ts'
import type { Writes } from '../../lib/services/ports.ts'
import type { Trouble } from '../../lib/base/trouble.ts'
import { engines, openEmpty, type Opened } from './engines.ts'
import { assistant, conservator, day, record, standing } from './samples.ts'

const unnamed = (row: number) => problem('no-find-number', { row, field: 'find_number' }, '')

function value<Value>(outcome: Outcome<Value, Trouble>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

describe.each(engines)('the store on %s', (engine) => {
  let opened: Opened
  beforeAll(async () => {
    opened = await openEmpty(engine)
  })
  afterAll(() => opened.close())

  const write = async <Value>(work: (writes: Writes) => Promise<Value>, what = 'test') =>
    value(await opened.store.write(what, assistant, async (writes) => given(await work(writes))))

  const project = (name: string) => write((writes) => writes.projects.add({ name, invented: true }))

  const finds = (projectId: string, numbers: readonly string[]) =>
    write(async (writes) => writes.finds.ensure(await writes.sites.ensure(projectId, 'TW'), numbers))

  it('keeps a project once, however often it is named', async () => {
    const [one, same] = [await project('Twice'), await project('Twice')]
    expect(same.id).toBe(one.id)
    expect(one).toMatchObject({ name: 'Twice', invented: true, version: 1 })
  })

  it('gives finds in the order asked, known and new alike', async () => {
    const { id } = await project('Order')
    const first = await finds(id, ['TW-2', 'TW-1'])
    const again = await finds(id, ['TW-1', 'TW-3', 'TW-2'])
    expect(again.map(({ findNumber }) => findNumber)).toEqual(['TW-1', 'TW-3', 'TW-2'])
    expect(again[2]!.id).toBe(first[0]!.id)
  })

  it('pages finds by number as a person counts', async () => {
    const { id } = await project('Count')
    await finds(id, ['TW-10', 'TW-9', 'TW-100', 'TW-2'])
    const first = value(await opened.store.read(async (reads) => given(await reads.finds.page(id, null, 2))))
    const rest = value(
      await opened.store.read(async (reads) => given(await reads.finds.page(id, first[1]!, 9))),
    )
    expect([...first, ...rest].map(({ findNumber }) => findNumber)).toEqual([
      'TW-2',
      'TW-9',
      'TW-10',
      'TW-100',
    ])
  })

  it('adds a record once and another of the same day beside it', async () => {
    const { id } = await project('Records')
    const [find] = await finds(id, ['TW-1'])
    const add = (contentHash: string, notes: string) =>
      write((writes) =>
        writes.records.add([
          {
            findId: find!.id,
            record: record('TW-1', { recorded_on: day('2026-03-01'), notes }),
            contentHash,
            importId: null,
          },
        ]),
      )
    expect(await add('a', 'wet')).toHaveLength(1)
    expect(await add('a', 'wet')).toHaveLength(0)
    expect(await add('b', 'dry')).toHaveLength(1)
    const kept = value(
      await opened.store.read(async (reads) => given(await reads.records.ofFinds([find!.id]))),
    )
    expect(kept.map(({ record: { notes } }) => notes)).toEqual(['wet', 'dry'])
    expect(kept[0]).toMatchObject({ recordedOn: '2026-03-01', by: assistant, version: 1 })
  })

  it('writes thousands of rows in one go', async () => {
    const { id } = await project('Many')
    const many = await finds(
      id,
      Array.from({ length: 2500 }, (_, at) => `TW-${at}`),
    )
    const added = await write((writes) =>
      writes.records.add(
        many.map((find) => ({
          findId: find.id,
          record: record(find.findNumber),
          contentHash: 'x',
          importId: null,
        })),
      ),
    )
    expect(new Set(added).size).toBe(2500)
    const back = value(
      await opened.store.read(async (reads) => given(await reads.records.ofFinds(many.map((one) => one.id)))),
    )
    expect(back).toHaveLength(2500)
  })

  it('keeps nothing of what is refused', async () => {
    const outcome = await opened.store.write('refused', assistant, async (writes) => {
      await writes.projects.add({ name: 'Never', invented: false })
      return refused<Trouble>({ kind: 'missing', what: 'find', id: 'x' })
    })
    expect(outcome).toEqual({ ok: false, problems: { kind: 'missing', what: 'find', id: 'x' } })
    expect(
      value(await opened.store.read(async (reads) => given(await reads.projects.byName('Never')))),
    ).toBeNull()
  })

  it('keeps nothing of what breaks half way, and throws on', async () => {
    const broken = opened.store.write('broken', assistant, async (writes) => {
      await writes.projects.add({ name: 'Half', invented: false })
      throw new Error('ours')
    })
    await expect(broken).rejects.toThrow('ours')
    expect(
      value(await opened.store.read(async (reads) => given(await reads.projects.byName('Half')))),
    ).toBeNull()
  })

  it('refuses a contact that somebody else changed meanwhile', async () => {
    const { id } = await project('Contacts')
    const site = await write((writes) => writes.sites.ensure(id, 'TW'))
    const keep = (name: string, version: number | null) =>
      opened.store.write('keep-contact', conservator, (writes) =>
        writes.sites.keepContact(site.id, { kind: 'conservator', name, reach: '01', version }),
      )
    const first = value(await keep('First', null))
    expect(await keep('Second', 1)).toMatchObject({ ok: true })
    expect(await keep('Late', 1)).toEqual({
      ok: false,
      problems: { kind: 'changed-meanwhile', what: 'contact', id: first.id },
    })
    const [contact] = value(await opened.store.read(async (reads) => given(await reads.sites.contacts(id))))
    expect(contact).toMatchObject({ name: 'Second', version: 2 })
  })

  it('lists by urgency, then by day, then by number, page after page', async () => {
    const { id } = await project('List')
    const made = await finds(id, ['TW-1', 'TW-2', 'TW-3', 'TW-4', 'TW-5'])
    await write(async (writes) => {
      const urgent = [
        ['routine', null],
        ['days', '2026-11-27'],
        ['now', null],
        ['days', '2026-11-26'],
        ['days', null],
      ] as const
      const records = await writes.records.add(
        made.map((find) => ({
          findId: find.id,
          record: record(find.findNumber),
          contentHash: 'x',
          importId: null,
        })),
      )
      await writes.standings.keep(
        made.map((find, at) => {
          const [urgency, due] = urgent[at]!
          return standing(find, records[at]!, { urgency, dueOn: due === null ? null : day(due) })
        }),
      )
    })
    const list = async (after?: ReturnType<typeof placeOf>) =>
      value(
        await opened.store.read(async (reads) =>
          given(
            await reads.standings.list({
              projectId: id,
              order: 'urgency',
              limit: 2,
              ...(after ? { after } : {}),
            }),
          ),
        ),
      )
    const seen: string[] = []
    for (let page = await list(); page.length > 0; page = await list(placeOf(page.at(-1)!))) {
      seen.push(...page.map(({ line }) => line.findNumber))
    }
    expect(seen).toEqual(['TW-3', 'TW-4', 'TW-2', 'TW-5', 'TW-1'])
    const counts = value(await opened.store.read(async (reads) => given(await reads.standings.byUrgency(id))))
    expect(counts).toEqual([
      { urgency: 'now', finds: 1, stops: 0 },
      { urgency: 'days', finds: 3, stops: 0 },
      { urgency: 'routine', finds: 1, stops: 0 },
    ])
  })

  it('finds by words, where % and _ stand for themselves', async () => {
    const { id } = await project('Search')
    const made = await finds(id, ['TW-1', 'TW-2'])
    await write(async (writes) => {
      const records = await writes.records.add(
        made.map((find) => ({
          findId: find.id,
          record: record(find.findNumber),
          contentHash: 'x',
          importId: null,
        })),
      )
      await writes.standings.keep([
        standing(made[0]!, records[0]!, {}, { search: 'tw-1 clé 100% pure' }),
        standing(made[1]!, records[1]!, {}, { search: 'tw-2 cle_x', band: 'wet' }),
      ])
    })
    const search = async (words: string) =>
      value(
        await opened.store.read(async (reads) =>
          given(
            (await reads.standings.list({ projectId: id, order: 'number', search: words, limit: 9 })).map(
              ({ line }) => line.findNumber,
            ),
          ),
        ),
      )
    expect(await search('100%')).toEqual(['TW-1'])
    expect(await search('_')).toEqual(['TW-2'])
    expect(await search('tw cle')).toEqual(['TW-2'])
    expect(await search('!')).toEqual([])
    const bands = value(await opened.store.read(async (reads) => given(await reads.standings.byBand(id))))
    expect(Object.fromEntries(bands.map(({ band, finds: number }) => [band, number]))).toEqual({
      wet: 1,
      '0-12': 1,
    })
    expect(bands.map(({ rhPercent }) => rhPercent)).toEqual(
      expect.arrayContaining([null, { min: 0, max: 12 }]),
    )
  })

  it('replaces a standing and tells which are out of date', async () => {
    const { id } = await project('Standing')
    const [find] = await finds(id, ['TW-1'])
    await write(async (writes) => {
      const [recordId] = await writes.records.add([
        { findId: find!.id, record: record('TW-1'), contentHash: 'x', importId: null },
      ])
      await writes.standings.keep([standing(find!, recordId!)])
      await writes.standings.keep([standing(find!, recordId!, { urgency: 'now' })])
    })
    const late = async (asOf: string, knowledge: string) =>
      value(
        await opened.store.read(async (reads) =>
          given(await reads.standings.outOfDate(id, day(asOf), knowledge, 9)),
        ),
      ).length
    expect(await late('2026-11-25', 'sha256-one')).toBe(0)
    expect(await late('2026-11-26', 'sha256-one')).toBe(1)
    expect(await late('2026-11-25', 'sha256-two')).toBe(1)
  })

  it('keeps an import with its rejected rows, to be fetched in slices', async () => {
    const { id } = await project('Import')
    const importId = await write(async (writes) => {
      const batch = await writes.imports.begin({
        projectId: id,
        fileName: 'bag 4.csv',
        sha256: 'abc',
        kind: 'csv',
        headings: ['find_number', 'material'],
      })
      await writes.imports.reject(
        batch,
        [7, 3, 9].map((row) => ({ row, line: null, cells: ['', 'iron'], problems: [unnamed(row)] })),
      )
      await writes.imports.finish(batch, {
        recordsRead: 6,
        recordsAdded: 6,
        recordsAlreadyThere: 0,
        rowsRejected: 3,
        problems: 3,
      })
      return batch
    })
    const rows = value(
      await opened.store.read(async (reads) => given(await reads.imports.rejected(importId, 3, 9))),
    )
    expect(rows.map(({ row }) => row)).toEqual([7, 9])
    expect(rows[0]).toEqual({ row: 7, line: null, cells: ['', 'iron'], problems: [unnamed(7)] })
    const batch = value(await opened.store.read(async (reads) => given(await reads.imports.byId(importId))))
    expect(batch).toMatchObject({
      fileName: 'bag 4.csv',
      headings: ['find_number', 'material'],
      recordsAdded: 6,
      rowsRejected: 3,
      by: assistant,
    })
  })

  it('keeps rooms and boxes by name and notices who was faster', async () => {
    const { id } = await project('Places')
    const rooms = [{ given: { room: 'Cold', rh_low: 35, rh_high: 42.5 }, version: null }]
    await write((writes) => writes.rooms.keep(id, rooms))
    await write((writes) => writes.rooms.keep(id, rooms))
    const box = { given: { box: 'B1', room: 'Cold', volume_l: 10.5 }, version: null }
    await write((writes) => writes.boxes.keep(id, [box]))
    const [late] = await write((writes) => writes.boxes.keep(id, [{ ...box, version: 9 }]))
    expect(late).toMatchObject({ ok: false, problems: { kind: 'changed-meanwhile', what: 'box' } })
    const [room] = value(await opened.store.read(async (reads) => given(await reads.rooms.ofProject(id))))
    expect(room).toMatchObject({ given: { room: 'Cold', rh_low: 35, rh_high: 42.5 }, version: 2 })
    const [kept] = value(await opened.store.read(async (reads) => given(await reads.boxes.ofProject(id))))
    expect(kept).toMatchObject({ given: { box: 'B1', room: 'Cold', volume_l: 10.5 }, version: 1 })
  })

  it('leaves one line in the trail for each transaction, with who, role, device and what', async () => {
    await write(async (writes) => {
      const made = await writes.projects.add({ name: 'Trail', invented: false })
      await writes.sites.ensure(made.id, 'A')
    }, 'start-project')
    const [line] = value(await opened.store.read(async (reads) => given(await reads.changes.latest(1))))
    expect(line).toMatchObject({ what: 'start-project', by: assistant })
    expect(line!.touched.map(({ table, verb, count }) => [table, verb, count])).toEqual([
      ['project', 'added', 1],
      ['site', 'added', 1],
    ])
    expect(line!.at).toBeGreaterThan(Date.parse('2026-01-01'))
  })

  it('lets two writers at the same moment both succeed', async () => {
    const { id } = await project('Both')
    const made = await Promise.all([finds(id, ['TW-1', 'TW-2']), finds(id, ['TW-2', 'TW-1'])])
    expect(made[0][0]!.id).toBe(made[1][1]!.id)
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(opened.strays()).toEqual([])
  })
})
