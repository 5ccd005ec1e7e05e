import fs from 'node:fs/promises'
import path from 'node:path'
import { given, refused } from '../base/outcome.ts'
import { type Answer } from '../base/trouble.ts'
import { importFile, type FileToImport, type ImportReport } from './import-file.ts'
import { keepPlaces } from './keep-places.ts'
import type { Actor, Project } from './kept.ts'
import type { World } from './ports.ts'

const files = { finds: 'tollgate-wharf.csv', places: ['rooms.csv', 'boxes.csv'] } as const

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
  const bytesOf = (name: string) => fs.readFile(path.join(world.root, 'content', 'demo', name))
  const begun = await world.store.write('load-demo', by, async (writes) =>
    given(await writes.projects.add({ name: 'Tollgate Wharf', invented: true })),
  )
  if (!begun.ok) return begun
  const project = begun.value
  // A person's own project of the same name is not to be filled with invented finds.
  if (!project.invented) return refused({ kind: 'not-accepted', field: 'name', because: 'taken' })
  for (const name of files.places) {
    const kept = await keepPlaces(world, { projectId: project.id, bytes: await bytesOf(name) }, by)
    if (!kept.ok) return kept
  }
  const finds = await bytesOf(files.finds)
  const file = { projectId: project.id, fileName: files.finds, bytes: finds, dryRun: false }
  const imported = await importFile(world, onProgress ? { ...file, onProgress } : file, by)
  return imported.ok ? given({ project, report: imported.value }) : imported
}
