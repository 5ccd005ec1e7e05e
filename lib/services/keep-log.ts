import { canonical } from '../base/canonical.ts'
import { given, refused, type Outcome } from '../base/outcome.ts'
import type { Answer, Trouble } from '../base/trouble.ts'
import { dayAt } from '../base/zone.ts'
import { packDays } from '../logger/day-block.ts'
import type { LoggerGiven } from '../record/store-loggers.ts'
import { notAccepted } from './enter-diary.ts'
import type { Actor } from './kept.ts'
import type { Brought, LogFile, LogFileAnswers } from './loggers.ts'
import { packOriginal } from './pack-original.ts'
import type { World, Writes } from './ports.ts'
import { channelsRead, logInHand, type LogFileRead, type LogInHand, type LogToRead } from './read-log-file.ts'
import { mergedDays } from './reading-days.ts'
import { readLogAnew } from './read-log-anew.ts'
import { nothingSet } from './store-setting.ts'

export interface LogToKeep extends LogToRead {
  /** Where loggers stood that the register does not place yet, by serial: from the first reading on. */
  readonly stood?: Readonly<Record<string, { readonly box?: string; readonly room?: string }>>
}

export interface LogKept {
  readonly fileId: string
  /** The same bytes with the same answers were there: nothing was changed. */
  readonly alreadyThere: boolean
  /** The same bytes had been read with other answers, and were read anew. */
  readonly readAnew: boolean
  readonly readingsAdded: number
  /** Moments of which another file told another value before; that one stays. */
  readonly conflicts: number
  readonly newLoggers: readonly string[]
  /** As the file was read, with where its readings landed. */
  readonly read: LogFileRead
}

/** When a file was handed over belongs to the reading of it, not to what was answered. */
export const sameAnswers = (a: LogFileAnswers, b: LogFileAnswers): boolean => {
  const text = ({ read, serials }: LogFileAnswers) =>
    canonical({ read: { ...read, receivedAtMs: null }, serials })
  return text(a) === text(b)
}

/** What stands in the way of keeping it; null: nothing. */
function notYet({ asks, channels }: LogFileRead): Outcome<never, Trouble> | null {
  if (channels.every(({ readings }) => readings === 0)) return notAccepted('file', 'empty')
  const [open] = asks
  if (open) return notAccepted(open.about, 'empty')
  return channels.some(({ serial, readings }) => serial === null && readings > 0)
    ? notAccepted('serial', 'empty')
    : null
}

/** Loggers that the register does not have are entered, and placed where they were said to stand. */
async function ensureLoggers(
  writes: Writes,
  { told, series }: LogInHand,
  file: LogToKeep,
): Promise<Outcome<readonly string[], Trouble>> {
  const { projectId, stood = {} } = file
  const setting = await writes.settings.ofProject(projectId)
  const timeZone = setting?.given.timeZone ?? 'UTC'
  const serials = [...new Set(told.channels.flatMap(({ serial }) => serial ?? []))]
  const known = new Map(
    (await writes.loggers.bySerials(projectId, serials)).map((one) => [one.given.serial, one]),
  )
  const added: string[] = []
  for (const serial of serials) {
    const logger = known.get(serial)
    const place = stood[serial]
    if (logger && place === undefined) continue
    if (logger && logger.given.stood.length > 0) return notAccepted('stood', 'taken')
    const firsts = series.flatMap(({ series: { atMs } }, at) =>
      told.channels[at]!.serial === serial ? (atMs[0] ?? []) : [],
    )
    const from = firsts.length === 0 ? {} : { from: dayAt(Math.min(...firsts), timeZone) }
    const model = told.form?.model ?? null
    const fresh: LoggerGiven = {
      ...(logger?.given ?? { serial, ...(model === null ? {} : { model }) }),
      stood: place === undefined ? [] : [{ ...place, ...from }],
    }
    await writes.loggers.keep(projectId, [{ given: fresh, version: null }])
    if (!logger) added.push(serial)
  }
  return given(added)
}

/** The readings of each channel into the days of its logger. */
async function mergeIn(writes: Writes, { told, series }: LogInHand, projectId: string) {
  const serials = told.channels.flatMap(({ serial }) => serial ?? [])
  const ids = new Map(
    (await writes.loggers.bySerials(projectId, serials)).map((one) => [one.given.serial, one.id]),
  )
  const brought: Brought[] = []
  let [added, conflicts] = [0, 0]
  for (const [at, { name, series: readings }] of series.entries()) {
    const { serial, fromMs, toMs } = told.channels[at]!
    if (serial === null || fromMs === null || toMs === null) continue
    const channel = { loggerId: ids.get(serial)!, channel: name }
    const offered = packDays(readings)
    const kept = await writes.readings.days({ ...channel, from: offered[0]!.day, to: offered.at(-1)!.day })
    const merged = mergedDays(kept, offered, channel)
    const written = await writes.readings.keep(merged.days)
    if (!written.ok) return written
    added += merged.added
    conflicts += merged.conflicts
    brought.push({ ...channel, serial, readings: readings.atMs.length, fromMs, toMs })
  }
  return given({ brought, added, conflicts })
}

const tries = 3

/**
 * A logger's file into the store: the file itself, kept whole under its hash, and its readings, day by day, under the logger
 * they came from. The same file again changes nothing; read with other answers, its readings take the place of the old ones.
 */
export async function keepLog(world: World, file: LogToKeep, by: Actor): Answer<LogKept> {
  const read = await world.store.read((reads) => logInHand(reads, file))
  if (!read.ok) return read
  const { told } = read.value
  const answers: LogFileAnswers = { read: told.answers, serials: told.serials }
  if (told.kept) return keptBefore(world, told.kept, answers, told, by)
  const wrong = notYet(told)
  if (wrong) return wrong
  const packed = await packOriginal(file.bytes)
  for (let attempt = 1; ; attempt += 1) {
    const kept = await keepOnce(world, file, read.value, answers, packed, by)
    // Somebody read another file of the same logger at the same moment: their readings are there now.
    const raced = !kept.ok && kept.problems.kind === 'changed-meanwhile'
    if (!raced || attempt === tries) return kept
  }
}

function keepOnce(
  world: World,
  file: LogToKeep,
  inHand: LogInHand,
  answers: LogFileAnswers,
  packed: readonly string[],
  by: Actor,
): Answer<LogKept> {
  const { projectId, name, bytes } = file
  const { told } = inHand
  return world.store.write<LogKept>('keep-log', by, async (writes) => {
    const loggers = await ensureLoggers(writes, inHand, file)
    if (!loggers.ok) return loggers
    const merged = await mergeIn(writes, inHand, projectId)
    if (!merged.ok) return merged
    const { brought, added, conflicts } = merged.value
    const row = { projectId, name, sha256: told.sha256, bytes: bytes.length, answers, brought }
    const fileId = await writes.logFiles.add({ ...row, packed })
    if (fileId === null) return refused({ kind: 'changed-meanwhile', what: 'log file', id: told.sha256 })
    await rememberZone(writes, projectId, answers)
    const serials = told.channels.map(({ serial }) => serial)
    const channels = await channelsRead(writes, projectId, inHand.series, serials)
    return given({
      fileId,
      alreadyThere: false,
      readAnew: false,
      readingsAdded: added,
      conflicts,
      newLoggers: loggers.value,
      read: { ...told, channels },
    })
  })
}

/** The first answer about the clock is the clock of the store, until somebody says otherwise. */
async function rememberZone(writes: Writes, projectId: string, { read }: LogFileAnswers): Promise<void> {
  if (read.timeZone === null) return
  const setting = await writes.settings.ofProject(projectId)
  if (setting && setting.given.timeZone !== null) return
  await writes.settings.keep(projectId, {
    given: { ...nothingSet, ...setting?.given, timeZone: read.timeZone },
    version: null,
  })
}

async function keptBefore(
  world: World,
  kept: LogFile,
  answers: LogFileAnswers,
  told: LogFileRead,
  by: Actor,
): Answer<LogKept> {
  const report = { fileId: kept.id, readingsAdded: 0, conflicts: 0, newLoggers: [], read: told }
  if (sameAnswers(kept.answers, answers)) return given({ ...report, alreadyThere: true, readAnew: false })
  const wrong = notYet(told)
  if (wrong) return wrong
  const anew = await readLogAnew(world, kept, answers, by)
  return anew.ok ? given({ ...report, ...anew.value, alreadyThere: false, readAnew: true }) : anew
}
