import style from './chart.module.css'

/** Which keys the chart takes once it has focus. */
export function ChartKeys({ zooms }: { readonly zooms: boolean }) {
  const keys = [
    ['Left and right arrow', 'move the line, a stretch at a time'],
    ['Page up and page down', 'move it by a tenth of the width'],
    ['Home and End', 'move it to either end'],
    ...(zooms
      ? [
          ['Shift with the arrows', 'mark a stretch, as dragging does'],
          ['Enter', 'show what is marked'],
          ['Up and down arrow', 'show it nearer or wider'],
          ['Escape', 'mark nothing'],
        ]
      : []),
    ['T', 'open the table'],
  ]
  return (
    <details className={`${style.keys} no-print`}>
      <summary>Keys for the chart</summary>
      <dl>
        {keys.map(([key, does]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </details>
  )
}
