import type { StoreSettingGiven } from '../../../lib/services/store-setting.ts'
import type { Question } from '../_forms/ask-field.tsx'

const text = (value: number | null) => (value === null ? '' : String(value))

/** What renewals are levelled by, as questions. */
export function settingQuestions(setting: StoreSettingGiven): readonly Question[] {
  return [
    {
      name: 'gelDryKg',
      label: 'How much dry gel is there?',
      unit: 'kg',
      kind: 'number',
      value: text(setting.gelDryKg),
      hint: 'Sealed and ready to be put in.',
    },
    {
      name: 'gelSpentKg',
      label: 'How much spent gel waits to be dried?',
      unit: 'kg',
      kind: 'number',
      value: text(setting.gelSpentKg),
    },
    {
      name: 'ovenKgPerBatch',
      label: 'How much does the oven dry at once?',
      unit: 'kg',
      kind: 'number',
      value: text(setting.ovenKgPerBatch),
      hint: 'Nought if no gel is dried here.',
    },
    {
      name: 'ovenHoursPerBatch',
      label: 'How long does that take?',
      unit: 'h',
      kind: 'number',
      value: text(setting.ovenHoursPerBatch),
    },
    {
      name: 'ovenBatchesPerWeek',
      label: 'How often a week can it be done?',
      kind: 'number',
      value: text(setting.ovenBatchesPerWeek),
    },
    {
      name: 'minutesPerBox',
      label: 'How long does one box take?',
      unit: 'min',
      kind: 'number',
      value: text(setting.minutesPerBox),
    },
    {
      name: 'hoursPerWeek',
      label: 'How many hours a week are there for boxes?',
      unit: 'h',
      kind: 'number',
      value: text(setting.hoursPerWeek),
    },
  ]
}
