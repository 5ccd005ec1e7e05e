import { useId } from 'react'
import { boxStateWords, statesTold, type StateTold } from '../../../lib/wording/store-report.ts'
import style from './report.module.css'

interface Props {
  readonly counts: Readonly<Record<StateTold, number>>
}

/** How many boxes stood how, as one bar; each stretch has a pattern of its own and is named below. */
export function StateBar({ counts }: Props) {
  const id = useId()
  const shown = statesTold.filter((state) => counts[state] > 0)
  const all = shown.reduce((sum, state) => sum + counts[state], 0)
  let from = 0
  return (
    <figure className={style.stateBar}>
      <svg width="100%" height="34" aria-hidden="true" focusable="false">
        <Patterns id={id} />
        {shown.map((state) => {
          const share = (counts[state] / all) * 100
          const at = from
          from += share
          return (
            <rect
              key={state}
              x={`${at}%`}
              y="1"
              width={`${share}%`}
              height="32"
              className={style.stretch}
              style={{ fill: fillOf(state, id) }}
              data-state={state}
            />
          )
        })}
      </svg>
      <ul className={style.legend}>
        {shown.map((state) => (
          <li key={state}>
            <svg width="26" height="16" aria-hidden="true" focusable="false">
              <rect
                x="1"
                y="1"
                width="24"
                height="14"
                className={style.stretch}
                style={{ fill: fillOf(state, id) }}
              />
            </svg>
            <span>
              <strong>{counts[state]}</strong> {boxStateWords[state].label.toLowerCase()}
            </span>
          </li>
        ))}
      </ul>
    </figure>
  )
}

/** The more ink, the worse. */
const fillOf = (state: StateTold, id: string): string =>
  ({
    'in-band': 'var(--paper)',
    over: 'var(--ink)',
    'cannot-tell': `url(#${id}-dense)`,
    'renewed-unread': `url(#${id}-dots)`,
    'not-read': `url(#${id}-thin)`,
    'no-limit': `url(#${id}-lines)`,
  })[state]

function Patterns({ id }: { readonly id: string }) {
  const hatch = { width: 6, height: 6, patternUnits: 'userSpaceOnUse' } as const
  return (
    <defs>
      <pattern id={`${id}-dense`} {...hatch} patternTransform="rotate(45)">
        <rect width="6" height="6" fill="var(--paper)" />
        <rect width="3" height="6" fill="var(--ink)" />
      </pattern>
      <pattern id={`${id}-thin`} {...hatch} patternTransform="rotate(-45)">
        <rect width="6" height="6" fill="var(--paper)" />
        <rect width="1" height="6" fill="var(--ink)" />
      </pattern>
      <pattern id={`${id}-lines`} {...hatch}>
        <rect width="6" height="6" fill="var(--paper)" />
        <rect width="6" height="0.8" y="3" fill="var(--ink-soft)" />
      </pattern>
      <pattern id={`${id}-dots`} {...hatch}>
        <rect width="6" height="6" fill="var(--paper)" />
        <circle cx="3" cy="3" r="1.3" fill="var(--ink)" />
      </pattern>
    </defs>
  )
}
