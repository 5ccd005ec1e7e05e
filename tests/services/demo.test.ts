import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { daysBetween } from '../../lib/base/calendar.ts'
import { given } from '../../lib/base/outcome.ts'
import { contentHash } from '../../lib/services/content-hash.ts'
import { exportFormats, type ExportFormat } from '../../lib/services/export-file.ts'
import type { Project } from '../../lib/services/kept.ts'
import { engines } from '../database/engines.ts'
import { assistant } from '../database/samples.ts'
import { assemblage } from '../demo/assemblage.ts'
import { trueAir } from '../demo/files.ts'
import { looseLid } from '../demo/store-true.ts'
import { bytes, stage, value, type Stage } from './world.ts'

describe.each(engines)('the demo on %s', (engine) => {
  let at: Stage
  let project: Project
  beforeAll(async () => {
    at = await stage(engine)
    project = value(await at.services.loadDemo(assistant)).project
  }, 240_000)
  afterAll(() => at.opened.close())

  const counts = async () =>
    value(
      await at.opened.store.read(async (reads) =>
        given({
          entries: (await reads.diary.list({ projectId: project.id })).length,
          files: (await reads.logFiles.ofProject(project.id)).length,
          loggers: (await reads.loggers.ofProject(project.id)).map(({ version }) => version),
          boxes: (await reads.boxes.ofProject(project.id)).map(({ version }) => version),
        }),
      ),
    )

  const hashes = async (projectId: string) => {
    const all: string[] = []
    for await (const slice of at.services.exportRecords(projectId)) {
      for (const { records } of value(slice)) all.push(...records.map(({ record }) => contentHash(record)))
    }
    return all.toSorted()
  }

  it('is marked as invented and holds what the issue asks', async () => {
    expect(project.invented).toBe(true)
    const { total } = value(await at.services.listFinds({ projectId: project.id, order: 'number', limit: 1 }))
    expect(total).toBeGreaterThanOrEqual(600)
    const { rooms, boxes } = value(await at.services.listPlaces(project.id))
    expect(rooms.length).toBeGreaterThanOrEqual(4)
    expect(boxes.length).toBeGreaterThanOrEqual(60)
    expect(boxes.some(({ total: finds }) => finds > 0)).toBe(true)
  })

  it('has a store that is lived in: loggers, rounds, a diary and readings', async () => {
    const store = value(await at.services.showStore(project.id))
    const boxes = store.rooms.flatMap(({ shelves }) => shelves.flatMap(({ boxes: own }) => own))
    expect(boxes).toHaveLength(60)
    expect(boxes.filter(({ newest }) => newest !== null).length).toBeGreaterThan(40)
    expect(boxes.filter(({ tub }) => tub?.pastItsDays).length).toBeGreaterThan(1)
    expect(boxes.filter(({ out }) => out > 0).map(({ box }) => box.given.box)).toEqual(['TW-B29'])
    expect(store.loggers).toHaveLength(12)
    expect(store.loggers.filter(({ calibrationOverdue }) => calibrationOverdue)).toHaveLength(1)
    expect(store.loggers.filter(({ readings }) => readings > 1000)).toHaveLength(4)
    expect(store.setting).toMatchObject({ timeZone: 'Europe/London' })
    expect(store.unlisted).toEqual([])
    const loose = boxes.find(({ box }) => box.given.box === 'TW-B10')!
    const shown = value(await at.services.showBox({ boxId: loose.box.id }))
    expect(shown.gel).toHaveLength(2)
    expect(shown.excursions.length).toBeGreaterThan(0)
    expect(shown.excursions[0]!.meanings.length).toBeGreaterThan(0)
  })

  it('has one box that left its forecast, on the day its lid was left loose', async () => {
    const store = value(await at.services.showStore(project.id))
    const boxes = store.rooms.flatMap(({ shelves }) => shelves.flatMap(({ boxes: own }) => own))
    const left = boxes.filter(({ outlook }) => outlook?.departedSince)
    expect(left.map(({ box }) => box.given.box)).toEqual([looseLid.box])
    const off = daysBetween(looseLid.since, left[0]!.outlook!.departedSince!)
    expect(Math.abs(off)).toBeLessThanOrEqual(7)
    expect(store.logTells.length).toBeGreaterThan(0)
    expect(store.logTells.every(({ box }) => store.logNext.includes(box))).toBe(true)
  })

  it('is told of what the boxes hold as it really is, in most of them', async () => {
    const store = value(await at.services.showStore(project.id))
    const truth = trueAir(assemblage().boxes)
    const told = store.rooms
      .flatMap(({ shelves }) => shelves.flatMap(({ boxes }) => boxes))
      .flatMap(({ box, outlook }) => (outlook ? [{ box: box.given.box, ...outlook.nowRhPercent }] : []))
    const within = told.filter(({ box, p10, p90 }) => {
      const really = truth.box(box, truth.days - 1)
      return really >= p10 && really <= p90
    })
    expect(told.length).toBeGreaterThan(20)
    // Eight in ten, and what chance leaves of so few.
    expect(within.length / told.length).toBeGreaterThan(0.65)
  })

  it('is there once, however often it is loaded', async () => {
    const before = await counts()
    const { report, project: same } = value(await at.services.loadDemo(assistant))
    expect(same.id).toBe(project.id)
    expect(report).toMatchObject({ recordsAdded: 0, findsNew: 0 })
    const again = await counts()
    expect(again).toEqual(before)
  }, 240_000)

  it.each(exportFormats)(
    'leaves as %s and comes back as the same records',
    async (format: ExportFormat) => {
      const pieces: Uint8Array[] = []
      for await (const piece of at.services.exportFile({ projectId: project.id, format })) {
        const part = value(piece)
        pieces.push(typeof part === 'string' ? bytes(part) : part)
      }
      const copy = value(await at.services.startProject({ name: `Copy by ${format}` }, assistant))
      const file = {
        projectId: copy.id,
        fileName: `copy.${format}`,
        bytes: Buffer.concat(pieces),
        dryRun: false,
      }
      const report = value(await at.services.importFile(file, assistant))
      expect(report.unreadableRows).toEqual([])
      expect(await hashes(copy.id)).toEqual(await hashes(project.id))
    },
    240_000,
  )

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
