import { csvText } from '../../lib/tables/csv-write.ts'
import { recordsToCsv, recordsToXlsx } from '../../lib/tables/write-file.ts'
import { assemblage } from './assemblage.ts'
import { rooms } from './store.ts'

/** The demo as files: what stands in content/demo, made anew from the same seed. */
const table = (rows: readonly Readonly<Record<string, string | number>>[]) => {
  const headings = Object.keys(rows[0]!)
  return csvText([headings, ...rows.map((row) => headings.map((heading) => String(row[heading] ?? '')))])
}

export async function demoFiles(): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const { records, boxes } = assemblage()
  return new Map<string, string | Uint8Array>([
    ['tollgate-wharf.csv', recordsToCsv(records, {})],
    ['tollgate-wharf.xlsx', await recordsToXlsx(records, {})],
    ['rooms.csv', table(rooms)],
    ['boxes.csv', table(boxes.map(({ row }) => row))],
  ])
}
