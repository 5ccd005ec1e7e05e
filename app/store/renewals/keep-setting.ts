'use server'

import { keepForm } from '../_forms/keep-form.ts'
import type { Said } from '../_forms/said.ts'

/** An empty answer is one too: nobody has said, so it limits nothing. Hours by month, where somebody gave them, stay. */
export async function keepSetting(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader) => {
      const amount = (name: string, to: number) => reader.number(name, { from: 0, to }) ?? null
      const version = reader.text('version')
      return {
        projectId: reader.text('project'),
        version: version === '' ? null : Number(version),
        setting: {
          gelDryKg: amount('gelDryKg', 10_000),
          gelSpentKg: amount('gelSpentKg', 10_000),
          ovenKgPerBatch: amount('ovenKgPerBatch', 1000),
          ovenHoursPerBatch: amount('ovenHoursPerBatch', 168),
          ovenBatchesPerWeek: amount('ovenBatchesPerWeek', 100),
          minutesPerBox: amount('minutesPerBox', 600),
          hoursPerWeek: amount('hoursPerWeek', 168),
        },
      }
    },
    keep: (services, asked, by) => services.keepStoreSetting(asked, by),
    says: 'Kept. The weeks below are planned by it.',
  })
}
