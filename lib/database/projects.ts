import type { Kysely } from 'kysely'
import type { Project } from '../services/kept.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, type Hand } from './hand.ts'
import { kept } from './kept-row.ts'
import type { ProjectRow, Tables } from './tables.ts'

const project = (row: ProjectRow): Project => ({ ...kept(row), name: row.name, invented: row.invented === 1 })

export function projectReads(db: Kysely<Tables>): Reads['projects'] {
  const by = async (column: 'id' | 'name', value: string) => {
    const row = await db.selectFrom('project').selectAll().where(column, '=', value).executeTakeFirst()
    return row ? project(row) : null
  }
  return {
    all: async () =>
      (await db.selectFrom('project').selectAll().orderBy('created_at').orderBy('id').execute()).map(project),
    byId: (id) => by('id', id),
    byName: (name) => by('name', name),
  }
}

export function projectWrites(hand: Hand): Writes['projects'] {
  const reads = projectReads(hand.db)
  return {
    ...reads,
    async add({ name, invented }) {
      // Two who name the same project at the same moment mean the same one.
      await add(hand, 'project', [{ name, invented: invented ? 1 : 0 }], ['name'])
      return (await reads.byName(name))!
    },
  }
}
