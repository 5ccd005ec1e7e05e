import { useId, type CSSProperties, type ReactNode } from 'react'
import type { Band } from '../../lib/engine/plan.ts'
import { narrows, type Ruler } from '../../lib/papers/ruler.ts'
import { bandMark, bandWords, numberWords } from '../../lib/wording/band.ts'
import { barWords, gapWords, rulerWords } from '../../lib/wording/ruler.ts'
import { capital } from '../../lib/wording/capital.ts'
import { DistributionRow, type Distribution } from './distribution.tsx'
import { Axis, Hatch, HoldingShape, GapShape, RulerBarShape, percent } from './ruler-parts.tsx'
import { RulerTable } from './ruler-table.tsx'
import style from './ruler.module.css'

interface Props {
  readonly ruler: Ruler
  /** What a logger read, on the same axis. */
  readonly distribution?: Distribution
}

/** Full size: every part with its name and band, what they share, where they fall apart, where it is kept now. */
export function HumidityRuler({ ruler, distribution }: Props) {
  const id = useId()
  const shared = ruler.shared !== null && narrows(ruler.shared) ? ruler.shared : null
  return (
    <figure className={style.figure}>
      <div className={style.full} role="img" aria-label={said(ruler, distribution)}>
        <svg className={style.patterns} aria-hidden="true">
          <Hatch id={id} />
        </svg>
        <div className={style.rows}>
          {ruler.bars.map((bar) => (
            <Row key={bar.name} part={bar.name} name={bar.name} words={barWords(bar)}>
              <RulerBarShape bar={bar} y={0} height={16} hatch={id} />
            </Row>
          ))}
          {ruler.gap !== null && (
            <Row part="gap" name={gapWords(ruler.gap)} words="">
              <GapShape from={ruler.gap.from} to={ruler.gap.to} />
            </Row>
          )}
          {ruler.holding !== null && (
            <Row
              part="holding"
              name="Holding band until a conservator decides"
              words={bandWords(ruler.holding)}
            >
              <HoldingShape band={ruler.holding} />
            </Row>
          )}
          {distribution !== undefined && <DistributionRow distribution={distribution} />}
          {shared !== null && <Shared band={shared} parts={ruler.bars.length} />}
          {ruler.now !== null && (
            <div className={style.nowLine} style={{ left: percent(ruler.now) }} data-part="now" />
          )}
        </div>
        <Axis />
        {ruler.now !== null && (
          <p className={style.nowWords} style={beside(ruler.now)}>{`now ${numberWords(ruler.now)} %`}</p>
        )}
      </div>
      <Legend ruler={ruler} read={distribution !== undefined} />
      <RulerTable ruler={ruler} />
    </figure>
  )
}

function said(ruler: Ruler, distribution: Distribution | undefined): string {
  if (distribution === undefined) return rulerWords(ruler)
  return `${rulerWords(ruler)} ${capital(distribution.name)}: ${distribution.words}.`
}

interface RowProps {
  readonly part: string
  readonly name: string
  readonly words: string
  readonly children: ReactNode
}

function Row({ part, name, words, children }: RowProps) {
  return (
    <div className={style.rowOfFull} data-part={part}>
      <p>
        <span>
          <strong>{name}</strong> {words}
        </span>
      </p>
      <svg height="16" width="100%">
        {children}
      </svg>
    </div>
  )
}

/** The band of the whole find, outlined round all bars and named above them. */
function Shared({ band, parts }: { readonly band: Band; readonly parts: number }) {
  const width = Math.max(band.max - band.min, 0.6)
  const words = parts > 1 ? `together ${bandMark(band)}` : bandMark(band)
  return (
    <div
      className={style.shared}
      style={{ left: percent(Math.min(band.min, 99.4)), width: `${width}%` }}
      data-part="shared"
    >
      <span className={band.min + band.max < 100 ? style.fromLeft : style.fromRight}>{words}</span>
    </div>
  )
}

/** Centred under its place, but never past either end. */
function beside(at: number): CSSProperties {
  if (at < 12) return { marginInlineStart: 0 }
  if (at > 88) return { textAlign: 'end' }
  return { marginInlineStart: percent(at), transform: 'translateX(-50%)', width: 'max-content' }
}

function Legend({ ruler, read }: { readonly ruler: Ruler; readonly read: boolean }) {
  const entries = [
    ruler.bars.some((bar) => bar.limit !== null) && 'solid: a limit',
    ruler.bars.some((bar) => bar.preference !== null) && 'striped: better so',
    ruler.shared !== null && narrows(ruler.shared) && 'outlined: the band for the whole find',
    read && 'grey: where the readings lay, the higher the longer',
    ruler.now !== null && 'dashed line: where it is kept now',
  ].filter((entry) => entry !== false)
  return entries.length === 0 ? null : (
    <figcaption className={style.legend}>{`% relative humidity; ${entries.join('; ')}`}</figcaption>
  )
}
