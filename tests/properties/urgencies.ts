import type { Urgency } from '../../lib/engine/plan.ts'

/** The most pressing first. */
export const urgencies: readonly Urgency[] = ['now', 'hours', 'days', 'weeks', 'planned', 'routine']
