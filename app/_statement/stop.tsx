import Link from 'next/link'
import type { Caution } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { sourceWords } from '../../lib/wording/citation.ts'
import { codeLabel } from '../../lib/wording/fact.ts'
import { Reasons, ruleTitle } from './reasons.tsx'
import style from './stop.module.css'

interface Props {
  readonly caution: Caution
  readonly knowledge: Knowledge
  /** Which finds it is about, where it stands for a whole bag. */
  readonly about?: string
}

/** A stop: before everything, in the largest type, never folded; only its sources are one tap away. */
export function Stop({ caution, knowledge, about }: Props) {
  return (
    <section
      className={style.stop}
      // Two rules may stop for the same danger: landmarks need names of their own.
      aria-label={`Stop: ${codeLabel(caution.code, knowledge)}. ${ruleTitle(caution.rule, knowledge)}`}
      data-code={caution.code}
    >
      <p className={style.sign}>
        <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
          <path d="M2 8h16v4H2z" fill="currentColor" />
        </svg>
        {[`Stop · ${codeLabel(caution.code, knowledge)}`, about].filter(Boolean).join(' · ')}
      </p>
      <p className={style.text}>{caution.text}</p>
      {caution.who !== '' && <p className={style.who}>{`Call ${caution.who}`}</p>}
      {caution.call !== null && caution.who === knowledge.vocabulary.contacts[caution.call]?.label && (
        <p className="no-print">
          <Link href="/contacts">Write down who that is for your site</Link>
        </p>
      )}
      <p>{caution.because}</p>
      {caution.caution !== undefined && <p>{caution.caution}</p>}
      {caution.also.map((other) => (
        <p key={other.rule}>{other.text}</p>
      ))}
      <p className="print-only small">{sourceWords(caution.sources, knowledge)}</p>
      <details className={`${style.why} no-print`}>
        <summary>Sources and rule</summary>
        <Reasons statement={caution} knowledge={knowledge} />
      </details>
    </section>
  )
}
