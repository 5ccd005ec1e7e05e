import type { Kysely } from 'kysely'
import { identificationHash, type Identification } from '../services/identification.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, slices, type Hand } from './hand.ts'
import { author, fromJson, kept, type AuthorColumns } from './kept-row.ts'
import type { IdentificationRow, Tables } from './tables.ts'

const identification = (row: IdentificationRow & AuthorColumns): Identification => ({
  ...kept(row),
  projectId: row.project_id,
  findId: row.find_id,
  recordId: row.record_id,
  knowledge: row.knowledge,
  given: fromJson(row.given),
  thought: fromJson(row.thought),
  by: author(row),
})

export function identificationReads(db: Kysely<Tables>): Reads['identifications'] {
  const all = db
    .selectFrom('identification')
    .innerJoin('person', 'person.id', 'identification.person_id')
    .innerJoin('device', 'device.id', 'identification.device_id')
    .selectAll('identification')
    .select(['person.name as person_name', 'person.role as person_role', 'device.name as device_name'])
    .orderBy('identification.created_at')
    .orderBy('identification.id')
  return {
    async ofFinds(findIds) {
      const found: Identification[] = []
      for (const slice of slices(findIds, 1000)) {
        const rows = all.where('identification.find_id', 'in', [...slice])
        found.push(...(await rows.execute()).map(identification))
      }
      return found
    },
    async ofProject(projectId) {
      const rows = all.where('identification.project_id', '=', projectId)
      return (await rows.execute()).map(identification)
    },
  }
}

export function identificationWrites(hand: Hand): Writes['identifications'] {
  return {
    ...identificationReads(hand.db),
    async add(one) {
      const row = {
        project_id: one.projectId,
        find_id: one.findId,
        record_id: one.recordId,
        knowledge: one.knowledge,
        given: JSON.stringify(one.given),
        thought: JSON.stringify(one.thought),
        content_hash: identificationHash(one),
      }
      return (await add(hand, 'identification', [row], ['find_id', 'content_hash'])).length > 0
    },
  }
}
