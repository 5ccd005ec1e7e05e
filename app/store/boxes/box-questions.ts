import { boxKinds, type BoxGiven } from '../../../lib/record/places.ts'
import type { Question } from '../_forms/ask-field.tsx'

const kindWords: Readonly<Record<(typeof boxKinds)[number], string>> = {
  box: 'a closed box',
  tub: 'a tub of water',
  case: 'a show case',
  'barrier-pack': 'a pack of barrier film',
}

interface Names {
  readonly rooms: readonly string[]
  readonly models: readonly string[]
}

/** What a box is, as questions; a new one is asked for its number too. */
export function boxQuestions(given: Partial<BoxGiven>, { rooms, models }: Names): readonly Question[] {
  const text = (value: string | number | undefined) => (value === undefined ? '' : String(value))
  return [
    { name: 'box', label: 'What is it called?', kind: 'text', value: text(given.box), needed: true },
    {
      name: 'kind',
      label: 'What is it?',
      kind: 'choice',
      value: given.kind ?? 'box',
      options: boxKinds.map((value) => ({ value, label: kindWords[value] })),
    },
    { name: 'room', label: 'In which room?', kind: 'text', value: text(given.room), offered: rooms },
    { name: 'shelf', label: 'On which shelf?', kind: 'text', value: text(given.shelf) },
    {
      name: 'model',
      label: 'Which model?',
      kind: 'text',
      value: text(given.model),
      offered: models,
      hint: 'Boxes of one model in one room share what is learnt of their leaks.',
    },
    { name: 'volume_l', label: 'How large?', unit: 'L', kind: 'number', value: text(given.volume_l) },
    {
      name: 'air_changes_per_day',
      label: 'Air changes a day',
      kind: 'number',
      value: text(given.air_changes_per_day),
      hint: 'Only if somebody measured it.',
    },
    {
      name: 'gel_kg',
      label: 'How much gel is in it?',
      unit: 'kg',
      kind: 'number',
      value: text(given.gel_kg),
    },
    { name: 'gel_kind', label: 'Which gel?', kind: 'text', value: text(given.gel_kind) },
    { name: 'gel_conditioned_on', label: 'Since when?', kind: 'date', value: text(given.gel_conditioned_on) },
    {
      name: 'gel_rh_percent',
      label: 'How dry was it then?',
      unit: '%',
      kind: 'number',
      value: text(given.gel_rh_percent),
    },
    { name: 'target_min', label: 'Not drier than', unit: '%', kind: 'number', value: text(given.target_min) },
    {
      name: 'target_max',
      label: 'Not damper than',
      unit: '%',
      kind: 'number',
      value: text(given.target_max),
    },
    { name: 'filled_on', label: 'A tub: filled on', kind: 'date', value: text(given.filled_on) },
    {
      name: 'water_changed_on',
      label: 'A tub: water changed on',
      kind: 'date',
      value: text(given.water_changed_on),
    },
    { name: 'seal_note', label: 'Anything about its seal?', kind: 'long', value: text(given.seal_note) },
  ]
}
