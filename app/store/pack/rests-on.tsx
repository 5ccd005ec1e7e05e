import Link from 'next/link'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { figureWords } from '../../../lib/wording/figure.ts'
import { KnownMark } from '../../_marks/known-mark.tsx'
import style from './pack.module.css'

const figures = [
  'pack-padding',
  'pack-unmeasured-side',
  'pack-loose-density',
  'pack-usable-part',
  'pack-heaviest',
  'pack-narrowest-band',
  'pack-driest',
  'pack-gel-days',
  'pack-room-rh',
] as const

/** What is supposed where nobody measured, each with how it is known. */
export function RestsOn({ knowledge }: { readonly knowledge: Knowledge }) {
  return (
    <details className="no-print">
      <summary className={style.fold}>What this is planned with</summary>
      <ul>
        {figures.map((id) => {
          const figure = knowledge.figures[id]
          if (figure === undefined) return null
          return (
            <li key={id}>
              {`${figure.says}: `}
              <Link href={`/sources/figures/${id}`}>{figureWords(figure, knowledge)}</Link>{' '}
              <KnownMark known={figure.known} />
            </li>
          )
        })}
      </ul>
      <p className="measure">
        A find is taken as a block in its bag. Blocks are added up, not laid out: whoever packs tries whether
        they go in.
      </p>
    </details>
  )
}
