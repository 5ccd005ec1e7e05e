import { openDB, type DBSchema } from 'idb'
import type { Sheet } from './_sheet/sheet.ts'

interface Drafts extends DBSchema {
  drafts: { key: string; value: Sheet }
}

const open = () =>
  openDB<Drafts>('quietmetal', 1, {
    upgrade(database) {
      database.createObjectStore('drafts')
    },
  })

/** What was being typed on this device when it was last closed, with its undo steps. */
export async function loadDraft(project: string): Promise<Sheet | null> {
  return (await (await open()).get('drafts', project)) ?? null
}

export async function keepDraft(project: string, sheet: Sheet): Promise<void> {
  await (await open()).put('drafts', sheet, project)
}
