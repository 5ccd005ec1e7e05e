import Link from 'next/link'
import type { Statement } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { shortCitation } from '../../lib/wording/citation.ts'
import { factWords } from '../../lib/wording/fact.ts'
import { figureWords } from '../../lib/wording/figure.ts'
import { KnownMark } from '../_marks/known-mark.tsx'
import style from './statement.module.css'

/** Why, what the record said, which rule, which figures, which works: down to the page. */
export function Reasons({
  statement,
  knowledge,
}: {
  readonly statement: Statement
  readonly knowledge: Knowledge
}) {
  const contested = statement.contested === undefined ? undefined : knowledge.contested[statement.contested]
  const facts = [...new Set(statement.facts.map((fact) => factWords(fact, knowledge)))]
  return (
    <div className={style.reasons}>
      <p>{statement.because}</p>
      <dl>
        {facts.length > 0 && (
          <div>
            <dt>Rests on</dt>
            {facts.map((fact) => (
              <dd key={fact}>{fact}</dd>
            ))}
          </div>
        )}
        {statement.figures.length > 0 && (
          <div>
            <dt>Figures</dt>
            {statement.figures.map((id) => (
              <dd key={id}>
                <FigureLink id={id} knowledge={knowledge} />
              </dd>
            ))}
          </div>
        )}
        <div>
          <dt>Sources</dt>
          {statement.sources.map((source) => (
            <dd key={`${source.work} ${source.place}`}>
              <Source source={source} knowledge={knowledge} />
            </dd>
          ))}
        </div>
        {contested !== undefined && (
          <div>
            <dt>Contested</dt>
            <dd>
              <Link href={`/sources/contested/${contested.id}`}>{contested.question}</Link>
            </dd>
          </div>
        )}
        <div>
          <dt>Rule</dt>
          <dd>
            <Link href={ruleAddress(statement.rule)}>{ruleTitle(statement.rule, knowledge)}</Link>
          </dd>
        </div>
      </dl>
    </div>
  )
}

/** Where a rule stands; what the evidence base asks for stands with its matter. */
function ruleAddress(fullId: string): string {
  const [decision = '', rule = ''] = fullId.split('/')
  return decision === 'evidence' ? `/sources/evidence/${rule}` : `/sources/decisions/${decision}#${rule}`
}

/** What a rule is about, in a line; its full id, which is its decision's and its own, where it is no longer known. */
export function ruleTitle(fullId: string, knowledge: Knowledge): string {
  const [decision, rule = ''] = fullId.split('/')
  if (decision === 'evidence') return knowledge.matters[rule]?.asks ?? fullId
  const rules = knowledge.decisions.find(({ id }) => id === decision)?.rules
  return rules?.find(({ id }) => id === rule)?.title ?? fullId
}

function FigureLink({ id, knowledge }: { readonly id: string; readonly knowledge: Knowledge }) {
  const figure = knowledge.figures[id]
  if (figure === undefined) return <>{id}</>
  return (
    <>
      <Link href={`/sources/figures/${id}`}>{figureWords(figure, knowledge)}</Link> {figure.says}{' '}
      <KnownMark known={figure.known} />
    </>
  )
}

interface SourceProps {
  readonly source: Statement['sources'][number]
  readonly knowledge: Knowledge
}

export function Source({ source, knowledge }: SourceProps) {
  const work = knowledge.works[source.work]
  return (
    <>
      <Link href={`/sources/works/${source.work}`}>
        {work === undefined ? source.work : shortCitation(work)}
      </Link>
      {source.place !== null && `, ${source.place}`} <KnownMark known={source.known} />
    </>
  )
}
