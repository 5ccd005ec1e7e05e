import { salts } from '../../../lib/climate/fixed-points.ts'
import { saltWords } from '../../../lib/wording/humidity-salts.ts'
import type { IsoDate } from '../../../lib/base/calendar.ts'
import type { Question } from '../_forms/ask-field.tsx'

const names = salts.map((salt) => ({ value: salt, label: saltWords(salt) }))

/** What a logger read over one salt or two, as questions. */
export function saltQuestions(today: IsoDate): readonly Question[] {
  return [
    {
      name: 'first',
      label: 'Over which salt did it stand?',
      kind: 'choice',
      value: 'lithium-chloride',
      options: names,
      hint: 'For dry boxes lithium chloride and magnesium chloride lie on either side of what matters.',
    },
    { name: 'first_read', label: 'What did it read there?', unit: '%', kind: 'number', needed: true },
    {
      name: 'second',
      label: 'And over which second salt?',
      kind: 'choice',
      value: '',
      options: [{ value: '', label: 'no second one' }, ...names],
    },
    { name: 'second_read', label: 'What did it read over the second?', unit: '%', kind: 'number' },
    { name: 'temperature', label: 'How warm was it?', unit: '°C', kind: 'number', value: '20', needed: true },
    { name: 'on', label: 'On which day?', kind: 'date', value: today, needed: true },
  ]
}
