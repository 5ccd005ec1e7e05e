import type { Plan, Statement } from '../engine/plan.ts'
import { csvLine } from '../tables/csv-write.ts'

const codes = (statements: readonly Statement[]) => statements.map(({ code }) => code).join('; ')
const numberOrNothing = (value: number | null | undefined) =>
  value === null || value === undefined ? '' : String(value)

/** What leads in each matter of each part, and how far it is decided: `plate: white-skin: tinning (probable)`. */
function leading(interpretations: Plan['interpretations']): string {
  const matters = Map.groupBy(interpretations, ({ component, matter }) => `${component}: ${matter}`)
  return [...matters]
    .map(([matter, [first]]) => `${matter}: ${first!.interpretation} (${first!.standing})`)
    .join('; ')
}

/** One row a find: headings in order, and what stands under each. Lists are parted by `;`. */
const columns: readonly (readonly [string, (plan: Plan) => string])[] = [
  ['find', ({ find }) => find],
  ['as_of', ({ asOf }) => asOf],
  ['urgency', ({ urgency }) => urgency],
  ['stops', ({ cautions }) => codes(cautions.filter(({ level }) => level === 'stop'))],
  ['steps', ({ steps }) => steps.map(({ by, due, text }) => `${due ?? by}: ${text}`).join('; ')],
  ['keep', ({ storage }) => storage.keep],
  ['rh_min_percent', ({ storage }) => numberOrNothing(storage.rhPercent?.min)],
  ['rh_max_percent', ({ storage }) => numberOrNothing(storage.rhPercent?.max)],
  ['conflict', ({ storage }) => storage.conflict?.between.join('; ') ?? ''],
  ['conflict_gap_percent', ({ storage }) => numberOrNothing(storage.conflict?.gapPercent)],
  ['interim_rh_min_percent', ({ storage }) => numberOrNothing(storage.interim?.rhPercent.min)],
  ['interim_rh_max_percent', ({ storage }) => numberOrNothing(storage.interim?.rhPercent.max)],
  ['temperature_min_c', ({ storage }) => numberOrNothing(storage.temperatureC.min)],
  ['temperature_max_c', ({ storage }) => numberOrNothing(storage.temperatureC.max)],
  ['light', ({ storage }) => storage.light],
  ['air', ({ storage }) => storage.air.join('; ')],
  ['precautionary', ({ storage }) => (storage.precautionary ? 'yes' : 'no')],
  ['decided_by', ({ storage }) => storage.decidedBy],
  ['handling', ({ handling }) => codes(handling)],
  ['packing', ({ packing }) => codes(packing)],
  ['cautions', ({ cautions }) => codes(cautions)],
  ['call', ({ cautions }) => [...new Set(cautions.map(({ who }) => who).filter(Boolean))].join('; ')],
  ['objections', ({ objections }) => objections.map(({ to, code }) => `${to}: ${code}`).join('; ')],
  ['interpretations', ({ interpretations }) => leading(interpretations)],
  ['requests', ({ requests }) => requests.map(({ method }) => method).join('; ')],
  ['look_next', ({ lookNext }) => lookNext.map(({ fact }) => fact).join('; ')],
  ['referrals', ({ referrals }) => codes(referrals)],
  ['inspect_every_days', ({ inspection }) => String(inspection.everyDays)],
  ['inspect_on', ({ inspection }) => inspection.nextOn],
  ['not_covered', ({ notCovered }) => notCovered.map(({ what }) => what).join('; ')],
  ['knowledge', ({ knowledge }) => knowledge],
]

export const planCsvHead = csvLine(columns.map(([heading]) => heading))

export function planCsvRow(plan: Plan): string {
  return csvLine(columns.map(([, cell]) => cell(plan)))
}
