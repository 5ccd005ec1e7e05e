import type { StoreTable } from '../record/store-tables.ts'
import { countWords, listWords } from './list.ts'

export const storeTableWords: Readonly<
  Record<StoreTable, { readonly name: string; readonly holds: string }>
> = {
  rooms: { name: 'Rooms', holds: 'between which humidities and temperatures each is run' },
  boxes: { name: 'Boxes', holds: 'where each stands, its size, its gel, what it is to hold' },
  rounds: { name: 'Rounds', holds: 'strips read, gel colours, lids' },
  loggers: { name: 'Loggers', holds: 'number, least reading, calibration, where each stood' },
  diary: { name: 'Diary', holds: 'gel renewed, finds moved, lids, water, coupons' },
}

type Counts = Readonly<Record<StoreTable, number>>

const rows: Readonly<Record<StoreTable, readonly [string, string]>> = {
  rooms: ['room', 'rooms'],
  boxes: ['box', 'boxes'],
  rounds: ['reading of a round', 'readings of rounds'],
  loggers: ['logger', 'loggers'],
  diary: ['entry of the diary', 'entries of the diary'],
}

/** `4 rooms and 60 boxes`; empty where nothing was read. */
export function tableCountWords(counts: Counts): string {
  return listWords(
    (Object.keys(rows) as StoreTable[])
      .filter((table) => counts[table] > 0)
      .map((table) => countWords(counts[table], ...rows[table])),
  )
}
