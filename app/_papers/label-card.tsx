import type { Label } from '../../lib/papers/label.ts'
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

function SquareCode({ rows, says }: { readonly rows: Label['code']; readonly says: string }) {
  const path = rows
    .map((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : '')).join(''))
    .join('')
  return (
    <svg
      className={style.code}
      viewBox={`0 0 ${rows.length} ${rows.length}`}
      role="img"
      aria-label={`Code of ${says}`}
      shapeRendering="crispEdges"
    >
      <path d={path} fill="#000" />
    </svg>
  )
}
