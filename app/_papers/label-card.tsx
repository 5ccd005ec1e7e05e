import type { Label } from '../../lib/papers/label.ts'
import { SquareCode } from './square-code.tsx'
import style from './paper.module.css'

export function LabelCard({ label, invented }: { readonly label: Label; readonly invented: boolean }) {
  return (
    <li className={style.label}>
      <span className={style.number}>{label.find}</span>
      <SquareCode rows={label.code} says={label.find} />
      <span>
        {[label.site, label.context === '' ? '' : `context ${label.context}`, label.count]
          .filter((text) => text !== '')
          .join(', ')}
      </span>
      <span>{label.what}</span>
      <span className={`${style.whole} ${style.keep}`}>{label.keep}</span>
      <span className={`${style.whole} small`}>
        {[...label.warnings, ...(invented ? ['Invented for trying out'] : [])].join('. ')}
      </span>
    </li>
  )
}
