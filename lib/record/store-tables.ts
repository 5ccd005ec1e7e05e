import { boxColumns, roomColumns, type Columns } from './places.ts'
import { diaryColumns } from './store-diary.ts'
import { loggerColumns } from './store-loggers.ts'
import { roundColumns } from './store-rounds.ts'

/** The store's tables in the order in which they are read: what others name is read before them. */
export const storeTables = ['rooms', 'boxes', 'loggers', 'rounds', 'diary'] as const
export type StoreTable = (typeof storeTables)[number]

export const storeColumns: Readonly<Record<StoreTable, Columns>> = {
  rooms: roomColumns,
  boxes: boxColumns,
  loggers: loggerColumns,
  rounds: roundColumns,
  diary: diaryColumns,
}

/** What a row must have to be kept at all: its name first. */
export const storeKeys: Readonly<Record<StoreTable, readonly string[]>> = {
  rooms: ['room'],
  boxes: ['box'],
  loggers: ['serial'],
  rounds: ['box', 'on'],
  diary: ['event', 'on'],
}

/** Which table the headings are of; null: of none of the store's. */
export function storeTableOf(headings: ReadonlySet<string>): StoreTable | null {
  if (headings.has('event') && headings.has('on')) return 'diary'
  // A list of finds names boxes too, and is no list of boxes.
  if (headings.has('find_number') || headings.has('material')) return null
  if (headings.has('serial')) return 'loggers'
  if (headings.has('box')) return headings.has('on') ? 'rounds' : 'boxes'
  return headings.has('room') ? 'rooms' : null
}
