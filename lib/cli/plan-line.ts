import type { Plan } from '../engine/plan.ts'
import { planCsvRow } from '../services/plan-csv.ts'

/** The formats of which every plan is a line of its own, whatever stands before it. */
export type LineFormat = 'json' | 'csv'

export function planLine(format: LineFormat, plan: Plan): string {
  return format === 'json' ? `${JSON.stringify(plan)}\n` : planCsvRow(plan)
}
