import type { Kysely } from 'kysely'
import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import type { ReadingDay } from '../services/loggers.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, change, noteRemoved, slices, type Hand } from './hand.ts'
import type { Tables } from './tables.ts'

const lastDay = '9999-12-31'

export function readingReads(db: Kysely<Tables>): Reads['readings'] {
  const ofChannel = (loggerId: string, channel: string) =>
    db.selectFrom('reading_day').where('logger_id', '=', loggerId).where('channel', '=', channel)
  return {
    async days({ loggerId, channel, from, to }) {
      const rows = await ofChannel(loggerId, channel)
        .select(['day', 'block', 'sketch', 'version'])
        .where('day', '>=', from ?? '')
        .where('day', '<=', to ?? lastDay)
        .orderBy('day')
        .execute()
      return rows.map((row) => ({ ...row, loggerId, channel, day: row.day as IsoDate }))
    },
    async sketches({ loggerId, channel, from, to }) {
      const rows = await ofChannel(loggerId, channel)
        .select(['day', 'sketch'])
        .where('day', '>=', from ?? '')
        .where('day', '<=', to ?? lastDay)
        .orderBy('day')
        .execute()
      return rows.map(({ day, sketch }) => ({ day: day as IsoDate, sketch }))
    },
    async extents(loggerIds) {
      const extents = []
      for (const slice of slices(loggerIds, 1000)) {
        const query = db
          .selectFrom('reading_day')
          .select(({ fn }) => [
            'logger_id',
            'channel',
            fn.min('day').as('first'),
            fn.max('day').as('last'),
            fn.countAll<number>().as('days'),
            fn.max('updated_at').as('written'),
          ])
          .where('logger_id', 'in', [...slice])
          .groupBy(['logger_id', 'channel'])
          .orderBy('logger_id')
          .orderBy('channel')
        for (const row of await query.execute()) {
          extents.push({
            loggerId: row.logger_id,
            channel: row.channel,
            firstDay: row.first as IsoDate,
            lastDay: row.last as IsoDate,
            days: row.days,
            writtenAt: row.written,
          })
        }
      }
      return extents
    },
  }
}

export function readingWrites(hand: Hand): Writes['readings'] {
  return {
    ...readingReads(hand.db),
    async keep(days) {
      const columns = ({ loggerId, channel, day, block, sketch }: ReadingDay) => ({
        logger_id: loggerId,
        channel,
        day,
        block,
        sketch,
      })
      const fresh = days.filter(({ version }) => version === null)
      // A statement carries no more than a few megabytes, whatever a day weighs.
      for (const slice of slices(fresh, 50)) {
        const added = await add(hand, 'reading_day', slice.map(columns), ['logger_id', 'channel', 'day'])
        if (added.length < slice.length)
          return refused({ kind: 'changed-meanwhile', what: 'logger', id: slice[0]!.loggerId })
      }
      for (const day of days.filter(({ version }) => version !== null)) {
        const row = await hand.db
          .selectFrom('reading_day')
          .select('id')
          .where('logger_id', '=', day.loggerId)
          .where('channel', '=', day.channel)
          .where('day', '=', day.day)
          .executeTakeFirst()
        const written = row
          ? await change(
              hand,
              'reading_day',
              { id: row.id, version: day.version },
              { block: day.block, sketch: day.sketch },
            )
          : null
        if (!written?.ok) return refused({ kind: 'changed-meanwhile', what: 'logger', id: day.loggerId })
      }
      return given(null)
    },
    async clear(loggerIds) {
      for (const slice of slices(loggerIds, 1000)) {
        const gone = await hand.db
          .deleteFrom('reading_day')
          .where('logger_id', 'in', [...slice])
          .returning('id')
          .execute()
        noteRemoved(
          hand,
          'reading_day',
          gone.map(({ id }) => id),
        )
      }
    },
  }
}
