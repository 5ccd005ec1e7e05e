import type { ReactNode } from 'react'
import style from './forms.module.css'

/** Something one did, folded until one wants to write it down. */
export function Ask({ says, children }: { readonly says: string; readonly children: ReactNode }) {
  return (
    <details className={`${style.ask} no-print`}>
      <summary>{says}</summary>
      <div>{children}</div>
    </details>
  )
}
