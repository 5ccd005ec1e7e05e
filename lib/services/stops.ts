import type { IsoDate } from '../base/calendar.ts'
import { assess } from '../engine/assess.ts'
import type { Caution } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { HazardSeen } from '../record/read-row.ts'
import { inBreaths } from './breath.ts'
import type { Batch, RecordSource } from './record-source.ts'
import { stopsHeard } from './stops-heard.ts'

/** A stop and whom it concerns: a find, or a row of a file that gave none. */
export interface Stop {
  readonly find: string | null
  readonly row: number | null
  readonly caution: Caution
}

const stopsIn = (record: ConditionRecord, knowledge: Knowledge, asOf: IsoDate): readonly Caution[] =>
  assess(record, knowledge, { asOf, questions: false }).cautions.filter(({ level }) => level === 'stop')

/** All that is known of a lost row is the hazard. */
function stopsOfLostRow(
  row: number,
  hazards: readonly HazardSeen[],
  knowledge: Knowledge,
  asOf: IsoDate,
): readonly Stop[] {
  const heard = hazards.map(({ hazard }) => hazard)
  const find = hazards.find((one) => one.find !== null)?.find ?? null
  return stopsHeard(`row ${row}`, heard, knowledge, asOf).map((caution) => ({ find, row, caution }))
}

/** The stops of one batch; rows that could not be read are heard as well. */
export async function stopsOfBatch(
  batch: Batch,
  hazards: ReadonlyMap<number, readonly HazardSeen[]>,
  knowledge: Knowledge,
  asOf: IsoDate,
): Promise<readonly Stop[]> {
  const read: Stop[] = []
  for await (const some of inBreaths(batch.records)) {
    for (const record of some) {
      for (const caution of stopsIn(record, knowledge, asOf))
        read.push({ find: record.find_number, row: null, caution })
    }
  }
  const lost = batch.unreadableRows.flatMap(({ row }) => {
    const heard = hazards.get(row)
    return heard ? stopsOfLostRow(row, heard, knowledge, asOf) : []
  })
  return [...lost, ...read]
}

export function hazardsByRow({ head }: RecordSource): ReadonlyMap<number, readonly HazardSeen[]> {
  return Map.groupBy(head.loudHazards, ({ row }) => row)
}
