'use server'

import type { BoxGiven } from '../../../lib/record/places.ts'
import { keepForm } from '../_forms/keep-form.ts'
import type { FormReader } from '../_forms/read-form.ts'
import type { Said } from '../_forms/said.ts'

const percent = { from: 0, to: 100 }

/** What the form says of the box; what it does not ask about stays as it was. */
function boxRead(form: FormReader): BoxGiven {
  const asked = {
    room: form.words('room'),
    shelf: form.words('shelf'),
    kind: form.words('kind'),
    model: form.words('model'),
    volume_l: form.number('volume_l', { from: 0.01, to: 1_000_000 }),
    air_changes_per_day: form.number('air_changes_per_day', { from: 0, to: 10_000 }),
    gel_kg: form.number('gel_kg', { from: 0, to: 1000 }),
    gel_kind: form.words('gel_kind'),
    gel_conditioned_on: form.dayOrNone('gel_conditioned_on'),
    gel_rh_percent: form.number('gel_rh_percent', percent),
    target_min: form.number('target_min', percent),
    target_max: form.number('target_max', percent),
    filled_on: form.dayOrNone('filled_on'),
    water_changed_on: form.dayOrNone('water_changed_on'),
    seal_note: form.words('seal_note'),
  }
  const { target_min: low, target_max: high } = asked
  if (low !== undefined && high !== undefined && low > high)
    form.wrong['target_max'] = 'This lies below what it must not be drier than.'
  const said = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined))
  return { box: form.needed('box', 'Write what the box is called.'), ...said }
}

export async function keepNewBox(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader) => ({ projectId: reader.text('project'), box: boxRead(reader) }),
    keep: (services, { projectId, box }, by) => services.keepBox({ projectId, box, version: null }, by),
    says: 'Kept. It stands on its shelf in the store now.',
  })
}

/** Against the version it was read at, so that nobody's change is lost; what the form does not ask about is carried along. */
export async function mendBox(_before: Said | null, form: FormData): Promise<Said> {
  return keepForm(form, {
    read: (reader) => ({
      boxId: reader.text('id'),
      projectId: reader.text('project'),
      version: Number(reader.text('version')),
      said: boxRead(reader),
    }),
    keep: async (services, { boxId, projectId, version, said }, by) => {
      const shown = await services.showBox({ boxId })
      if (!shown.ok) return shown
      const before = shown.value.line.box.given
      const carried = Object.entries(before).filter(([name]) => !form.has(name))
      const box = { ...Object.fromEntries(carried), ...said, box: before.box }
      return services.keepBox({ projectId, box, version }, by)
    },
    says: 'Kept.',
  })
}
