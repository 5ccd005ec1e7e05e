import Link from 'next/link'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import type { ConditionRecord } from '../../../../lib/record/record.ts'
import type { Identification } from '../../../../lib/services/identification.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { foundWords, judgedWords } from '../../../../lib/wording/identification.ts'
import { standingWords, type Stood } from '../../../../lib/wording/standing.ts'
import { methodsOf } from './result-questions.ts'
import style from './identify.module.css'

interface Props {
  readonly id: string
  readonly stood: readonly Stood[]
  readonly record: ConditionRecord
  readonly identifications: readonly Identification[]
  readonly knowledge: Knowledge
}

interface Asked {
  readonly component: string
  readonly method: string
  readonly matter?: string
}

export const resultAt = (id: string, asked: Asked): string =>
  `/finds/${id}/identify?${new URLSearchParams({ ...asked }).toString()}`

/** What was asked, of which part, and by which method it was answered: each a link, so that it works without scripts. */
export function Choose({ id, stood, record, identifications, knowledge }: Props) {
  const several = record.components.length > 1
  const methods = Object.keys(knowledge.methods)
  return (
    <>
      <section className="section no-print" aria-labelledby="asked">
        <h2 id="asked">What was asked, and how was it answered?</h2>
        {stood.length === 0 && (
          <p className="measure">Nothing that was seen on this find asks for an explanation.</p>
        )}
        {stood.map((one) => {
          const { component, matter } = one
          const written = knowledge.matters[matter]
          const telling = written ? methodsOf(written) : []
          const last = identifications.findLast(
            ({ given }) => given.component === component && given.matter === matter,
          )
          return (
            <section key={`${matter} ${component}`} className="stack" aria-label={written?.asks ?? matter}>
              <h3>
                {written?.asks ?? matter}
                {several && <span className="soft">{` (${component})`}</span>}
              </h3>
              <p className="soft">
                {last
                  ? `Found to be ${foundWords(last.given.interpretation, knowledge)}. Who knows better enters it anew.`
                  : `${standingWords(one, knowledge)}.`}
              </p>
              <ul className={style.methods}>
                {telling.map((method) => (
                  <li key={method}>
                    <Link className="button" href={resultAt(id, { component, matter, method })}>
                      {knowledge.methods[method]?.label ?? method}
                    </Link>
                  </li>
                ))}
                <li>
                  <Link className="button" href={resultAt(id, { component, matter, method: 'judged' })}>
                    {judgedWords}
                  </Link>
                </li>
              </ul>
              <Others
                says="Another method"
                methods={methods.filter((method) => !telling.includes(method))}
                at={(method) => resultAt(id, { component, matter, method })}
                knowledge={knowledge}
              />
            </section>
          )
        })}
      </section>
      <section className="section no-print" aria-labelledby="else">
        <h2 id="else">A result that answers something else</h2>
        {record.components.map(({ component }) => (
          <Others
            key={component}
            says={several ? capital(component) : 'By which method?'}
            methods={methods}
            at={(method) => resultAt(id, { component, method })}
            knowledge={knowledge}
          />
        ))}
      </section>
    </>
  )
}

interface OthersProps {
  readonly says: string
  readonly methods: readonly string[]
  readonly at: (method: string) => string
  readonly knowledge: Knowledge
}

function Others({ says, methods, at, knowledge }: OthersProps) {
  return (
    <details className={`${style.others} no-print`}>
      <summary>{says}</summary>
      <ul className={style.methods}>
        {methods.map((method) => (
          <li key={method}>
            <Link className="button" href={at(method)}>
              {knowledge.methods[method]?.label ?? method}
            </Link>
          </li>
        ))}
      </ul>
    </details>
  )
}
