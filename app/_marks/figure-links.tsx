import Link from 'next/link'
import type { Known } from '../../lib/knowledge/knowledge.ts'
import { KnownMark } from './known-mark.tsx'

/** A figure of the knowledge, small enough to travel with a page that reckons in the browser. */
export interface FigureShown {
  readonly id: string
  readonly says: string
  /** With its unit, as its work prints it. */
  readonly printed: string
  readonly known: Known
}

interface Props {
  readonly says: string
  readonly figures: readonly FigureShown[]
}

/** Figures that an answer rests on, each with how it is known. */
export function FigureLinks({ says, figures }: Props) {
  return (
    <details>
      <summary>{says}</summary>
      <ul className="small">
        {figures.map(({ id, says: what, printed, known }) => (
          <li key={id}>
            <Link href={`/sources/figures/${id}`}>{what}</Link>
            {`: ${printed} `}
            <KnownMark known={known} />
          </li>
        ))}
      </ul>
    </details>
  )
}
