import fs from 'node:fs/promises'
import path from 'node:path'
import { given, refused } from '../base/outcome.ts'
import { type Answer } from '../base/trouble.ts'
import { noAnswers } from '../logger/read/log-answers.ts'
import { enterIdentifications } from './identification-table.ts'
import { importFile, type FileToImport, type ImportReport } from './import-file.ts'
import { keepLog, type LogToKeep } from './keep-log.ts'
import { keepPlaces } from './keep-places.ts'
import { keepStoreSetting } from './keep-store-setting.ts'
import type { Actor, Project } from './kept.ts'
import type { World } from './ports.ts'
import type { StoreSettingGiven } from './store-setting.ts'

const files = {
  places: ['rooms.csv', 'boxes.csv', 'loggers.csv', 'rounds.csv'],
  finds: 'tollgate-wharf.csv',
  /** Names finds, so it comes after them. */
  diary: 'diary.csv',
  identifications: 'identifications.csv',
} as const

const zone = { ...noAnswers, timeZone: 'Europe/London' } as const

/** Logger files, and what a person would answer where they leave a question open. */
const logs: readonly Pick<LogToKeep, 'name' | 'answers' | 'serials'>[] = [
  { name: 'metal-store-room.csv', answers: zone },
  { name: 'box-10.txt', answers: zone },
  { name: 'box-5-stick.txt', answers: { ...zone, timeZone: 'UTC' } },
  { name: 'box-22.txt', answers: zone, serials: { '': 'TW-L05' } },
]

const setting: Partial<StoreSettingGiven> = {
  timeZone: 'Europe/London',
  gelDryKg: 12,
  gelSpentKg: 6.5,
  ovenKgPerBatch: 3,
  ovenHoursPerBatch: 5,
  ovenBatchesPerWeek: 2,
  minutesPerBox: 20,
  hoursPerWeek: 4,
}

export interface DemoLoaded {
  readonly project: Project
  readonly report: ImportReport
}

/** Tollgate Wharf, invented, into a project of its own; loaded twice it is there once. */
export async function loadDemo(
  world: World,
  by: Actor,
  onProgress?: FileToImport['onProgress'],
): Answer<DemoLoaded> {
  const bytesOf = (...name: readonly string[]) =>
    fs.readFile(path.join(world.root, 'content', 'demo', ...name))
  const begun = await world.store.write('load-demo', by, async (writes) =>
    given(await writes.projects.add({ name: 'Tollgate Wharf', invented: true })),
  )
  if (!begun.ok) return begun
  const project = begun.value
  // A person's own project of the same name is not to be filled with invented finds.
  if (!project.invented) return refused({ kind: 'not-accepted', field: 'name', because: 'taken' })
  const projectId = project.id
  const keepTable = async (fileName: string) =>
    keepPlaces(world, { projectId, fileName, bytes: await bytesOf(fileName) }, by)
  for (const name of files.places) {
    const kept = await keepTable(name)
    if (!kept.ok) return kept
  }
  const finds = await bytesOf(files.finds)
  const file = { projectId, fileName: files.finds, bytes: finds, dryRun: false }
  const imported = await importFile(world, onProgress ? { ...file, onProgress } : file, by)
  if (!imported.ok) return imported
  const diary = await keepTable(files.diary)
  if (!diary.ok) return diary
  const known = { projectId, bytes: await bytesOf(files.identifications) }
  const identified = await enterIdentifications(world, known, by)
  if (!identified.ok) return identified
  const run = await runStore(world, projectId, by)
  if (!run.ok) return run
  for (const log of logs) {
    const bytes = await bytesOf('logs', log.name)
    const kept = await keepLog(world, { projectId, bytes, ...log }, by)
    if (!kept.ok) return kept
  }
  return given({ project, report: imported.value })
}

/** How the invented store is run, once: whoever tries something else keeps it. */
async function runStore(world: World, projectId: string, by: Actor): Answer<null> {
  const known = await world.store.read(async (reads) => given(await reads.settings.ofProject(projectId)))
  if (!known.ok) return known
  if (known.value !== null) return given(null)
  const kept = await keepStoreSetting(world, { projectId, setting, version: null }, by)
  return kept.ok ? given(null) : kept
}
