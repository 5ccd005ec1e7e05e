import { fanScale, type FanPicture, type SeenPoint } from '../../lib/papers/box-fan.ts'
import style from './chart.module.css'

/** What was seen: a logger's value as a ring, a strip's interval as an upright with ends, the rest as a sign on top. */
export function FanMarks({ picture }: { readonly picture: FanPicture }) {
  const { fromMs, toMs, seen } = picture
  const scale = fanScale(picture)
  const across = (at: number) => `${((at - fromMs) / (toMs - fromMs)) * 100}%`
  const up = (rh: number) => `${100 - ((rh - scale.from) / (scale.to - scale.from)) * 100}%`
  return (
    <svg className={style.marks} aria-hidden="true" width="100%" height="100%">
      {seen.map((point) => (
        <Mark key={`${point.at} ${point.by}`} point={point} x={across(point.at)} up={up} />
      ))}
    </svg>
  )
}

interface MarkProps {
  readonly point: SeenPoint
  readonly x: string
  readonly up: (rh: number) => string
}

function Mark({ point: { by, between }, x, up }: MarkProps) {
  // Signs have a size of their own; the small drawing within gives them a place to be drawn around.
  const sign = (y: string, shape: string, filled = false) => (
    <svg x={x} y={y} overflow="visible">
      <path d={shape} className={filled ? style.filled : style.sign} />
    </svg>
  )
  if (between === null)
    return sign('0', by === 'gel-spent' ? 'M-5 0H5V10H-5Z' : 'M0 0L6 10H-6Z', by === 'gel-spent')
  const [low, high] = between
  if (by === 'logger') return <circle cx={x} cy={up((low + high) / 2)} r="3.5" className={style.ring} />
  return (
    <g className={style.strip}>
      <line x1={x} x2={x} y1={up(low)} y2={up(high)} />
      {sign(up(high), 'M-4 0H4')}
      {by === 'strip' ? sign(up(low), 'M-4 0H4') : sign(up(low), 'M-4 -6L0 0L4 -6')}
    </g>
  )
}
