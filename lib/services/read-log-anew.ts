import { given, refused } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import { packDays } from '../logger/day-block.ts'
import type { Actor } from './kept.ts'
import type { Brought, LogFile, LogFileAnswers, ReadingDay } from './loggers.ts'
import { unpackOriginal } from './pack-original.ts'
import type { Reads, World } from './ports.ts'
import { readLogBytes } from './read-log-bytes.ts'
import { serialOf } from './read-log-file.ts'
import { mergedDays } from './reading-days.ts'

interface ReadAnew {
  readonly days: readonly (ReadingDay & { readonly version: null })[]
  readonly brought: readonly Brought[]
  readonly loggerIds: ReadonlySet<string>
  /** What was read from, to be held against what is there when it is written. */
  readonly files: string
}

const filesText = (files: readonly LogFile[]) => files.map(({ id, version }) => `${id} ${version}`).join()

/** Everything the loggers of one file ever brought, read once more from the kept files, this one with its new answers. */
async function readAll(reads: Reads, file: LogFile, answers: LogFileAnswers): Promise<ReadAnew> {
  const { projectId } = file
  const files = await reads.logFiles.ofProject(projectId)
  const serialIds = new Map(
    (await reads.loggers.ofProject(projectId)).map((one) => [one.given.serial, one.id]),
  )
  const own = await unpackOriginal(await reads.logFiles.packed(file.id))
  const now = await readLogBytes(own, answers.read)
  const loggerIds = new Set([
    ...file.brought.map(({ loggerId }) => loggerId),
    ...now.channels.flatMap((channel) => serialIds.get(serialOf(channel, now, answers.serials) ?? '') ?? []),
  ])
  const days = new Map<string, ReadingDay & { readonly version: number }>()
  let brought: readonly Brought[] = []
  for (const one of files) {
    if (one.id !== file.id && !one.brought.some(({ loggerId }) => loggerIds.has(loggerId))) continue
    const isOwn = one.id === file.id
    const bytes = isOwn ? own : await unpackOriginal(await reads.logFiles.packed(one.id))
    const said = isOwn ? answers : one.answers
    const read = isOwn ? now : await readLogBytes(bytes, said.read)
    const told: Brought[] = []
    for (const { name: channel, series, ...rest } of read.channels) {
      const serial = serialOf({ name: channel, series, ...rest }, read, said.serials) ?? ''
      const loggerId = serialIds.get(serial)
      if (loggerId === undefined || series.atMs.length === 0) continue
      told.push({
        loggerId,
        serial,
        channel,
        readings: series.atMs.length,
        fromMs: series.atMs[0]!,
        toMs: series.atMs.at(-1)!,
      })
      if (!loggerIds.has(loggerId)) continue
      const kept = [...days.values()].filter((day) => day.loggerId === loggerId && day.channel === channel)
      for (const day of mergedDays(kept, packDays(series), { loggerId, channel }).days)
        days.set(`${loggerId} ${channel} ${day.day}`, { ...day, version: 0 })
    }
    if (isOwn) brought = told
  }
  return {
    days: [...days.values()].map((day) => ({ ...day, version: null })),
    brought,
    loggerIds,
    files: filesText(files),
  }
}

/** A kept file read with other answers: all readings of its loggers are made again from the files they came from. */
export async function readLogAnew(
  world: World,
  file: LogFile,
  answers: LogFileAnswers,
  by: Actor,
): Answer<{ readonly readingsAdded: number }> {
  const anew = await world.store.read(async (reads) => given(await readAll(reads, file, answers)))
  if (!anew.ok) return anew
  const { days, brought, loggerIds, files } = anew.value
  return world.store.write('read-log-anew', by, async (writes) => {
    if (filesText(await writes.logFiles.ofProject(file.projectId)) !== files)
      return refused({ kind: 'changed-meanwhile', what: 'log file', id: file.id })
    await writes.readings.clear([...loggerIds])
    const kept = await writes.readings.keep(days)
    if (!kept.ok) return kept
    const written = await writes.logFiles.readAnew(file, { answers, brought })
    return written.ok
      ? given({ readingsAdded: brought.reduce((sum, { readings }) => sum + readings, 0) })
      : written
  })
}
