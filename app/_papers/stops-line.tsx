import style from './paper.module.css'

/** A stop on paper: framed, large, above everything. */
export function StopsLine({
  stops,
}: {
  readonly stops: readonly { readonly about: string; readonly text: string; readonly who: string }[]
}) {
  return stops.map(({ about, text, who }) => (
    <div key={`${about} ${text}`} className={style.stop}>
      <p>
        <strong>{text}</strong>
      </p>
      <p>{[about, who === '' ? '' : `Call ${who}`].filter((words) => words !== '').join('. ')}</p>
    </div>
  ))
}
