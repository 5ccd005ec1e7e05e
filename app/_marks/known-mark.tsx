import type { ReactElement } from 'react'
import type { Known } from '../../lib/knowledge/knowledge.ts'
import { knownWords } from '../../lib/wording/marks.ts'
import style from './known-mark.module.css'

const signs: Readonly<Record<Known, ReactElement>> = {
  read: <circle cx="6" cy="6" r="4.5" fill="currentColor" />,
  'second-hand': (
    <>
      <circle cx="6" cy="6" r="4" fill="none" stroke="currentColor" strokeWidth="1.5" />
      <path d="M6 2a4 4 0 0 0 0 8Z" fill="currentColor" />
    </>
  ),
  memory: <circle cx="6" cy="6" r="4" fill="none" stroke="currentColor" strokeWidth="1.5" />,
  'common-practice': (
    <path d="M1 6.5c2-4 3.5-4 5 0s3 3.5 5-1" fill="none" stroke="currentColor" strokeWidth="1.75" />
  ),
}

/** How a figure or a source is known: a small sign and its word. */
export function KnownMark({ known }: { readonly known: Known }) {
  return (
    <span className={style.mark} data-known={known} title={knownWords[known].means}>
      <svg className={style.sign} viewBox="0 0 12 12" aria-hidden="true" focusable="false">
        {signs[known]}
      </svg>
      {knownWords[known].label}
    </span>
  )
}
