import { useId } from 'react'
import type { MonthCount } from '../../../lib/papers/store-report-gel.ts'
import { months as monthNames } from '../../../lib/wording/day.ts'
import style from './report.module.css'

interface Props {
  readonly months: readonly MonthCount[]
  /** The last month that has begun: what lies after it is only due. */
  readonly until: string
}

const height = 120

/** Renewals month by month: done in time, late, unseen, and likely due ahead; every number stands in the table below. */
export function MonthChart({ months, until }: Props) {
  const id = useId()
  const most = Math.max(1, ...months.map(({ inTime, late, unseen, due }) => inTime + late + unseen + due))
  const wide = 100 / months.length
  return (
    <figure className={style.months} aria-hidden="true">
      <svg width="100%" height={height + 40} focusable="false">
        <defs>
          <pattern
            id={`${id}-late`}
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect width="6" height="6" fill="var(--paper)" />
            <rect width="3" height="6" fill="var(--ink)" />
          </pattern>
          <pattern id={`${id}-due`} width="6" height="6" patternUnits="userSpaceOnUse">
            <rect width="6" height="6" fill="var(--paper)" />
            <circle cx="3" cy="3" r="1.2" fill="var(--ink)" />
          </pattern>
        </defs>
        <line x1="0" x2="100%" y1={height + 0.5} y2={height + 0.5} className={style.rail} />
        {months.map((one, at) => {
          const parts = [
            { count: one.inTime, fill: 'var(--ink)' },
            { count: one.late, fill: `url(#${id}-late)` },
            { count: one.unseen, fill: 'var(--paper)' },
            { count: one.due, fill: `url(#${id}-due)` },
          ]
          const all = one.inTime + one.late + one.unseen + one.due
          let top = height
          return (
            <g key={one.month}>
              {parts.map(({ count, fill }) => {
                const tall = (count / most) * (height - 20)
                top -= tall
                return count === 0 ? null : (
                  <rect
                    key={fill}
                    x={`${at * wide + wide * 0.15}%`}
                    width={`${wide * 0.7}%`}
                    y={top}
                    height={tall}
                    className={style.stretch}
                    style={{ fill }}
                  />
                )
              })}
              {all > 0 && (
                <text x={`${(at + 0.5) * wide}%`} y={top - 5} textAnchor="middle" className={style.count}>
                  {all}
                </text>
              )}
              <text x={`${(at + 0.5) * wide}%`} y={height + 17} textAnchor="middle" className={style.month}>
                {initialOf(one.month)}
              </text>
              {(at === 0 || one.month.endsWith('-01')) && (
                <text x={`${at * wide + wide * 0.15}%`} y={height + 35} className={style.month}>
                  {one.month.slice(0, 4)}
                </text>
              )}
              {one.month === until && (
                <line
                  x1={`${(at + 1) * wide}%`}
                  x2={`${(at + 1) * wide}%`}
                  y1="0"
                  y2={height}
                  className={style.now}
                />
              )}
            </g>
          )
        })}
      </svg>
      <ul className={style.legend}>
        <Mark fill="var(--ink)" says="done in time" />
        <Mark fill={`url(#${id}-late)`} says="done late" />
        <Mark fill="var(--paper)" says="done, nobody had looked" />
        <Mark fill={`url(#${id}-due)`} says="likely due" />
      </ul>
    </figure>
  )
}

const initialOf = (month: string) => (monthNames[Number(month.slice(5)) - 1] ?? '').charAt(0)

function Mark({ fill, says }: { readonly fill: string; readonly says: string }) {
  return (
    <li>
      <svg width="18" height="16" focusable="false">
        <rect x="1" y="1" width="16" height="14" className={style.stretch} style={{ fill }} />
      </svg>
      {says}
    </li>
  )
}
