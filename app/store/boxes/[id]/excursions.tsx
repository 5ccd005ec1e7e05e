import Link from 'next/link'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import type { ExcursionShown, FindMeaning } from '../../../../lib/services/show-logger.ts'
import { meaningReasonWords, meaningWords } from '../../../../lib/wording/box-meaning.ts'
import { excursionsSummed, excursionWords, hoursWords } from '../../../../lib/wording/box-excursion.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { sourceWords } from '../../../../lib/wording/citation.ts'
import { countWords } from '../../../../lib/wording/list.ts'
import { Reasons } from '../../../_statement/reasons.tsx'
import style from '../../store.module.css'

interface Props {
  readonly excursions: readonly ExcursionShown[]
  readonly belowRangeHours: number
  readonly zone: string
  readonly knowledge: Knowledge
  /** Whose readings are told: nothing was read, nothing is told. */
  readonly read: boolean
}

const shownAtOnce = 6

/** Times outside of what the finds bear, told in facts, and what each meant for each find, with the reason and its source. */
export function Excursions({ excursions, belowRangeHours, zone, knowledge, read }: Props) {
  if (!read) return null
  return (
    <section className="section" aria-labelledby="excursions">
      <h2 id="excursions">Time outside of what its finds bear</h2>
      <p>{excursionsSummed(excursions)}</p>
      {belowRangeHours >= 1 && (
        <p className="measure">
          {`For ${hoursWords(belowRangeHours)} the logger read the least it can, and the finds bear less than that: nobody can tell whether it was dry enough.`}
        </p>
      )}
      <ul className={style.boxes}>
        {excursions.slice(0, shownAtOnce).map((one) => (
          <Excursion key={`${one.serial} ${one.fromMs}`} excursion={one} zone={zone} knowledge={knowledge} />
        ))}
      </ul>
      {excursions.length > shownAtOnce && (
        <details>
          <summary>{countWords(excursions.length - shownAtOnce, 'earlier one', 'earlier ones')}</summary>
          <ul>
            {excursions.slice(shownAtOnce).map((one) => (
              <li key={`${one.serial} ${one.fromMs}`}>{capital(excursionWords(one, zone))}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}

interface OneProps {
  readonly excursion: ExcursionShown
  readonly zone: string
  readonly knowledge: Knowledge
}

function Excursion({ excursion, zone, knowledge }: OneProps) {
  const { meanings } = excursion
  const worst = meanings[0]
  return (
    <li className={style.excursion}>
      <p>
        <strong>{`${capital(excursionWords(excursion, zone))}.`}</strong>
      </p>
      {meanings.length > 0 && worst !== undefined && (
        <details>
          <summary>
            {`What it meant for each: ${worst.meaning.answer === 'none' ? 'nothing' : meaningWords[worst.meaning.answer]}`}
          </summary>
          <ul>
            {meanings.map((one) => (
              <li key={one.findId}>
                <Meaning meaning={one} knowledge={knowledge} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </li>
  )
}

function Meaning({
  meaning: { findId, findNumber, meaning },
  knowledge,
}: {
  readonly meaning: FindMeaning
  readonly knowledge: Knowledge
}) {
  const reason = meaning.reasons[0]
  const says = reason?.says[0]
  return (
    <>
      <Link href={`/finds/${findId}`}>{findNumber}</Link>
      {`: ${meaningWords[meaning.answer]}${reason === undefined ? '' : `; ${meaningReasonWords(reason)}`}.`}
      {meaning.stopped && <strong> A stop stands: nobody goes to it before it is cleared.</strong>}
      {says !== undefined && (
        <details>
          <summary className="small">{`Why: ${sourceWords(says.sources, knowledge)}`}</summary>
          <p>{says.text}</p>
          <Reasons statement={says} knowledge={knowledge} />
        </details>
      )}
    </>
  )
}
