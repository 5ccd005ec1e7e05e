import { useId, type ReactNode } from 'react'
import type { Sighting } from '../../lib/boxes/box.ts'
import { Hatches } from './hatches.tsx'
import style from './chart.module.css'

export interface LegendEntry {
  readonly words: string
  readonly mark: Mark
}

type Mark =
  | Sighting['kind']
  | 'extent'
  | 'needed'
  | 'limit'
  | 'blind'
  | 'gap'
  | 'above'
  | 'half'
  | 'eight'
  | 'middle'
  | 'window'
  | 'today'

/** What each mark stands for, told by its shape. */
export function Legend({ entries }: { readonly entries: readonly LegendEntry[] }) {
  const id = useId()
  return (
    <>
      <svg width="0" height="0" className={style.apart} aria-hidden="true">
        <Hatches id={id} />
      </svg>
      <ul className={style.legend}>
        {entries.map(({ words, mark }) => (
          <li key={words}>
            <svg width="26" height="14" aria-hidden="true" focusable="false">
              {shapes[mark](id)}
            </svg>
            {words}
          </li>
        ))}
      </ul>
    </>
  )
}

const shapes: Readonly<Record<Mark, (id: string) => ReactNode>> = {
  extent: () => <path d="M0 9V6H6V3H12V7H19V4H26V10H19V12H12V9H6V11H0Z" fill="var(--chart-ink)" />,
  needed: () => (
    <rect x="1" y="1.5" width="24" height="11" fill="var(--wash)" stroke="var(--verdigris)" strokeWidth="2" />
  ),
  limit: () => (
    <line x1="0" x2="26" y1="7" y2="7" stroke="var(--rust)" strokeWidth="2" strokeDasharray="8 4" />
  ),
  blind: (id) => <rect width="26" height="14" fill={`url(#${id}-blind)`} />,
  gap: () => <path d="M0 1.5H26M0 5H26M0 8.5H26M0 12H26" stroke="var(--line-strong)" strokeWidth="1" />,
  above: () => <rect y="4" width="26" height="6" fill="var(--rust)" />,
  half: () => <rect y="2" width="26" height="10" fill="var(--chart-half)" stroke="var(--chart-ink)" />,
  eight: (id) => (
    <>
      <rect y="1" width="26" height="12" fill={`url(#${id}-wide)`} />
      <rect x="0.5" y="1" width="25" height="12" fill="none" stroke="var(--chart-ink)" />
    </>
  ),
  middle: () => <line x1="0" x2="26" y1="7" y2="7" stroke="var(--chart-ink)" strokeWidth="2.5" />,
  logger: () => <circle cx="13" cy="7" r="3.5" className={style.ring} />,
  'below-range': () => <path d="M13 1V13M9 1H17M9 7L13 13L17 7" className={style.sign} />,
  strip: () => <path d="M13 1V13M9 1H17M9 13H17" className={style.sign} />,
  'gel-spent': () => <path d="M8 2H18V12H8Z" className={style.filled} />,
  'lid-loose': () => <path d="M13 2L19 12H7Z" className={style.sign} />,
  window: (id) => (
    <>
      <rect width="26" height="14" fill={`url(#${id}-window)`} />
      <path d="M0.5 0V14M25.5 0V14" stroke="var(--rust)" />
    </>
  ),
  today: () => (
    <line x1="13" x2="13" y1="0" y2="14" stroke="var(--ink)" strokeWidth="2" strokeDasharray="2 2" />
  ),
}
