import type { LoggerGiven } from '../../../lib/record/store-loggers.ts'
import type { Question } from '../_forms/ask-field.tsx'

/** What is to be known of a logger, as questions. */
export function loggerQuestions(given: Partial<LoggerGiven>): readonly Question[] {
  const text = (value: string | number | undefined) => (value === undefined ? '' : String(value))
  return [
    {
      name: 'serial',
      label: 'Which number does it carry?',
      kind: 'text',
      value: text(given.serial),
      needed: true,
    },
    { name: 'model', label: 'Which model?', kind: 'text', value: text(given.model) },
    {
      name: 'floor_rh_percent',
      label: 'The least it can read',
      unit: '%',
      kind: 'number',
      value: text(given.floor_rh_percent),
      hint: 'Below it many loggers print one value for ever; that is no reading.',
    },
    {
      name: 'error_rh_percent',
      label: 'How far may it be off?',
      unit: '± %',
      kind: 'number',
      value: text(given.error_rh_percent),
      hint: 'As its maker or its calibration says.',
    },
    {
      name: 'calibration_due',
      label: 'When is it due to be calibrated?',
      kind: 'date',
      value: text(given.calibration_due),
    },
  ]
}
