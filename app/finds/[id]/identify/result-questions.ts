import type { Group, Matter } from '../../../../lib/knowledge/evidence.ts'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import { methodFacts, questionsRead } from '../../../../lib/knowledge/method-facts.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { valueLabel } from '../../../../lib/wording/fact.ts'
import { explanationName } from '../../../../lib/wording/interpretation.ts'
import type { Question } from '../../../store/_forms/ask-field.tsx'

/** Several of a list may be ticked; each is a field of its own, `tick.xrd.acanthite`. */
export interface Ticks {
  readonly kind: 'ticks'
  readonly name: string
  readonly label: string
  readonly hint: string
  readonly options: readonly { readonly value: string; readonly label: string }[]
}

export type ReportQuestion = Question | Ticks

const groupsOf = (matter: Matter | undefined, method: string): readonly Group[] =>
  matter?.groups.filter(({ by }) => by === method) ?? []

/** Methods that tell something of a matter, in the order in which the matter names them. */
export const methodsOf = (matter: Matter): readonly string[] => [
  ...new Set(matter.groups.map(({ by }) => by).filter((by) => by !== 'eye' && by !== 'record')),
]

/** What of a result matters, in the words of the evidence base. */
function mattersWhether(groups: readonly Group[], fact: string): string {
  const said = groups
    .filter(({ states }) => states.some(({ when }) => when.some((cell) => cell.fact === fact)))
    .map(({ states }) => `It matters whether ${states.map(({ says }) => says).join('; ')}.`)
  return said.join(' ')
}

const phasesOf = (groups: readonly Group[], fact: string): readonly string[] => [
  ...new Set(
    groups.flatMap(({ states }) =>
      states.flatMap(({ when }) =>
        when.flatMap((cell) => (cell.fact === fact && 'any' in cell ? cell.any : [])),
      ),
    ),
  ),
]

/** A phase that is named by its formula, as it is written: `cu3sn` is Cu3Sn; null where it has a name. */
const formulaOf = (phase: string): string | null =>
  /\d/.test(phase) && /^(?:[a-z]{1,2}\d*)+$/.test(phase) ? phase.replaceAll(/[a-z]+/g, capital) : null

/** The questions for one kind of result that the record keeps. */
function factQuestions(
  fact: string,
  groups: readonly Group[],
  knowledge: Knowledge,
): readonly ReportQuestion[] {
  const whether = mattersWhether(groups, fact)
  const name = fact.replaceAll('_', '-')
  const values = (knowledge.vocabulary.fields[fact]?.values ?? []).map(({ id, label }) => ({
    value: id,
    label,
  }))
  switch (fact) {
    case 'xrf':
      return [
        {
          name: 'report.xrf',
          kind: 'text',
          label: 'Elements found, the strongest first',
          hint: `As symbols with spaces between, such as Cu Sn Pb. ${whether}`.trim(),
        },
      ]
    case 'xrd':
    case 'raman':
      return [
        {
          name: `tick.${name}`,
          kind: 'ticks',
          label: 'What was found',
          hint: whether,
          options: [
            ...phasesOf(groups, fact).map((phase) => ({
              value: phase,
              label: formulaOf(phase) ?? capital(valueLabel(fact, phase, knowledge)),
            })),
            { value: 'none', label: 'Nothing that could be named' },
          ],
        },
        {
          name: `report.${name}`,
          kind: 'text',
          label: 'What else was found',
          hint: 'Names of minerals or substances, with commas between.',
        },
      ]
    case 'radiograph':
      return [
        {
          name: 'tick.radiograph',
          kind: 'ticks',
          label: 'What the radiograph shows',
          hint: whether,
          options: [...values, { value: 'unknown', label: 'It could not be told' }],
        },
      ]
    case 'silver_nitrate':
      return [
        {
          name: 'report.silver-nitrate',
          kind: 'choice',
          label: 'Silver nitrate test',
          hint: whether,
          options: [notInIt, ...values, couldNotTell],
        },
      ]
    case 'residual_chloride_ppm':
      return [{ name: 'report.residual-chloride-ppm', kind: 'number', label: 'Chloride left', unit: 'ppm' }]
    case 'bath_chloride_mg_l':
      return [
        { name: 'report.bath-chloride-mg-l', kind: 'number', label: 'Chloride of the bath', unit: 'mg/l' },
      ]
    default:
      return []
  }
}

const notInIt = { value: '', label: 'Not in the report' } as const
const couldNotTell = { value: 'unknown', label: 'It could not be told' } as const

/** What can be asked of a report: what the record keeps of its method, and the questions which that method answers. */
export function reportQuestions(
  matter: Matter | undefined,
  method: string,
  knowledge: Knowledge,
): readonly ReportQuestion[] {
  const groups = groupsOf(matter, method)
  const facts = (methodFacts[method] ?? []).flatMap((fact) => factQuestions(fact, groups, knowledge))
  const told = new Set(groups.flatMap(questionsRead))
  const asked = [...told].flatMap((question): readonly ReportQuestion[] => {
    const written = knowledge.questions[question]
    if (written?.by !== method) return []
    return [
      {
        name: `look.${written.id}`,
        kind: 'choice',
        label: written.asks,
        hint: written.tell,
        options: [
          notInIt,
          ...written.answers.map(({ id, label }) => ({ value: id, label })),
          { value: 'none', label: 'None of these' },
          couldNotTell,
        ],
      },
    ]
  })
  return [...facts, ...asked]
}

/** What it then is: the explanations that compete, none of them, or nothing yet. */
export const foundQuestion = (matter: Matter, knowledge: Knowledge): Question => ({
  name: 'found',
  kind: 'choice',
  label: `${matter.asks.replace(/\?$/, '')}, then?`,
  hint: 'Only where whoever made the analysis says so. What was thought before is kept beside it.',
  options: [
    { value: '', label: 'Not settled yet' },
    ...matter.rivals.map(({ id }) => ({ value: id, label: capital(explanationName(id, knowledge)) })),
    { value: 'none-of-these', label: 'None of these' },
  ],
})

export const sourceQuestions = (today: string): readonly Question[] => [
  {
    name: 'byWhom',
    kind: 'text',
    label: 'Whose result is it?',
    hint: 'A name, a laboratory.',
    needed: true,
  },
  { name: 'on', kind: 'date', label: 'Of which day?', value: today, needed: true },
  { name: 'reference', kind: 'text', label: 'Number or place of the report' },
  { name: 'words', kind: 'long', label: 'In the words of the report' },
]
