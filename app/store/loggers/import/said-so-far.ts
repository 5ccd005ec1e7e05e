import type { LogAnswers } from '../../../../lib/logger/read/log-answers.ts'
import type { LogFileRead } from '../../../../lib/services/read-log-file.ts'
import type { LogSaid } from './received-log.ts'

type Answers = NonNullable<LogSaid['answers']>

/** What the file was read with, as answers that can be added to. */
export function answersOf({ answers }: Pick<LogFileRead, 'answers'>): Answers {
  const { timeZone, dateOrder, temperatureUnit, humidityScale = null, columns = null }: LogAnswers = answers
  return {
    timeZone,
    dateOrder,
    temperatureUnit,
    humidityScale,
    columns:
      columns === null
        ? null
        : columns.map(({ column, use, channel }) => ({
            column,
            use,
            ...(channel === undefined ? {} : { channel }),
          })),
  }
}

/** Whether it can be kept: nothing is asked any more, and every channel with readings has its logger. */
export function readyToKeep({ asks, channels }: LogFileRead): boolean {
  const withReadings = channels.filter(({ readings }) => readings > 0)
  return asks.length === 0 && withReadings.length > 0 && withReadings.every(({ serial }) => serial !== null)
}
