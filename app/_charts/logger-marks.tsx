import { placeIn, type ChartView } from '../../lib/papers/store-chart.ts'
import style from './chart.module.css'

/** Over the drawing, in hundredths of its width: time without readings, and time above the limit. */
export function LoggerMarks({ id, view }: { readonly id: string; readonly view: ChartView }) {
  return (
    <svg className={style.marks} aria-hidden="true" width="100%" height="100%">
      <defs>
        <pattern id={`${id}-gap`} width="6" height="6" patternUnits="userSpaceOnUse">
          <rect width="6" height="1" className={style.gapLine} />
        </pattern>
      </defs>
      {view.gaps.map((gap) => {
        const place = placeIn(view, gap)
        if (place === null) return null
        const wide = place.to - place.from
        return (
          <g key={gap.fromMs}>
            <rect x={`${place.from}%`} width={`${wide}%`} y="0" height="100%" fill={`url(#${id}-gap)`} />
            {wide > 14 && (
              <text x={`${place.from + wide / 2}%`} y="50%" textAnchor="middle" className={style.markWords}>
                no readings
              </text>
            )}
          </g>
        )
      })}
      {view.above.map((time) => {
        const place = placeIn(view, time)
        return place === null ? null : (
          <rect
            key={time.fromMs}
            x={`${place.from}%`}
            width={`${Math.max(place.to - place.from, 0.3)}%`}
            y="0"
            height="6"
            className={style.above}
          />
        )
      })}
    </svg>
  )
}
