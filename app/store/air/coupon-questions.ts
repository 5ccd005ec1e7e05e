import type { IsoDate } from '../../../lib/base/calendar.ts'
import type { AirShown } from '../../../lib/services/show-air.ts'
import type { Question } from '../_forms/ask-field.tsx'

/** What is to be known of a coupon, as questions. */
export function couponQuestions(
  places: AirShown['places'],
  today: IsoDate,
  errorTakenMg: number,
): readonly Question[] {
  return [
    {
      name: 'metal',
      label: 'Of which metal?',
      kind: 'choice',
      options: [
        { value: '', label: 'choose' },
        { value: 'silver', label: 'silver' },
        { value: 'copper', label: 'copper' },
        { value: 'lead', label: 'lead' },
        { value: 'steel', label: 'steel' },
        { value: 'zinc', label: 'zinc' },
      ],
      needed: true,
    },
    {
      name: 'box',
      label: 'In which box did it hang?',
      kind: 'text',
      offered: places.boxes,
      hint: 'Left empty where it hung in the room itself.',
    },
    {
      name: 'room',
      label: 'In which room?',
      kind: 'choice',
      options: [
        { value: '', label: 'the room of the box' },
        ...places.rooms.map((room) => ({ value: room, label: room })),
      ],
    },
    {
      name: 'area_cm2',
      label: 'All its faces together',
      unit: 'cm²',
      kind: 'number',
      hint: 'Both sides: a strip of 4 by 4 cm has 32.',
      needed: true,
    },
    {
      name: 'on',
      label: 'When was it taken down?',
      kind: 'date',
      value: today,
      needed: true,
    },
    { name: 'hung_on', label: 'When was it hung?', kind: 'date', hint: 'Or how many days:' },
    { name: 'days', label: 'Days it hung', kind: 'number' },
    {
      name: 'method',
      label: 'How was it weighed?',
      kind: 'choice',
      options: [
        { value: '', label: 'choose' },
        { value: 'mass-gain', label: 'as it came down: the gain' },
        { value: 'mass-loss', label: 'with its corrosion taken off: the loss' },
      ],
      needed: true,
    },
    {
      name: 'mass_change_mg',
      label: 'How much heavier, or for a loss lighter?',
      unit: 'mg',
      kind: 'number',
      hint: 'With a minus where it changed the other way.',
      needed: true,
    },
    {
      name: 'weighing_error_mg',
      label: 'How far may the two weighings be off?',
      unit: '± mg',
      kind: 'number',
      hint: `Left empty, ± ${errorTakenMg} is taken, and said.`,
    },
    { name: 'note', label: 'Anything else worth knowing', kind: 'long' },
  ]
}
