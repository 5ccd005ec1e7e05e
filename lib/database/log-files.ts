import type { Kysely } from 'kysely'
import type { Brought, LogFile, LogFileAnswers } from '../services/loggers.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, change, type Hand } from './hand.ts'
import { author, fromJson, kept, type AuthorColumns } from './kept-row.ts'
import type { LogFileRow } from './store-rows.ts'
import type { Tables } from './tables.ts'

const logFile = (row: LogFileRow & AuthorColumns): LogFile => ({
  ...kept(row),
  projectId: row.project_id,
  name: row.name,
  sha256: row.sha256,
  bytes: row.bytes,
  answers: fromJson<LogFileAnswers>(row.answers),
  brought: fromJson<readonly Brought[]>(row.brought),
  by: author(row),
})

export function logFileReads(db: Kysely<Tables>): Reads['logFiles'] {
  const withAuthor = db
    .selectFrom('log_file')
    .innerJoin('person', 'person.id', 'log_file.person_id')
    .innerJoin('device', 'device.id', 'log_file.device_id')
    .selectAll('log_file')
    .select(['person.name as person_name', 'person.role as person_role', 'device.name as device_name'])
  return {
    async ofProject(projectId) {
      const oldestFirst = withAuthor
        .where('log_file.project_id', '=', projectId)
        .orderBy('log_file.created_at')
        .orderBy('log_file.id')
      return (await oldestFirst.execute()).map(logFile)
    },
    async byId(id) {
      const row = await withAuthor.where('log_file.id', '=', id).executeTakeFirst()
      return row ? logFile(row) : null
    },
    async byHash(projectId, sha256) {
      const row = await withAuthor
        .where('log_file.project_id', '=', projectId)
        .where('log_file.sha256', '=', sha256)
        .executeTakeFirst()
      return row ? logFile(row) : null
    },
    async packed(id) {
      const rows = await db
        .selectFrom('log_file_part')
        .select('packed')
        .where('log_file_id', '=', id)
        .orderBy('place')
        .execute()
      return rows.map(({ packed }) => packed)
    },
  }
}

export function logFileWrites(hand: Hand): Writes['logFiles'] {
  return {
    ...logFileReads(hand.db),
    async add({ projectId, name, sha256, bytes, answers, brought, packed }) {
      const row = {
        project_id: projectId,
        name,
        sha256,
        bytes,
        answers: JSON.stringify(answers),
        brought: JSON.stringify(brought),
      }
      const [added] = await add(hand, 'log_file', [row], ['project_id', 'sha256'])
      if (!added) return null
      // A part a statement: engines limit what one may carry.
      for (const [place, part] of packed.entries())
        await add(hand, 'log_file_part', [{ log_file_id: added.id, place, packed: part }])
      return added.id
    },
    readAnew: ({ id, version }, { answers, brought }) =>
      change(
        hand,
        'log_file',
        { id, version },
        { answers: JSON.stringify(answers), brought: JSON.stringify(brought) },
      ),
  }
}
