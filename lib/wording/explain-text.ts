import type { Interpretation, Leaning, Plan, Statement } from '../engine/plan.ts'
import type { Knowledge, Rule, SourceRef } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import { shortCitation, sourceWords } from './citation.ts'
import { codeLabel, factWords } from './fact.ts'
import { figureWords } from './figure.ts'
import { againstWords, explanationName, fewInHundred, forWords, likelyWords } from './interpretation.ts'
import { listWords } from './list.ts'
import { certaintyWords, knownWords, strengthWords, urgencyWords } from './marks.ts'
import { findWords } from './plan-text.ts'
import { raisedWords, standingWords, stoodOf, type Stood } from './standing.ts'
import { wrap } from './wrap.ts'

function ruleOf(id: string, knowledge: Knowledge): Rule | undefined {
  const [decision, rule] = id.split('/')
  return knowledge.decisions.find((one) => one.id === decision)?.rules.find((one) => one.id === rule)
}

function workLine(
  { work, place, known, says }: Pick<SourceRef, 'work' | 'place' | 'known'> & Partial<SourceRef>,
  knowledge: Knowledge,
): string {
  const full = knowledge.works[work]
  const against = says === 'against' ? 'against it: ' : ''
  const name = full ? shortCitation(full) : work
  const printed = place === null ? '' : `, ${place}`
  return known === 'common-practice'
    ? `${against}${name}`
    : `${against}${name}${printed} (${knownWords[known].label})`
}

/** One line of advice with all that stands behind it, and the lines folded under it. */
function explained(statement: Statement, knowledge: Knowledge): readonly string[] {
  const rule = ruleOf(statement.rule, knowledge)
  const sources = rule?.sources ?? statement.sources
  const figures = statement.figures.flatMap((id) => {
    const figure = knowledge.figures[id]
    if (!figure) return []
    const source = workLine({ ...figure.source, known: figure.known }, knowledge)
    return [`${figure.says}: ${figureWords(figure, knowledge)}; ${figure.validFor}. ${source}`]
  })
  const contested = statement.contested === undefined ? undefined : knowledge.contested[statement.contested]
  const also = statement.also.flatMap((one) => explained(one, knowledge))
  const lines: readonly (readonly [string, string])[] = [
    ['Why', statement.because],
    [
      'Rule',
      `${statement.rule}${rule ? `, ${rule.title}` : ''} (${strengthWords[statement.strength].toLowerCase()}; ${certaintyWords[statement.certainty]})`,
    ],
    ...statement.facts.map((fact) => ['From', factWords(fact, knowledge)] as const),
    ...(statement.precautionary ? [['Mind', 'To be safe, until you look.'] as const] : []),
    ...(statement.caution === undefined ? [] : [['Mind', statement.caution] as const]),
    ...figures.map((figure) => ['Figure', figure] as const),
    ...sources.map((source) => ['Source', workLine(source, knowledge)] as const),
    ...(contested
      ? [['Contested', `${contested.question} ${contested.follows} ${contested.because}`] as const]
      : []),
  ]
  const whose = statement.components.length === 0 ? '' : ` [${statement.components.join(', ')}]`
  return [
    wrap('  · ', `${statement.text || rule?.title || statement.code}${whose}`),
    ...lines.filter(([, text]) => text !== '').map(([name, text]) => wrap(`      ${name.padEnd(10)}`, text)),
    ...also,
  ]
}

/** What something seen may be: how it stands, then each explanation with what speaks for it and against it. */
function weighed(stood: Stood, knowledge: Knowledge, parts: number): readonly string[] {
  const told = ({ says, strength, sources }: Leaning, words: typeof forWords) =>
    `${says}, which ${words[strength]} (${sourceWords(sources, knowledge)})`
  const likely = ({ probability }: Interpretation) => probability >= fewInHundred
  const hardly = stood.rivals
    .filter((rival) => !likely(rival))
    .map(({ interpretation }) => explanationName(interpretation, knowledge))
  return [
    wrap('  · ', `${raisedWords(stood, knowledge, parts)}: ${standingWords(stood, knowledge)}.`),
    ...stood.rivals
      .filter(likely)
      .flatMap(({ interpretation, probability, range, for: speakFor, against }) => [
        wrap('      ', `${codeLabel(interpretation, knowledge)}: ${likelyWords(probability, range)}`),
        ...speakFor.map((one) => wrap('        + ', told(one, forWords))),
        ...against.map((one) => wrap('        − ', told(one, againstWords))),
      ]),
    ...(hardly.length > 0 && stood.rivals.some(({ probability }) => probability > 0 && probability < 1)
      ? [wrap('      ', `Also possible: ${listWords(hardly)}`)]
      : []),
  ]
}

/** Every line of a plan with its reason: the rule, the facts it used, its figures and its works. */
export function explainText(record: ConditionRecord, plan: Plan, knowledge: Knowledge): string {
  const { storage } = plan
  const sections: readonly (readonly [string, readonly Statement[]])[] = [
    ['Cautions', plan.cautions],
    [`How soon: ${urgencyWords[plan.urgency].label}`, plan.urgencyBasis],
    ['Steps', plan.steps],
    [
      'Keeping',
      [
        ...storage.basis,
        ...(storage.conflict?.waysOut ?? []),
        ...(storage.interim ? [storage.interim.says] : []),
        ...storage.act.map(({ says }) => says),
      ],
    ],
    ['Before you do that', plan.objections],
    ['Handling', plan.handling],
    ['Packing', plan.packing],
    ['Requests', plan.requests.flatMap(({ basis }) => basis)],
    ['Looking again', plan.inspection.basis],
    ['What a conservator decides', plan.referrals],
    ['Keeping or letting go', plan.selection],
  ]
  const body = sections
    .filter(([, statements]) => statements.length > 0)
    .flatMap(([name, statements]) => ['', name, ...statements.flatMap((one) => explained(one, knowledge))])
  const perhaps = stoodOf(plan.interpretations).flatMap((one) =>
    weighed(one, knowledge, record.components.length),
  )
  const open = plan.notCovered.map(({ what, because }) => wrap('  · ', `${what}: ${because}`))
  return [
    findWords(record, knowledge),
    `Planned for ${plan.asOf} with knowledge ${plan.knowledge}`,
    ...body,
    ...(perhaps.length > 0 ? ['', 'What it may be', ...perhaps] : []),
    ...(open.length > 0 ? ['', 'No advice on', ...open] : []),
  ].join('\n')
}
