import { addDays, isoDate, type IsoDate } from '../base/calendar.ts'
import type { LoggerGiven, LoggerRow, SaltPoint, Stand } from './store-loggers.ts'

/** The days on which a logger really stood there: a stand ends where the next begins, whatever was written. */
export interface StandDays {
  readonly stand: Stand
  readonly from: IsoDate | null
  readonly to: IsoDate | null
}

const byFirstDay = (a: Stand, b: Stand) => ((a.from ?? '') < (b.from ?? '') ? -1 : 1)

export function standDays(stood: readonly Stand[]): readonly StandDays[] {
  return stood.toSorted(byFirstDay).map((stand, at, all) => {
    const next = all[at + 1]?.from
    const before = next === undefined ? null : addDays(next, -1)
    const to = stand.to === undefined || (before !== null && before < stand.to) ? before : stand.to
    return { stand, from: stand.from ?? null, to }
  })
}

export function standOn(stood: readonly Stand[], day: IsoDate): Stand | null {
  const there = standDays(stood).find(
    ({ from, to }) => (from === null || from <= day) && (to === null || day <= to),
  )
  return there?.stand ?? null
}

/** Stands that were written to last beyond the first day of the next; the day of carrying itself is no quarrel. */
export function overlapping(stood: readonly Stand[]): readonly (readonly [Stand, Stand])[] {
  const sorted = stood.toSorted(byFirstDay)
  return sorted.flatMap((stand, at): (readonly [Stand, Stand])[] => {
    const next = sorted[at + 1]
    if (next === undefined) return []
    // Two stands without a first day, or with the same, cannot both be.
    const together = stand.from === next.from || next.from === undefined
    return together || (stand.to !== undefined && stand.to > next.from) ? [[stand, next]] : []
  })
}

const saltForm = /^(.+?)\s+(\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)(?:\s*@\s*(\d{4}-\d{2}-\d{2}))?$/

/** `lithium chloride 11.3:13.8@2026-03-01; …`: the salt, what it holds, what was read over it, and when. */
export function readSalts(text: string): readonly SaltPoint[] | null {
  const points = text.split(';').map((one): SaltPoint | null => {
    const found = saltForm.exec(one.trim())
    if (!found) return null
    const on = found[4] === undefined ? null : isoDate(found[4])
    const [, salt = '', holds, read] = found
    return {
      salt,
      trueRhPercent: Number(holds),
      readRhPercent: Number(read),
      ...(on === null ? {} : { on }),
    }
  })
  return points.every((point) => point !== null) ? points : null
}

export function saltsText(salts: readonly SaltPoint[]): string {
  return salts
    .map(
      ({ salt, trueRhPercent, readRhPercent, on }) =>
        `${salt} ${trueRhPercent}:${readRhPercent}${on === undefined ? '' : `@${on}`}`,
    )
    .join('; ')
}

function standOf({ box, room, from, to, extra }: LoggerRow): Stand | null {
  const place = {
    ...(box === undefined ? {} : { box }),
    ...(room === undefined ? {} : { room }),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
  }
  if (Object.keys(place).length === 0) return null
  return extra === undefined ? place : { ...place, extra }
}

/** A logger with what rows of the register say of it: a stand replaces the one that began on the same day. */
export function withRows(known: LoggerGiven | null, serial: string, rows: readonly LoggerRow[]): LoggerGiven {
  let logger: LoggerGiven = known ?? { serial, stood: [] }
  for (const row of rows) {
    const { box: _b, room: _r, from: _f, to: _t, salts, extra, ...own } = row
    const points = salts === undefined ? null : readSalts(salts)
    // Salts that were not understood stay in their column.
    const odd = points === null && salts !== undefined ? { ...extra, salts } : extra
    const stand = standOf(odd === undefined ? row : { ...row, extra: odd })
    const others = logger.stood.filter((one) => stand === null || one.from !== stand.from)
    logger = {
      ...logger,
      ...own,
      ...(points === null ? {} : { salts: points }),
      ...(stand === null && odd !== undefined ? { extra: { ...logger.extra, ...odd } } : {}),
      stood: stand === null ? others : [...others, stand].toSorted(byFirstDay),
    }
  }
  return logger
}

/** The register's rows of one logger, one a stand. */
export function rowsOfLogger({ stood, salts, extra, ...own }: LoggerGiven): readonly LoggerRow[] {
  const told = { ...own, ...(salts === undefined ? {} : { salts: saltsText(salts) }) }
  const withExtra = (row: LoggerRow, more: LoggerRow['extra']): LoggerRow =>
    more === undefined ? row : { ...row, extra: more }
  if (stood.length === 0) return [withExtra(told, extra)]
  return stood.map(({ extra: own2, ...stand }, at) =>
    withExtra({ ...told, ...stand }, at === 0 && extra ? { ...extra, ...own2 } : own2),
  )
}
