import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { engines } from '../database/engines.ts'
import { assistant } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const bag = [
  'site_code,find_number,object,burial,state_now,recorded_on,component,material,seen,notes',
  'TW,TW-1,nail,free-draining,dry,2026-03-01,body,iron,orange-brown-crust,',
  'TW,TW-2,knife,waterlogged,wet,2026-03-01,blade,iron,orange-brown-crust,',
  'TW,TW-2,,,,,handle,wood,,',
  'TW,,,,,,body,iron,,looks like a grenade',
  'TW,TW-4,pin,damp,dry,2026-03-01,body,bronz,pale-green-powder,',
  '',
].join('\n')

describe.each(engines)('importing a file on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string) => value(await at.services.startProject({ name }, assistant)).id
  const give = async (projectId: string, text: string, dryRun = false) =>
    value(
      await at.services.importFile({ projectId, fileName: 'bag.csv', bytes: bytes(text), dryRun }, assistant),
    )
  const total = async (projectId: string) =>
    value(await at.services.listFinds({ projectId, order: 'number' })).total

  it('tells in a dry run what it would do, and keeps nothing', async () => {
    const id = await project('Dry run')
    const report = await give(id, bag, true)
    expect(report).toMatchObject({
      dryRun: true,
      importId: null,
      recordsRead: 3,
      recordsAdded: 3,
      findsNew: 3,
    })
    expect(report.unreadableRows.map(({ row }) => row)).toEqual([5])
    expect(await total(id)).toBe(0)
    expect(value(await at.services.listImports(id))).toEqual([])
  })

  it('keeps every readable record, and the same file again adds nothing', async () => {
    const id = await project('Again')
    expect(await give(id, bag)).toMatchObject({ recordsAdded: 3, recordsAlreadyThere: 0, findsNew: 3 })
    expect(await give(id, bag)).toMatchObject({ recordsAdded: 0, recordsAlreadyThere: 3, findsNew: 0 })
    expect(await total(id)).toBe(3)
  })

  it('keeps a different record of the same find and day as a further one', async () => {
    const id = await project('Further')
    await give(id, bag)
    const other = bag.replace('orange-brown-crust,\n', 'orange-droplets,\n')
    expect(await give(id, other)).toMatchObject({ recordsAdded: 1, recordsAlreadyThere: 2, findsNew: 0 })
    const [nail] = value(
      await at.services.listFinds({ projectId: id, order: 'number', search: 'tw-1' }),
    ).finds
    const { history } = value(await at.services.showFind({ findId: nail!.findId }))
    expect(history.map(({ kept }) => kept.record.components[0]!.seen)).toEqual([
      ['orange-droplets'],
      ['orange-brown-crust'],
    ])
  })

  it('says a stop that stands in a row it could not read', async () => {
    const { stops } = await give(await project('Stop'), bag, true)
    expect(stops).toHaveLength(1)
    expect(stops[0]).toMatchObject({ row: 5, caution: { code: 'ammunition', level: 'stop' } })
  })

  it('hands unreadable rows back to be mended, and reads them when they are', async () => {
    const id = await project('Mend')
    const { importId } = await give(id, bag)
    const [batch] = value(await at.services.listImports(id))
    expect(batch).toMatchObject({
      id: importId,
      fileName: 'bag.csv',
      rowsRejected: 1,
      recordsAdded: 3,
      by: assistant,
    })
    const file = value(await at.services.rejectedRows(importId!))
    expect(file.fileName).toBe('bag - to mend.csv')
    expect(file.text).toContain('looks like a grenade')
    const mended = file.text.replace('TW,,', 'TW,TW-9,')
    expect(await give(id, mended)).toMatchObject({ recordsAdded: 1, findsNew: 1 })
    const [grenade] = value(await at.services.listFinds({ projectId: id, order: 'urgency' })).finds
    expect(grenade!.line).toMatchObject({ findNumber: 'TW-9', urgency: 'now' })
  })

  it.each([
    ['an empty file', '', 'empty-file'],
    ['headings without rows', 'find_number,material\n', 'header-only'],
    ['a web page', '<!doctype html><html><body>no</body></html>', 'not-a-table'],
  ])('tells what is wrong with %s, and begins no import', async (name, text, code) => {
    const id = await project(name)
    const report = await give(id, text)
    expect(report).toMatchObject({ importId: null, recordsRead: 0, recordsAdded: 0 })
    expect(report.problems.map((one) => one.code)).toContain(code)
    expect(value(await at.services.listImports(id))).toEqual([])
  })

  it('tells its progress to the end', async () => {
    const id = await project('Progress')
    const rows = Array.from({ length: 450 }, (_, row) => `TW,TW-${row},iron`).join('\n')
    const told: (readonly [number, number])[] = []
    const onProgress = (done: number, of: number) => void told.push([done, of])
    const text = bytes(`site_code,find_number,material\n${rows}`)
    value(
      await at.services.importFile(
        { projectId: id, fileName: 'a.csv', bytes: text, dryRun: false, onProgress },
        assistant,
      ),
    )
    expect(told).toEqual([
      [200, 450],
      [400, 450],
      [450, 450],
    ])
    expect(await total(id)).toBe(450)
  })

  it('asks for a project that is there', async () => {
    const answer = await at.services.importFile(
      { projectId: 'none', fileName: 'a.csv', bytes: bytes(bag), dryRun: false },
      assistant,
    )
    expect(answer).toEqual({ ok: false, problems: { kind: 'missing', what: 'project', id: 'none' } })
  })

  it('tries a file for a project that is not begun yet, and does not begin it', async () => {
    const file = { projectId: null, fileName: 'bag.csv', bytes: bytes(bag) }
    const tried = value(await at.services.importFile({ ...file, dryRun: true }, assistant))
    expect(tried).toMatchObject({ recordsAdded: 3, findsNew: 3, importId: null })
    expect(value(await at.services.findProject({ name: 'Only tried' }))).toBeNull()
    expect((await at.services.importFile({ ...file, dryRun: false }, assistant)).ok).toBe(false)
  })

  it('reads a large file row by row to the same end as a small one', async () => {
    const id = await project('Large')
    const filler = 'a'.repeat(400)
    const rows = Array.from({ length: 22_000 }, (_, row) => `TW,TW-${row % 300},${filler},iron`)
    const small = bytes(['site_code,find_number,notes,material', ...rows.slice(0, 300)].join('\n'))
    const large = bytes(['site_code,find_number,notes,material', ...rows].join('\n'))
    expect(large.length).toBeGreaterThan(8 * 1024 * 1024)
    const dry = (content: Uint8Array) =>
      at.services.importFile({ projectId: id, fileName: 'l.csv', bytes: content, dryRun: true }, assistant)
    const [one, other] = [value(await dry(small)), value(await dry(large))]
    expect([one.recordsRead, other.recordsRead, other.file.kind]).toEqual([300, 300, 'csv'])
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
