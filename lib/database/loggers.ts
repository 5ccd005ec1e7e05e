import type { Kysely } from 'kysely'
import { given } from '../base/outcome.ts'
import type { LoggerGiven } from '../record/store-loggers.ts'
import type { Logger } from '../services/loggers.ts'
import type { Reads, Writes, Written } from '../services/ports.ts'
import { add, change, slices, type Hand } from './hand.ts'
import { fromJson, kept } from './kept-row.ts'
import type { LoggerRow } from './store-rows.ts'
import type { Tables } from './tables.ts'

const logger = (row: LoggerRow): Logger => ({
  ...kept(row),
  projectId: row.project_id,
  given: fromJson<LoggerGiven>(row.given),
})

export function loggerReads(db: Kysely<Tables>): Reads['loggers'] {
  return {
    async ofProject(projectId) {
      const rows = db.selectFrom('logger').selectAll().where('project_id', '=', projectId).orderBy('serial')
      return (await rows.execute()).map(logger)
    },
    async byId(id) {
      const row = await db.selectFrom('logger').selectAll().where('id', '=', id).executeTakeFirst()
      return row ? logger(row) : null
    },
    async bySerials(projectId, serials) {
      const rows: Logger[] = []
      for (const slice of slices([...new Set(serials)], 1000)) {
        const query = db
          .selectFrom('logger')
          .selectAll()
          .where('project_id', '=', projectId)
          .where('serial', 'in', [...slice])
        rows.push(...(await query.execute()).map(logger))
      }
      return rows
    },
  }
}

export function loggerWrites(hand: Hand): Writes['loggers'] {
  const reads = loggerReads(hand.db)
  return {
    ...reads,
    async keep(projectId, loggers) {
      const columns = (one: LoggerGiven) => ({
        project_id: projectId,
        serial: one.serial,
        given: JSON.stringify(one),
      })
      const rows = loggers.map((one) => columns(one.given))
      const added = new Set((await add(hand, 'logger', rows, ['project_id', 'serial'])).map(({ id }) => id))
      const known = new Map(
        (
          await reads.bySerials(
            projectId,
            rows.map(({ serial }) => serial),
          )
        ).map((one) => [one.given.serial, one.id]),
      )
      const results: Written[] = []
      for (const one of loggers) {
        const id = known.get(one.given.serial)!
        results.push(
          added.has(id)
            ? given({ id })
            : await change(hand, 'logger', { id, version: one.version }, columns(one.given)),
        )
      }
      return results
    },
  }
}
