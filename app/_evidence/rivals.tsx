import type { Interpretation } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { codeLabel } from '../../lib/wording/fact.ts'
import {
  chanceWords,
  explanationName,
  fewInHundred,
  leaningCountWords,
  likelyWords,
  rangeWords,
} from '../../lib/wording/interpretation.ts'
import { listWords } from '../../lib/wording/list.ts'
import { Scroll } from '../_frame/scroll.tsx'
import { ChanceBar, ChanceAxis } from './chance-bar.tsx'
import { Fold } from './fold.tsx'
import { Leanings } from './leanings.tsx'
import style from './evidence.module.css'

interface Props {
  /** What is explained and on which part, for the name of the table. */
  readonly name: string
  readonly rivals: readonly Interpretation[]
  readonly knowledge: Knowledge
}

/** Explanations that compete, each as a bar with its range; those of a few in a hundred folded under one line. */
export function Rivals({ name, rivals, knowledge }: Props) {
  const shown = rivals.filter(({ probability }) => probability >= fewInHundred)
  const hardly = rivals.filter(({ probability }) => probability < fewInHundred)
  // Once it is known what it is, the others are no longer possible.
  const settled = rivals.every(({ probability }) => probability === 0 || probability === 1)
  return (
    <div className={style.rivals}>
      <ul className="plain-list">
        {shown.map((rival) => (
          <RivalRow key={rival.interpretation} rival={rival} knowledge={knowledge} />
        ))}
      </ul>
      <ChanceAxis />
      {hardly.length > 0 && (
        <Fold says={`${settled ? 'Set aside' : 'Also possible'}: ${namesOf(hardly, knowledge)}`}>
          <ul className="plain-list">
            {hardly.map((rival) => (
              <RivalRow key={rival.interpretation} rival={rival} knowledge={knowledge} />
            ))}
          </ul>
        </Fold>
      )}
      <details className={`${style.asTable} no-print`}>
        <summary>As a table</summary>
        <RivalTable name={name} rivals={rivals} knowledge={knowledge} />
      </details>
    </div>
  )
}

function namesOf(rivals: readonly Interpretation[], knowledge: Knowledge): string {
  const names = rivals.map(({ interpretation }) => explanationName(interpretation, knowledge))
  return names.length > 3 ? `${names.slice(0, 2).join(', ')} and ${names.length - 2} more` : listWords(names)
}

/** The bar stands in what opens: what speaks for an explanation is one tap away, and open on paper. */
function RivalRow({ rival, knowledge }: { readonly rival: Interpretation; readonly knowledge: Knowledge }) {
  const { interpretation, probability, range, says } = rival
  const told = leaningCountWords(rival.for.length, rival.against.length)
  const bar = (
    <>
      <span className={style.name}>
        <strong>{codeLabel(interpretation, knowledge)}</strong>
        {told !== '' && <span className="small soft">{told}</span>}
        <span className={style.chance}>{likelyWords(probability, range)}</span>
      </span>
      <ChanceBar chance={probability} range={range} />
    </>
  )
  return (
    <li data-rival={interpretation}>
      <Fold says={bar} row>
        <p className="measure small">{says}</p>
        {told === '' ? (
          <p className="measure small soft">
            It stands on how common it is: nothing that was looked at speaks for it or against it.
          </p>
        ) : (
          <Leanings rival={rival} knowledge={knowledge} />
        )}
      </Fold>
    </li>
  )
}

function RivalTable({ name, rivals, knowledge }: Props) {
  return (
    <Scroll name={`${name}, table`}>
      <table className="small">
        <thead>
          <tr>
            <th scope="col">What it may be</th>
            <th scope="col">How likely</th>
            <th scope="col">Between, in 10</th>
          </tr>
        </thead>
        <tbody>
          {rivals.map(({ interpretation, probability, range }) => (
            <tr key={interpretation}>
              <th scope="row">{codeLabel(interpretation, knowledge)}</th>
              <td>{chanceWords(probability)}</td>
              <td>{rangeWords(range) || 'the same'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}
