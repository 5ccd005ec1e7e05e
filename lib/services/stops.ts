import type { IsoDate } from '../base/calendar.ts'
import { assess } from '../engine/assess.ts'
import type { Caution } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { hazardsNoticed } from '../record/ids.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { FileRead } from '../tables/read-file.ts'

/** A stop and whom it concerns: a find, or a row of a file that gave none. */
export interface Stop {
  readonly find: string | null
  readonly row: number | null
  readonly caution: Caution
}

const stopsIn = (record: ConditionRecord, knowledge: Knowledge, asOf: IsoDate): readonly Caution[] =>
  assess(record, knowledge, { asOf, questions: false }).cautions.filter(({ level }) => level === 'stop')

/** Every stop of a file, before anything of it is planned or kept; rows that could not be read are heard as well. */
export function* stopsOf(read: FileRead, knowledge: Knowledge, asOf: IsoDate): Generator<Stop> {
  for (const record of read.records) {
    for (const caution of stopsIn(record, knowledge, asOf)) yield { find: record.find_number, row: null, caution }
  }
  const lost = new Set(read.unreadableRows.map(({ row }) => row))
  const heard = Map.groupBy(read.loudHazards.filter(({ row }) => lost.has(row)), ({ row }) => row)
  for (const [row, hazards] of heard) {
    const noticed = hazardsNoticed.filter((id) => hazards.some(({ hazard }) => hazard === id))
    // All that is known of such a row is the hazard, so a find is supposed of which nothing else is known either.
    const supposed: ConditionRecord = {
      find_number: `row ${row}`,
      hazards_noticed: noticed,
      components: [{ component: 'body', material: 'metal-unidentified' }],
    }
    const find = hazards.find((one) => one.find !== null)?.find ?? null
    for (const caution of stopsIn(supposed, knowledge, asOf)) yield { find, row, caution }
  }
}
