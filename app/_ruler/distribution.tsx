import { percent } from './ruler-parts.tsx'
import style from './ruler.module.css'

export interface Distribution {
  /** Whose readings: `logger 4411`. */
  readonly name: string
  readonly words: string
  /** Share of the time [one] in each whole per cent, from 0 up. */
  readonly shares: readonly number[]
}

const height = 34

/** Readings on the axis of the ruler: how much of the time was spent at each humidity. */
export function DistributionRow({ distribution }: { readonly distribution: Distribution }) {
  const { name, words, shares } = distribution
  const most = Math.max(...shares, 0)
  return (
    <div className={style.rowOfFull} data-part="distribution">
      <p>
        <span>
          <strong>{name}</strong> {words}
        </span>
      </p>
      <svg height={height} width="100%">
        <line x1="0" x2="100%" y1={height - 0.5} y2={height - 0.5} className={style.rail} />
        {most > 0 &&
          shares.map((share, at) =>
            share === 0 ? null : (
              <rect
                // The place is the humidity.
                // oxlint-disable-next-line react/no-array-index-key
                key={at}
                x={percent(at)}
                width="1.05%"
                y={height - Math.max(1.5, (share / most) * (height - 2))}
                height={Math.max(1.5, (share / most) * (height - 2))}
                className={style.read}
              />
            ),
          )}
      </svg>
    </div>
  )
}
