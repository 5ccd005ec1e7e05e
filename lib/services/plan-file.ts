import type { IsoDate } from '../base/calendar.ts'
import { planFind } from '../field/plan-find.ts'
import type { Plan } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Problem } from '../record/problem.ts'
import type { ConditionRecord } from '../record/record.ts'
import { recordSource, type Content, type FileHead } from './record-source.ts'
import { hazardsByRow, stopsOfBatch, type Stop } from './stops.ts'

export interface Planned {
  readonly record: ConditionRecord
  readonly plan: Plan
}

export interface FilePlan {
  readonly head: FileHead
  /** The file gone through once for what comes before any plan: stops, problems, how many records there are. */
  readonly before: () => Promise<{
    readonly stops: readonly Stop[]
    readonly problems: readonly Problem[]
    readonly records: number
  }>
  /** The records in the order of the file, a batch at a time. */
  readonly records: () => AsyncIterable<readonly ConditionRecord[]>
  /** One plan a record, in the order of the file. */
  readonly plans: () => AsyncIterable<Planned>
  /** The plans of one find only. */
  readonly plansOf: (find: string) => AsyncIterable<Planned>
}

/** The plan of one record by itself, for whoever shares a file out. */
export const planOf = (record: ConditionRecord, knowledge: Knowledge, asOf: IsoDate): Plan =>
  planFind(record, knowledge, { asOf })

/** Plans every record of a file and keeps nothing. */
export async function planFile(knowledge: Knowledge, content: Content, asOf: IsoDate): Promise<FilePlan> {
  const source = await recordSource(knowledge, content)
  return {
    head: source.head,
    async before() {
      const hazards = hazardsByRow(source)
      const stops: Stop[] = []
      const problems: Problem[] = [...source.head.problems]
      let records = 0
      for await (const batch of source.batches()) {
        stops.push(...(await stopsOfBatch(batch, hazards, knowledge, asOf)))
        problems.push(...batch.problems)
        records += batch.records.length
      }
      return { stops, problems, records }
    },
    records,
    plans: () => plansWhere(() => true),
    plansOf: (find) => plansWhere((record) => record.find_number === find),
  }

  async function* records(): AsyncGenerator<readonly ConditionRecord[]> {
    for await (const batch of source.batches()) yield batch.records
  }

  async function* plansWhere(wanted: (record: ConditionRecord) => boolean): AsyncGenerator<Planned> {
    for await (const batch of records()) {
      for (const record of batch.filter(wanted)) yield { record, plan: planOf(record, knowledge, asOf) }
    }
  }
}
