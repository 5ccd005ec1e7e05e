import type { Interpretation, Plan, Standing } from '../engine/plan.ts'
import type { Matter } from '../knowledge/evidence.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import { capital } from './capital.ts'
import { valueLabel } from './fact.ts'
import { explanationName, fewInHundred } from './interpretation.ts'
import { listWords } from './list.ts'

/** One thing to explain on one part, with its explanations, the likeliest first. */
export interface Stood {
  readonly component: string
  readonly matter: string
  readonly about: string
  readonly standing: Standing
  readonly rivals: readonly Interpretation[]
}

/** The interpretations of a plan, matter by matter of each part, in the order of the plan. */
export function stoodOf(interpretations: Plan['interpretations']): readonly Stood[] {
  const groups = Map.groupBy(interpretations, ({ component, matter }) => `${matter} of ${component}`)
  return [...groups.values()].map((rivals) => {
    const { component, matter, about, standing } = rivals[0]!
    return { component, matter, about, standing, rivals }
  })
}

/** Explanations that the leading one cannot be told from: they reach as far as its own range does. */
function level({ rivals }: Stood): readonly Interpretation[] {
  const least = rivals[0]!.range[0]
  return rivals.filter(
    ({ range, probability }, at) => at < 2 || (range[1] >= least && probability >= fewInHundred),
  )
}

/** How a matter stands, in a line: `Probably tinning`, `Likelier tinning than silvering`. */
export function standingWords(stood: Stood, knowledge: Knowledge): string {
  const name = ({ interpretation }: Interpretation) => explanationName(interpretation, knowledge)
  const [first, second] = stood.rivals
  if (first === undefined) return 'Nothing explains it yet'
  switch (stood.standing) {
    case 'settled':
      if (first.probability === 0) return 'Settled: none of the explanations listed'
      return first.probability === 1
        ? `Settled by analysis: ${name(first)}`
        : `As good as settled: ${name(first)}`
    case 'probable':
      return `Probably ${name(first)}`
    case 'likelier':
      return `Likelier ${name(first)}${second === undefined ? '' : ` than ${name(second)}`}`
    case 'open': {
      const alike = level(stood)
      const few = alike.slice(0, 3).map(name)
      const named = alike.length > few.length ? `${few.join(', ')} or others` : listWords(few, 'or')
      return `Cannot be told apart yet: ${named}`
    }
  }
}

/** What was seen and where: `White metal sheen (plate)`. */
export function raisedWords({ about, component }: Stood, knowledge: Knowledge, parts: number): string {
  const known = knowledge.vocabulary.fields['evidence']?.values.some(({ id }) => id === about)
  const seen = capital(valueLabel(known === true ? 'evidence' : 'seen', about, knowledge))
  return parts > 1 ? `${seen} (${component})` : seen
}

/** What would tell rivals apart: what an eye has not answered yet, and which analyses are asked for. */
export interface Tells {
  readonly looks: readonly string[]
  readonly methods: readonly string[]
}

const unanswered = (question: string, looked: readonly string[]) =>
  !looked.some((answer) => answer.startsWith(`${question}:`))

function openLooks(matter: Matter, looked: readonly string[]): readonly string[] {
  return matter.groups.flatMap(({ by, question }) =>
    by === 'eye' && question !== null && unanswered(question, looked) ? [question] : [],
  )
}

export function tellsOf(
  { component, matter, standing }: Stood,
  plan: Pick<Plan, 'lookNext' | 'requests'>,
  record: ConditionRecord,
  knowledge: Knowledge,
): Tells {
  const written = knowledge.matters[matter]
  if (written === undefined || standing === 'settled') return { looks: [], methods: [] }
  const part = record.components.find((one) => one.component === component)
  const asked = (question: string) => plan.lookNext.some(({ fact }) => fact.endsWith(`looked:${question}`))
  const looks = openLooks(written, part?.looked ?? [])
  return {
    // What is asked next stands first.
    looks: [...looks.filter(asked), ...looks.filter((question) => !asked(question))].flatMap(
      (question) => knowledge.questions[question]?.asks ?? [],
    ),
    methods: plan.requests
      .filter(({ means }) => means.some((one) => one.component === component && one.matter === matter))
      .map(({ method }) => knowledge.methods[method]?.label ?? method),
  }
}

/** The matters of a find for a terminal, a line each. */
export function standingLines(interpretations: Plan['interpretations'], knowledge: Knowledge, parts: number) {
  return stoodOf(interpretations).map(
    (stood) => `${raisedWords(stood, knowledge, parts)}: ${standingWords(stood, knowledge)}.`,
  )
}
