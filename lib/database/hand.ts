import type { Insertable, Kysely, Updateable } from 'kysely'
import { refused, given } from '../base/outcome.ts'
import { uuidV7 } from '../base/uuid.ts'
import type { Touched } from '../services/kept.ts'
import type { Written as Outcome } from '../services/ports.ts'
import type { Thing } from '../base/trouble.ts'
import type { Row, Tables, Written } from './tables.ts'

/** One transaction's hand: who writes, from where, at which moment, and what it has touched so far. */
export interface Hand {
  readonly db: Kysely<Tables>
  readonly at: number
  readonly personId: string
  readonly deviceId: string
  readonly touched: Map<string, { verb: Touched['verb']; table: string; count: number; ids: string[] }>
}

const namedIds = 50
const rowsAtOnce = 1000
/** Below the engines' limits on parameters (SQLite 32,766). */
const parametersAtOnce = 30_000

function note(hand: Hand, table: string, verb: Touched['verb'], ids: readonly string[]): void {
  const key = `${verb} ${table}`
  const entry = hand.touched.get(key) ?? { verb, table, count: 0, ids: [] }
  entry.count += ids.length
  entry.ids.push(...ids.slice(0, namedIds - entry.ids.length))
  hand.touched.set(key, entry)
}

export const noteChanged = (hand: Hand, table: Written, id: string): void =>
  note(hand, table, 'changed', [id])

export const noteRemoved = (hand: Hand, table: Written, ids: readonly string[]): void => {
  if (ids.length > 0) note(hand, table, 'removed', ids)
}

/** What every new row wears. */
export function fresh(hand: Pick<Hand, 'at' | 'personId' | 'deviceId'>): Row {
  return {
    id: uuidV7(hand.at),
    version: 1,
    created_at: hand.at,
    updated_at: hand.at,
    person_id: hand.personId,
    device_id: hand.deviceId,
  }
}

export type New<Table extends Written> = Omit<Tables[Table], keyof Row>

export function slices<Item>(items: readonly Item[], size: number): readonly (readonly Item[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, at) =>
    items.slice(at * size, (at + 1) * size),
  )
}

/**
 * Adds rows in slices the engines can take and gives the rows that were added. `once` names the columns by which a row may
 * already be there; such a row is left as it is.
 */
export async function add<Table extends Written>(
  hand: Hand,
  table: Table,
  rows: readonly New<Table>[],
  once?: readonly (keyof Tables[Table] & string)[],
): Promise<readonly Tables[Table][]> {
  const whole = rows.map((row) => ({ ...fresh(hand), ...row }))
  const size = Math.min(rowsAtOnce, Math.floor(parametersAtOnce / Object.keys(whole[0] ?? { id: '' }).length))
  const added = new Set<string>()
  for (const slice of slices(whole, size)) {
    const values = slice as unknown as Insertable<Tables[Table]>[]
    const insert = hand.db.insertInto(table).values(values)
    const careful = once === undefined ? insert : insert.onConflict((on) => on.columns(once).doNothing())
    const ids = (await careful.returning('id' as never).execute()) as unknown as readonly { id: string }[]
    for (const { id } of ids) added.add(id)
  }
  note(hand, table, 'added', [...added])
  return whole.filter(({ id }) => added.has(id)) as unknown as readonly Tables[Table][]
}

/** Tables of which a person may hold a version, and what a person calls a row of them. */
const things = {
  contact: 'contact',
  room: 'room',
  box: 'box',
  logger: 'logger',
  log_file: 'log file',
  reading_day: 'logger',
  store_setting: 'store setting',
} as const satisfies Partial<Record<Written, Thing>>

/** Changes one row if it still has the version that was read (null: whatever it has). */
export async function change<Table extends keyof typeof things>(
  hand: Hand,
  table: Table,
  { id, version }: { readonly id: string; readonly version: number | null },
  values: Partial<New<Table>>,
): Promise<Outcome> {
  const set = { ...values, updated_at: hand.at, person_id: hand.personId, device_id: hand.deviceId }
  const update = hand.db
    .updateTable(table as Written)
    .set(set as unknown as Updateable<Row>)
    .set((column) => ({ version: column('version', '+', 1) }))
    .where('id', '=', id)
  const { numUpdatedRows } = await (
    version === null ? update : update.where('version', '=', version)
  ).executeTakeFirst()
  if (numUpdatedRows !== 1n) return refused({ kind: 'changed-meanwhile', what: things[table], id })
  noteChanged(hand, table, id)
  return given({ id })
}
