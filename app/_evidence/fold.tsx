import type { ReactNode } from 'react'
import style from './fold.module.css'

interface Props {
  readonly says: ReactNode
  /** What is said is a whole row with its own looks, not a line of text. */
  readonly row?: boolean
  readonly children: ReactNode
}

/** Something one tap away on a screen that stands open on paper. */
export function Fold({ says, row = false, children }: Props) {
  return (
    <details className={row ? style.rowFold : style.fold}>
      <summary>{says}</summary>
      <div className={style.within}>{children}</div>
    </details>
  )
}
