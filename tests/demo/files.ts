import { csvText } from '../../lib/tables/csv-write.ts'
import { recordsToCsv, recordsToXlsx } from '../../lib/tables/write-file.ts'
import { assemblage } from './assemblage.ts'
import { chance } from './chance.ts'
import { today } from './find.ts'
import { diary } from './store-diary.ts'
import { loggers } from './store-loggers.ts'
import { logs } from './store-logs.ts'
import { rounds } from './store-rounds.ts'
import { trueStore, type TrueStore } from './store-true.ts'
import { rooms, type Box } from './store.ts'
import { identifications } from './truths.ts'

/** The demo as files: what stands in content/demo, made anew from the same seed. */
const table = (rows: readonly Readonly<Record<string, string | number>>[]) => {
  const headings = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  return csvText([headings, ...rows.map((row) => headings.map((heading) => String(row[heading] ?? '')))])
}

/** The store has seeds of its own, so that nothing in it moves a find. */
const storeSeeds = { air: 4321, rounds: 4322, logs: 4323 }

/** What the air of the invented store really was: what the tool is told of it are readings of this. */
export const trueAir = (boxes: readonly Box[]): TrueStore => trueStore(boxes, chance(storeSeeds.air), today)

export async function demoFiles(): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const { records, boxes } = assemblage()
  const store = trueAir(boxes)
  return new Map<string, string | Uint8Array>([
    ['tollgate-wharf.csv', recordsToCsv(records, {})],
    ['tollgate-wharf.xlsx', await recordsToXlsx(records, {})],
    ['rooms.csv', table(rooms)],
    ['boxes.csv', table(boxes.map(({ row }) => row))],
    ['loggers.csv', table(loggers)],
    ['rounds.csv', table(rounds(boxes, store, chance(storeSeeds.rounds)))],
    ['diary.csv', table(diary(records))],
    ['identifications.csv', table(identifications())],
    ...logs(store, chance(storeSeeds.logs)),
  ])
}
