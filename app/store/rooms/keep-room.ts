'use server'

import { keepForm } from '../_forms/keep-form.ts'
import type { FormReader } from '../_forms/read-form.ts'
import type { Said } from '../_forms/said.ts'

const percent = { from: 0, to: 100 }
const degrees = { from: -40, to: 60 }

function climate(form: FormReader) {
  const asked = {
    rh_low: form.number('rh_low', percent),
    rh_high: form.number('rh_high', percent),
    t_low: form.number('t_low', degrees),
    t_high: form.number('t_high', degrees),
  }
  for (const [low, high] of [
    ['rh_low', 'rh_high'],
    ['t_low', 't_high'],
  ] as const) {
    if ((asked[low] ?? -Infinity) > (asked[high] ?? Infinity))
      form.wrong[high] = 'This lies below the lowest.'
  }
  return Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined))
}

/** A room and the climate it is run at. A version names the one that is mended; without one it is new, or named again. */
export async function keepRoom(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader) => {
      const version = reader.text('version')
      return {
        projectId: reader.text('project'),
        version: version === '' ? null : Number(version),
        room: { room: reader.needed('room', 'Write what the room is called.'), ...climate(reader) },
      }
    },
    keep: (services, asked, by) => services.keepRoom(asked, by),
    says: 'Kept. Forecasts of its boxes follow it.',
  })
}
