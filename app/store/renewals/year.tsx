import type { WeekOfWork } from '../../../lib/boxes/level-work.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { weekWords, yearWords } from '../../../lib/wording/renewal-weeks.ts'
import style from './renewals.module.css'

const height = 64
const pitch = 14

/** The year at a glance: a bar a week for its work, a line for the hours there are. The weeks below say it in words. */
export function Year({ weeks }: { readonly weeks: readonly WeekOfWork[] }) {
  const hoursOf = ({ minutes, renewals }: WeekOfWork) => (minutes > 0 ? minutes / 60 : renewals.length)
  const counted = weeks.some(({ minutes }) => minutes > 0)
  const there = weeks.map(({ hoursThere }) => (counted && Number.isFinite(hoursThere) ? hoursThere : 0))
  const top = Math.max(1, ...weeks.map(hoursOf), ...there)
  const y = (value: number) => height - (value / top) * height
  const line = there
    .map((hours, at) => (at === 0 ? `M0 ${y(hours)}` : `H${at * pitch} V${y(hours)}`))
    .join(' ')
  return (
    <figure className={style.year}>
      <figcaption>
        {counted
          ? 'Hours of work in each week; the line is the hours there are.'
          : 'Boxes in each week. Write how long a box takes to see hours.'}
      </figcaption>
      <svg
        viewBox={`0 -4 ${weeks.length * pitch} ${height + 26}`}
        role="img"
        aria-label={yearWords(weeks)}
        className={style.bars}
      >
        {weeks.map((week, at) => (
          <g key={week.on}>
            <rect
              className={style.bar}
              x={at * pitch + 2}
              y={y(hoursOf(week))}
              width={pitch - 4}
              height={height - y(hoursOf(week))}
            >
              <title>{`Week of ${dayWords(week.on)}: ${weekWords(week)}`}</title>
            </rect>
            {at % 8 === 0 && (
              <text className={style.tick} x={at * pitch + 2} y={height + 16}>
                {dayWords(week.on).split(' ').slice(0, 2).join(' ')}
              </text>
            )}
          </g>
        ))}
        <path className={style.base} d={`M0 ${height} H${weeks.length * pitch}`} />
        {there.some((hours) => hours > 0) && (
          <path className={style.there} d={`${line} H${weeks.length * pitch}`} />
        )}
      </svg>
    </figure>
  )
}
