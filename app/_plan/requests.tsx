import Link from 'next/link'
import type { Plan, Request, Statement } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { capital } from '../../lib/wording/capital.ts'
import { gainOf, gainWords } from '../../lib/wording/gain.ts'
import { answerTables, harmWords, ifAgreedWords, leaveWords, timeWords } from '../../lib/wording/request.ts'
import { Fold } from '../_evidence/fold.tsx'
import { Source } from '../_statement/reasons.tsx'
import { Answers } from './answers.tsx'
import { Lines } from './lines.tsx'
import lines from './lines.module.css'
import style from './requests.module.css'

interface Props {
  readonly requests: readonly Request[]
  readonly interpretations: Plan['interpretations']
  readonly knowledge: Knowledge
  /** How many parts the find has: a line for some of them says for which. */
  readonly parts: number
  /** An issued plan was not asked what each answer would change; only then nothing is said of it. */
  readonly tellsChanges: boolean
}

/** What to ask a laboratory, in order: the question, what it would settle, what it costs, and what each answer would mean. */
export function Requests({ requests, interpretations, knowledge, parts, tellsChanges }: Props) {
  return (
    <ol className={lines.steps}>
      {requests.map((request) => (
        <li key={request.method} className={lines.request} data-method={request.method}>
          <h3>{knowledge.methods[request.method]?.label ?? request.method}</h3>
          <p className="measure">{request.question}</p>
          {request.ifConservatorAgrees && <p className={style.agreed}>{ifAgreedWords}</p>}
          <Costs request={request} interpretations={interpretations} knowledge={knowledge} />
          {request.cautions.map((caution) => (
            <p key={caution} className="small measure">
              {caution}
            </p>
          ))}
          {answerTables(request, knowledge).length > 0 && (
            <Fold says="What each answer would mean">
              {answerTables(request, knowledge).map((table) => (
                <Answers
                  key={`${table.component} ${table.matter} ${table.label}`}
                  table={table}
                  knowledge={knowledge}
                  parts={parts}
                  tellsChanges={tellsChanges}
                />
              ))}
            </Fold>
          )}
          <Misleads request={request} knowledge={knowledge} />
          <Lines statements={ruleLines(request)} knowledge={knowledge} parts={parts} />
          <WhyAsked request={request} knowledge={knowledge} />
          <Later request={request} knowledge={knowledge} />
        </li>
      ))}
    </ol>
  )
}

type Asked = Pick<Props, 'knowledge'> & { readonly request: Request }

function Costs({ request, interpretations, knowledge }: Asked & Pick<Props, 'interpretations'>) {
  const method = knowledge.methods[request.method]
  const gain = gainOf(request, interpretations)
  const entries: readonly (readonly [string, string])[] = [
    ['Would settle', gain === null ? '' : capital(gainWords[gain])],
    ['Who', request.who],
    ['Time', method === undefined ? '' : timeWords(method)],
    [
      'Costs the find',
      method === undefined
        ? request.sampling
          ? 'Takes a sample.'
          : 'Takes no sample.'
        : [harmWords[method.harm], method.leave ? leaveWords : ''].filter(Boolean).join(' '),
    ],
  ]
  return (
    <dl className={style.costs}>
      {entries
        .filter(([, text]) => text !== '')
        .map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
    </dl>
  )
}

function Misleads({ request: { misleads }, knowledge }: Asked) {
  const ways = [...new Map(misleads.map((way) => [way.says, way])).values()]
  if (ways.length === 0) return null
  return (
    <Fold says="How it can mislead here">
      <ul className="small stack">
        {ways.map(({ says, sources }) => (
          <li key={says} className="measure">
            {capital(says)}
            <ul className="plain-list soft">
              {sources.map((source) => (
                <li key={`${source.work} ${source.place}`}>
                  <Source source={source} knowledge={knowledge} />
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </Fold>
  )
}

/** The evidence asks without a rule: its line leads to a matter and its tables. */
const fromEvidence = ({ rule }: Statement) => rule.startsWith('evidence/')
const fromRule = (statement: Statement) => !fromEvidence(statement)

/** The rules that ask for it; those of requests that did not fit are folded under the last. */
function ruleLines({ basis }: Request): readonly Statement[] {
  const own = basis.filter(fromRule).map((one) => ({ ...one, also: one.also.filter(fromRule) }))
  const folded = basis.filter(fromEvidence).flatMap(({ also }) => also.filter(fromRule))
  return [...own, ...folded].filter(({ text }) => text !== '')
}

const matterOf = ({ rule }: Statement, knowledge: Knowledge) =>
  knowledge.matters[rule.slice('evidence/'.length)]

function WhyAsked({ request: { basis }, knowledge }: Asked) {
  const matters = basis.filter(fromEvidence).flatMap((one) => matterOf(one, knowledge) ?? [])
  if (matters.length === 0) return null
  return (
    <p className="small no-print">
      {'Weighed from the tables of '}
      {[...new Set(matters)].map(({ id, asks }, at) => (
        <span key={id}>
          {at > 0 && ', '}
          <Link href={`/sources/evidence/${id}`}>{asks}</Link>
        </span>
      ))}
    </p>
  )
}

/** What the evidence would ask for after these, a line a method. */
function Later({ request: { basis }, knowledge }: Asked) {
  const asked = basis.flatMap(({ also }) => also.filter(fromEvidence))
  if (asked.length === 0) return null
  return (
    <div className="small">
      <h4>After these, if the question is still open</h4>
      <ul>
        {[...Map.groupBy(asked, ({ code }) => code)].map(([method, statements]) => (
          <li key={method}>
            {`${knowledge.methods[method]?.label ?? method}: ${[...new Set(statements.map(({ text }) => text))].join(' ')}`}
          </li>
        ))}
      </ul>
    </div>
  )
}
