import type { BoxLabel } from '../../lib/papers/box-label.ts'
import { SquareCode } from './square-code.tsx'
import style from './paper.module.css'

export function BoxLabelCard({ label, invented }: { readonly label: BoxLabel; readonly invented: boolean }) {
  return (
    <li className={style.label}>
      <span className={style.number}>{label.box}</span>
      <SquareCode rows={label.code} says={label.box} />
      <span>{[label.place, label.count].filter((text) => text !== '').join(', ')}</span>
      <span>{label.gel}</span>
      <span className={`${style.whole} ${style.keep}`}>{label.keep}</span>
      <span className={`${style.whole} small`}>
        {[...label.warnings, ...(invented ? ['Invented for trying out'] : [])].join(' ')}
      </span>
    </li>
  )
}
