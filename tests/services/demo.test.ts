import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { contentHash } from '../../lib/services/content-hash.ts'
import { exportFormats, type ExportFormat } from '../../lib/services/export-file.ts'
import type { Project } from '../../lib/services/kept.ts'
import { engines } from '../database/engines.ts'
import { assistant } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

describe.each(engines)('the demo on %s', (engine) => {
  let at: Stage
  let project: Project
  beforeAll(async () => {
    at = await stage(engine)
    project = value(await at.services.loadDemo(assistant)).project
  }, 240_000)
  afterAll(() => at.opened.close())

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

  it('is there once, however often it is loaded', async () => {
    const { report, project: same } = value(await at.services.loadDemo(assistant))
    expect(same.id).toBe(project.id)
    expect(report).toMatchObject({ recordsAdded: 0, findsNew: 0 })
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
