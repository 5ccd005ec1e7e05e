import type { ReactElement } from 'react'
import type { Urgency } from '../../lib/engine/plan.ts'
import { urgencyWords } from '../../lib/wording/marks.ts'
import style from './urgency-mark.module.css'

/** Six outlines that stay apart in grey, small and in print; the more ink, the sooner. */
const shapes: Readonly<Record<Urgency, ReactElement>> = {
  now: <path d="M8 0 16 8 8 16 0 8Z" fill="currentColor" />,
  hours: <path d="M8 1 16 15H0Z" fill="currentColor" />,
  days: <path d="M1 5A7 7 0 0 0 15 5Z" fill="currentColor" transform="translate(0 2)" />,
  weeks: <rect x="2" y="2" width="12" height="12" fill="none" stroke="currentColor" strokeWidth="3" />,
  planned: <circle cx="8" cy="8" r="6" fill="none" stroke="currentColor" strokeWidth="1.75" />,
  routine: <path d="M1 8H15" stroke="currentColor" strokeWidth="2" />,
}

function UrgencyShape({ urgency }: { readonly urgency: Urgency }) {
  return (
    <svg
      className={style.shape}
      viewBox="0 0 16 16"
      aria-hidden="true"
      focusable="false"
      data-shape={urgency}
    >
      {shapes[urgency]}
    </svg>
  )
}

/** The word, its shape and its weight. */
export function UrgencyMark({
  urgency,
  large = false,
}: {
  readonly urgency: Urgency
  readonly large?: boolean
}) {
  return (
    <span className={large ? `${style.mark} ${style.large}` : style.mark} data-urgency={urgency}>
      <UrgencyShape urgency={urgency} />
      {urgencyWords[urgency].label}
    </span>
  )
}
