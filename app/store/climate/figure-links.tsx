import Link from 'next/link'
import { KnownMark } from '../../_marks/known-mark.tsx'
import { figureOf, type PageFigures } from './figures.ts'

interface Props {
  readonly says: string
  readonly ids: readonly string[]
  readonly figures: PageFigures
}

/** Figures that an answer rests on, each with how it is known. */
export function FigureLinks({ says, ids, figures }: Props) {
  return (
    <details>
      <summary>{says}</summary>
      <ul className="small">
        {ids.map((id) => {
          const { says: what, printed, known } = figureOf(figures, id)
          return (
            <li key={id}>
              <Link href={`/sources/figures/${id}`}>{what}</Link>
              {`: ${printed} `}
              <KnownMark known={known} />
            </li>
          )
        })}
      </ul>
    </details>
  )
}
