import style from './paper.module.css'

/** A number to be scanned: black on white whatever the theme, or no reader takes it. */
export function SquareCode({
  rows,
  says,
}: {
  readonly rows: readonly (readonly boolean[])[]
  readonly says: string
}) {
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
