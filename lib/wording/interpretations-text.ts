import type { Interpretation, Leaning } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import { valueLabel } from './fact.ts'
import { explanationName, fewInHundred, likelyWords } from './interpretation.ts'
import { listWords } from './list.ts'
import { findWords } from './plan-text.ts'
import { stoodOf } from './standing.ts'
import { wrap } from './wrap.ts'

/** More of what speaks for one explanation is in the plan; a line is read, a paragraph is not. */
const mostLeanings = 3

const named = ({ interpretation }: Interpretation, knowledge: Knowledge) =>
  explanationName(interpretation, knowledge)

/** `tinning (about 6 in 10 (4 to 8))` reads badly, so what stands in brackets already follows a comma. */
const nameAndChance = (one: Interpretation, knowledge: Knowledge) =>
  `${named(one, knowledge)}, ${likelyWords(one.probability, one.range)}`

/** Who cannot be left out: above a few in a hundred by itself, or by its range. */
const stillPossible = ({ probability, range }: Interpretation) =>
  probability >= fewInHundred || range[1] >= 0.1

/** How one matter stands: its leader, how sure that is, and who cannot be ruled out. The rivals come likeliest first. */
export function standingSentence(rivals: readonly Interpretation[], knowledge: Knowledge): string {
  const [leader, ...others] = rivals
  if (leader === undefined) return ''
  const possible = others.filter(stillPossible)
  const names = possible.map((one) => named(one, knowledge))
  const rest = names.length === 0 ? '.' : `; ${listWords(names)} cannot be ruled out.`
  if (leader.standing === 'settled' && leader.probability === 0)
    return 'Found to be none of the explanations listed.'
  if (leader.probability === 1) return `By the record, ${named(leader, knowledge)}.`
  switch (leader.standing) {
    case 'settled':
      return `Almost certainly ${named(leader, knowledge)}${rest}`
    case 'probable':
      return `Probably ${nameAndChance(leader, knowledge)}${rest}`
    case 'likelier':
      return `More likely ${nameAndChance(leader, knowledge)}, than anything else${rest}`
    case 'open': {
      const open = [leader, ...possible].map((one) => nameAndChance(one, knowledge))
      return open.length === 1 ? `Perhaps ${open[0]}.` : `Cannot be told apart yet: ${open.join('; ')}.`
    }
  }
}

const leanings = (label: string, of: readonly Leaning[]): readonly string[] =>
  of.length === 0
    ? []
    : [
        `${label} ${of
          .slice(0, mostLeanings)
          .map(({ says }) => says)
          .join('; ')}.`,
      ]

function aboutWords(
  { component, about, matter }: Interpretation,
  parts: number,
  knowledge: Knowledge,
): string {
  const field = knowledge.matters[matter]?.about.find(({ value }) => value === about)?.field ?? 'seen'
  const what = valueLabel(field, about, knowledge)
  return parts > 1 ? `${component}, ${explanationCase(what)}` : what
}

const explanationCase = (label: string) => label.charAt(0).toLowerCase() + label.slice(1)

/** What the things seen on one find may be, for a terminal; empty where nothing seen has more than one explanation. */
export function interpretationsText(
  record: ConditionRecord,
  interpretations: readonly Interpretation[],
  knowledge: Knowledge,
): string {
  const lines = stoodOf(interpretations).flatMap(({ rivals }) => {
    const [leader] = rivals
    const about = aboutWords(leader!, record.components.length, knowledge)
    return [
      wrap('  ', `${about}: ${standingSentence(rivals, knowledge)}`),
      ...[...leanings('Speaks for it:', leader!.for), ...leanings('Speaks against it:', leader!.against)].map(
        (line) => wrap('      ', line),
      ),
    ]
  })
  return lines.length === 0 ? '' : [findWords(record, knowledge), ...lines].join('\n')
}
