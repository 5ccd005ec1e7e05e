import type { ReadRow } from '../../../lib/field/rows.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { valueLabel } from '../../../lib/wording/fact.ts'
import type { Rows } from '../_sheet/sheet.ts'

interface Props {
  readonly rows: Rows
  readonly read: ReadonlyMap<string, ReadRow>
  readonly knowledge: Knowledge
}

/** A hazard named in a row that gives no plan yet is said all the same: a missing number must not hide it. */
export function LoudHazards({ rows, read, knowledge }: Props) {
  const heard = rows.flatMap(({ id }, at) => {
    const hazards = new Set(read.get(id)?.loudHazards.map(({ hazard }) => hazard))
    return [...hazards].map((hazard) => ({
      id: `${id} ${hazard}`,
      row: at + 1,
      words: valueLabel('hazards_noticed', hazard, knowledge),
    }))
  })
  if (heard.length === 0) return null
  return (
    <div role="alert">
      {heard.map(({ id, row, words }) => (
        <p key={id} className="wrong">
          {`Row ${row} names a hazard: ${words}. Give it a number and a material and its plan will say what to do; until then leave it alone and keep others away.`}
        </p>
      ))}
    </div>
  )
}
