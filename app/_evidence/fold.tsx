import type { ReactNode } from 'react'
import style from './fold.module.css'

/** Something one tap away on a screen that stands open on paper. */
export function Fold({ says, children }: { readonly says: ReactNode; readonly children: ReactNode }) {
  return (
    <details className={style.fold}>
      <summary>{says}</summary>
      <div className={style.within}>{children}</div>
    </details>
  )
}
