import { createHash } from 'node:crypto'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { noAnswers } from '../logger/read/log-answers.ts'
import type { LogAnswers, LogRead } from '../logger/read/read-log.ts'
import type { Channel } from '../logger/series.ts'
import { withHumidity } from '../logger/stretches.ts'
import { landingsOf, type Landings } from './log-landing.ts'
import type { LogFile, LogFileAnswers, Logger } from './loggers.ts'
import type { Reads, World } from './ports.ts'
import { readLogBytes } from './read-log-bytes.ts'

/** A logger's file, and what a person has answered so far. */
export interface LogToRead {
  readonly projectId: string
  readonly name: string
  readonly bytes: Uint8Array
  /** Left out: what was answered for this logger before, and the clock of the store. */
  readonly answers?: LogAnswers
  /** Which logger a channel is of, by the channel's name, where the file does not say so or says it wrong. */
  readonly serials?: Readonly<Record<string, string>>
}

/** One channel of the file: whose it is and where its readings belong. */
export interface ChannelRead extends Landings {
  /** As the file names it. */
  readonly channel: string
  /** Null: nobody has said whose it is, and it cannot be kept. */
  readonly serial: string | null
  /** The logger of the register; null: it is entered with this file. */
  readonly logger: Logger | null
  readonly readings: number
  readonly withHumidity: number
  readonly fromMs: number | null
  readonly toMs: number | null
}

export interface LogFileRead extends Pick<LogRead, 'form' | 'asks' | 'problems' | 'rows'> {
  readonly name: string
  readonly sha256: string
  /** What it was read with; a question still open was read as proposed. */
  readonly answers: LogAnswers
  readonly serials: LogFileAnswers['serials']
  readonly channels: readonly ChannelRead[]
  /** The same bytes are kept already: reading them again changes nothing unless other answers are given. */
  readonly kept: LogFile | null
}

export interface LogInHand {
  readonly told: LogFileRead
  /** As `told.channels`, with their readings. */
  readonly series: readonly Channel[]
}

export const serialOf = (
  channel: Channel,
  read: LogRead,
  serials: LogFileAnswers['serials'],
): string | null => serials[channel.name]?.trim() || channel.serial || read.form?.serial || null

/** What was answered for the same logger before; else what the clock of the store says of the time zone. */
async function remembered(
  reads: Reads,
  projectId: string,
  read: LogRead,
  file: LogToRead,
): Promise<LogAnswers> {
  const serials = new Set(read.channels.map((channel) => serialOf(channel, read, file.serials ?? {})))
  const before = (await reads.logFiles.ofProject(projectId)).findLast(({ brought }) =>
    brought.some(({ serial }) => serials.has(serial)),
  )
  if (before) return { ...before.answers.read, columns: null }
  const setting = await reads.settings.ofProject(projectId)
  return { ...noAnswers, timeZone: setting?.given.timeZone ?? null }
}

/** Reads it with the answers given, or with those remembered where any is needed. */
async function readWith(
  reads: Reads,
  file: LogToRead,
): Promise<{ readonly read: LogRead; readonly answers: LogAnswers }> {
  const { projectId, bytes } = file
  const said = file.answers ?? noAnswers
  const read = await readLogBytes(bytes, said)
  if (file.answers !== undefined || read.asks.length === 0) return { read, answers: said }
  const answers = await remembered(reads, projectId, read, file)
  return { read: await readLogBytes(bytes, answers), answers }
}

/** Each channel with the logger it is of and the boxes its readings belong to, as the register stands. */
export async function channelsRead(
  reads: Reads,
  projectId: string,
  series: readonly Channel[],
  serials: readonly (string | null)[],
): Promise<readonly ChannelRead[]> {
  const setting = await reads.settings.ofProject(projectId)
  const timeZone = setting?.given.timeZone ?? 'UTC'
  const named = serials.filter((serial) => serial !== null)
  const known = new Map(
    (await reads.loggers.bySerials(projectId, named)).map((logger) => [logger.given.serial, logger]),
  )
  return series.map(({ name: channel, series: readings }, at) => {
    const serial = serials[at] ?? null
    const logger = serial === null ? null : (known.get(serial) ?? null)
    return {
      channel,
      serial,
      logger,
      readings: readings.atMs.length,
      withHumidity: withHumidity(readings).atMs.length,
      fromMs: readings.atMs[0] ?? null,
      toMs: readings.atMs.at(-1) ?? null,
      ...landingsOf(readings, logger?.given.stood ?? [], timeZone),
    }
  })
}

/** Reads a file without keeping anything: what would be kept and what is kept start from the same. */
export async function logInHand(reads: Reads, file: LogToRead): Answer<LogInHand> {
  const { projectId, name, bytes } = file
  if (!(await reads.projects.byId(projectId))) return refused(missing('project', projectId))
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  const kept = await reads.logFiles.byHash(projectId, sha256)
  // The same file again, and nothing said: what was said the first time holds.
  const asBefore = kept && file.answers === undefined ? { answers: kept.answers.read } : {}
  const { read, answers } = await readWith(reads, { ...file, ...asBefore })
  const serials = file.serials ?? kept?.answers.serials ?? {}
  const named = read.channels.map((channel) => serialOf(channel, read, serials))
  const channels = await channelsRead(reads, projectId, read.channels, named)
  const { form, asks, problems, rows } = read
  return given({
    told: { form, asks, problems, rows, name, sha256, answers, serials, channels, kept },
    series: read.channels,
  })
}

/** What a logger's file would bring, which logger and boxes it would land on, and what it leaves open. Keeps nothing. */
export function readLogFile({ store }: World, file: LogToRead): Answer<LogFileRead> {
  return store.read(async (reads) => {
    const read = await logInHand(reads, file)
    return read.ok ? given(read.value.told) : read
  })
}
