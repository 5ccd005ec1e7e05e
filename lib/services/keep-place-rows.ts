import { overlapping, withRows } from '../record/logger-register.ts'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import { problem, type Problem } from '../record/problem.ts'
import type { LoggerRow, Stand } from '../record/store-loggers.ts'
import type { Told } from '../tables/place-table.ts'
import { hashed } from './diary-hash.ts'
import type { NewEntry } from './diary.ts'
import type { Writes } from './ports.ts'
import type { ToKeep } from './places.ts'

/** What is kept of a place, with what a row says of it: columns the file does not have stay as they are. */
function changed<Given extends object>(known: Given | undefined, { given, headed }: Told<Given>): Given {
  if (!known) return given
  const stays = Object.entries(known).filter(([column]) => column !== 'extra' && !headed.has(column))
  const extra = { ...extraOf(known), ...extraOf(given) }
  const merged = { ...Object.fromEntries(stays), ...given }
  return Object.keys(extra).length === 0 ? merged : { ...merged, extra }
}

const extraOf = (given: object) => (given as { readonly extra?: Readonly<Record<string, string>> }).extra

/** Rows over what is kept, by name; of two rows of one name the later one counts. */
function merged<Given extends object>(
  rows: readonly Told<Given>[],
  kept: readonly { readonly given: Given }[],
  nameOf: (given: Given) => string,
): readonly ToKeep<Given>[] {
  const known = new Map(kept.map(({ given }) => [nameOf(given), given]))
  const wanted = new Map<string, Given>()
  for (const row of rows) {
    const name = nameOf(row.given)
    wanted.set(name, changed(wanted.get(name) ?? known.get(name), row))
  }
  const same = (name: string, given: Given) => JSON.stringify(known.get(name)) === JSON.stringify(given)
  return [...wanted].flatMap(([name, given]) => (same(name, given) ? [] : [{ given, version: null }]))
}

export async function roomRows(
  writes: Writes,
  projectId: string,
  rows: readonly Told<RoomGiven>[],
): Promise<void> {
  if (rows.length === 0) return
  const kept = await writes.rooms.ofProject(projectId)
  await writes.rooms.keep(
    projectId,
    merged(rows, kept, ({ room }) => room),
  )
}

export async function boxRows(
  writes: Writes,
  projectId: string,
  rows: readonly Told<BoxGiven>[],
): Promise<void> {
  if (rows.length === 0) return
  const kept = await writes.boxes.ofProject(projectId)
  await writes.boxes.keep(
    projectId,
    merged(rows, kept, ({ box }) => box),
  )
}

/** A list of boxes tells of their gel: kept as an entry too, so that it is still known when the gel was changed. */
export async function gelRows(writes: Writes, projectId: string, rows: readonly Told<BoxGiven>[]) {
  const filled = new Map(rows.map(({ given }) => [given.box, given]))
  if (filled.size === 0) return []
  const known = await writes.diary.list({ projectId, kinds: ['gel-change'], boxes: [...filled.keys()] })
  const there = new Set(known.map(({ box, on }) => `${on} ${box}`))
  return [...filled.values()].flatMap((box) => {
    const { gel_kg, gel_kind, gel_rh_percent, gel_conditioned_on: on } = box
    if (gel_kg === undefined || on === undefined || there.has(`${on} ${box.box}`)) return []
    const entry: NewEntry = {
      kind: 'gel-change',
      box: box.box,
      room: null,
      findId: null,
      on,
      atMs: null,
      given: {
        gel_kg,
        ...(gel_kind === undefined ? {} : { gel_kind }),
        ...(gel_rh_percent === undefined ? {} : { gel_rh_percent }),
      },
    }
    return [hashed(entry)]
  })
}

const standText = ({ box, room, from, to }: Stand) => `${box ?? room ?? '?'} ${from ?? '…'} – ${to ?? '…'}`

/** The register with what rows say; a logger in two places at once is told under the row that says so. */
export async function loggerRows(
  writes: Writes,
  projectId: string,
  rows: readonly Told<LoggerRow>[],
): Promise<readonly Problem[]> {
  const bySerial = Map.groupBy(rows, ({ given }) => given.serial)
  const kept = new Map(
    (await writes.loggers.bySerials(projectId, [...bySerial.keys()])).map(({ given }) => [
      given.serial,
      given,
    ]),
  )
  const loggers = [...bySerial].map(([serial, own]) =>
    withRows(
      kept.get(serial) ?? null,
      serial,
      own.map(({ given }) => given),
    ),
  )
  const other = loggers.filter((one) => JSON.stringify(kept.get(one.serial)) !== JSON.stringify(one))
  await writes.loggers.keep(
    projectId,
    other.map((one) => ({ given: one, version: null })),
  )
  return loggers.flatMap((logger) =>
    overlapping(logger.stood).flatMap(([first, second]) => {
      const rowOf = (stand: Stand) =>
        bySerial.get(logger.serial)!.findLast(({ given }) => given.from === stand.from)
      const told = rowOf(second) ?? rowOf(first)
      return told === undefined
        ? []
        : [problem('stands-overlap', { ...told, column: 'from' }, standText(first), standText(second))]
    }),
  )
}
