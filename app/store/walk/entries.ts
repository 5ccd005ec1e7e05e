import { openDB, type DBSchema } from 'idb'
import type { WalkEntry } from '../../../lib/papers/walk-list.ts'

interface Walks extends DBSchema {
  entries: { key: string; value: WalkEntry; indexes: { project: string } }
}

const open = () =>
  openDB<Walks>('quietmetal-walk', 1, {
    upgrade(database) {
      database.createObjectStore('entries', { keyPath: 'id' }).createIndex('project', 'project')
    },
  })

/** What was written on this device, oldest first. */
export async function loadEntries(project: string): Promise<readonly WalkEntry[]> {
  const all = await (await open()).getAllFromIndex('entries', 'project', project)
  return all.toSorted((a, b) => a.atMs - b.atMs)
}

export async function keepEntry(entry: WalkEntry): Promise<void> {
  await (await open()).put('entries', entry)
}

export async function dropEntry(id: string): Promise<void> {
  await (await open()).delete('entries', id)
}

/** What the store has had for this long [ms] need not stand here too. */
const keptSentMs = 3 * 24 * 60 * 60 * 1000

export async function forgetOld(entries: readonly WalkEntry[], nowMs: number): Promise<void> {
  const database = await open()
  const old = entries.filter(({ sentMs }) => sentMs !== null && nowMs - sentMs > keptSentMs)
  await Promise.all(old.map(({ id }) => database.delete('entries', id)))
}
