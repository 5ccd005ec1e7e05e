import type { IsoDate } from '../base/calendar.ts'
import { assemble, type Assemblage, type AssemblageAsked } from '../evidence/assemblage.ts'
import type { AssemblageFind } from '../evidence/assemblage-find.ts'
import { hoursInLine, readHours } from '../evidence/assemblage-hours.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import { assemblageFind } from './assemblage-finds.ts'
import { inBreaths } from './breath.ts'

export interface AnalysesOfFile {
  readonly finds: number
  /** Finds on which something stands open. */
  readonly open: number
  readonly assemblage: Assemblage
}

/** Hours as typed on one line: `xrf=6,ct=4slots`. */
export const hoursOfLine = (line: string, knowledge: Knowledge) => readHours(hoursInLine(line), knowledge)

/** A find by its site and number: two sites may number alike. */
const idOf = ({ site_code, find_number }: ConditionRecord) =>
  site_code === undefined || find_number.startsWith(site_code) ? find_number : `${site_code} ${find_number}`

const isNewer = (one: ConditionRecord, than: ConditionRecord) =>
  (one.recorded_on ?? '') >= (than.recorded_on ?? '')

/** What to send to which method, of the finds of a file; of a find recorded more than once the newest record counts. */
export async function askAnalyses(
  batches: AsyncIterable<readonly ConditionRecord[]>,
  asked: AssemblageAsked,
  knowledge: Knowledge,
  asOf: IsoDate,
): Promise<AnalysesOfFile> {
  const newest = new Map<string, ConditionRecord>()
  for await (const records of batches) {
    for (const record of records) {
      const id = idOf(record)
      const before = newest.get(id)
      if (before === undefined || isNewer(record, before)) newest.set(id, record)
    }
  }
  const finds: AssemblageFind[] = []
  for await (const some of inBreaths([...newest]))
    for (const [id, record] of some) {
      const find = assemblageFind(id, record, knowledge, asOf)
      if (find !== null) finds.push(find)
    }
  return { finds: newest.size, open: finds.length, assemblage: assemble(finds, asked, knowledge) }
}
