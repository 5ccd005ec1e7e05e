import type { IsoDate } from '../../../../lib/base/calendar.ts'
import { gelColours, stripIntervals } from '../../../../lib/papers/walk-list.ts'
import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { intervalWords, gelColourWords, lidWords } from '../../../../lib/wording/walk.ts'
import type { Question } from '../../_forms/ask-field.tsx'

const onDay = (today: IsoDate): Question => ({
  name: 'on',
  label: 'On which day?',
  kind: 'date',
  value: today,
  needed: true,
})
const choice = (value: string, label: string) => ({ value, label })
const nothing = choice('', 'not looked at, or can’t tell')

export function gelQuestions({ today, line: { box } }: BoxShown): readonly Question[] {
  const { gel_kg, gel_kind, gel_rh_percent } = box.given
  return [
    {
      name: 'gel_kg',
      label: 'How much gel went in?',
      unit: 'kg',
      kind: 'number',
      value: String(gel_kg ?? ''),
      needed: true,
    },
    {
      name: 'gel_kind',
      label: 'What kind?',
      kind: 'text',
      value: gel_kind ?? '',
      offered: ['plain', 'orange indicating', 'blue indicating', 'cassette', 'sachets'],
    },
    {
      name: 'gel_rh_percent',
      label: 'How dry was it?',
      unit: '%',
      kind: 'number',
      value: String(gel_rh_percent ?? ''),
      hint: 'Relative humidity it was conditioned to, if anybody measured it.',
    },
    {
      name: 'removed_kg',
      label: 'How much spent gel came out?',
      unit: 'kg',
      kind: 'number',
      hint: 'Left empty: as much as was in it.',
    },
    onDay(today),
    { name: 'note', label: 'Anything to remember?', kind: 'long' },
  ]
}

export function stripQuestions(today: IsoDate): readonly Question[] {
  return [
    {
      name: 'strip',
      label: 'What does the strip read?',
      kind: 'choice',
      options: [
        nothing,
        ...stripIntervals.map(([low, high]) => choice(`${low}-${high}`, `${intervalWords([low, high])} %`)),
      ],
      hint: 'Through the closed lid.',
    },
    {
      name: 'gel_colour',
      label: 'How does the gel look?',
      kind: 'choice',
      options: [nothing, ...gelColours.map((colour) => choice(colour, gelColourWords[colour] ?? colour))],
    },
    {
      name: 'lid',
      label: 'How is the lid?',
      kind: 'choice',
      options: [nothing, choice('seated', lidWords.seated), choice('not-seated', lidWords['not-seated'])],
    },
    onDay(today),
  ]
}

export function lidQuestions(today: IsoDate): readonly Question[] {
  return [
    {
      name: 'lid',
      label: 'What of the lid?',
      kind: 'choice',
      options: [
        choice('opened', 'opened and closed again'),
        choice('not-seated', 'found not seated, and seated now'),
        choice('seated', 'looked at: seated all round'),
      ],
    },
    { name: 'minutes', label: 'Open for how long?', unit: 'min', kind: 'number' },
    onDay(today),
    { name: 'why', label: 'Why?', kind: 'text' },
  ]
}

export function waterQuestions(today: IsoDate): readonly Question[] {
  return [onDay(today), { name: 'note', label: 'Anything seen in the water?', kind: 'text' }]
}

export function moveQuestions({ today, finds, out }: BoxShown): readonly Question[] {
  return [
    {
      name: 'find',
      label: 'Which find?',
      kind: 'choice',
      needed: true,
      options: [
        ...finds.map(({ findId, line }) => choice(findId, `${line.findNumber} ${line.object}`)),
        ...out.map(({ find }) => choice(find.id, `${find.findNumber} (out)`)),
      ],
    },
    {
      name: 'move',
      label: 'What became of it?',
      kind: 'choice',
      options: [
        choice('out', 'it went out'),
        choice('back', 'it came back'),
        choice('to-box', 'it went into another box'),
      ],
    },
    { name: 'to', label: 'Into which box?', kind: 'text', hint: 'Only if it went into another box.' },
    {
      name: 'where',
      label: 'Where to?',
      kind: 'text',
      hint: 'Only if it went out: laboratory, photographer, loan …',
    },
    { name: 'why', label: 'Why?', kind: 'text' },
    onDay(today),
  ]
}

export function loggerQuestions(today: IsoDate, serials: readonly string[]): readonly Question[] {
  return [
    {
      name: 'serial',
      label: 'Which logger?',
      kind: 'choice',
      needed: true,
      options: serials.map((serial) => choice(serial, serial)),
    },
    {
      name: 'does',
      label: 'What was done?',
      kind: 'choice',
      options: [choice('here', 'put into this box'), choice('away', 'taken out and put away')],
    },
    onDay(today),
  ]
}
