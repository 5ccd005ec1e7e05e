import { useId } from 'react'
import { narrows, type Ruler } from '../../lib/papers/ruler.ts'
import { rulerWords } from '../../lib/wording/ruler.ts'
import { Hatch, RulerBarShape, percent, span } from './ruler-parts.tsx'
import style from './ruler.module.css'

const most = 4

/** Row size: for a line of a list. Bars without names; more than four are drawn as what they share. */
export function RulerRow({ ruler }: { readonly ruler: Ruler }) {
  const id = useId()
  const bars =
    ruler.bars.length <= most ? ruler.bars : [{ name: 'together', limit: ruler.shared, preference: null }]
  const height = bars.length * 9 + 7
  return (
    <svg className={style.row} height={height} width="100%" role="img" aria-label={rulerWords(ruler)}>
      <Hatch id={id} />
      {[0, 50, 100].map((mark) => (
        <line key={mark} x1={percent(mark)} x2={percent(mark)} y1="0" y2={height} className={style.tick} />
      ))}
      {bars.map((bar, index) => (
        <RulerBarShape key={bar.name} bar={bar} y={index * 9 + 4} height={6} hatch={id} />
      ))}
      <SharedAndNow ruler={ruler} height={height} />
    </svg>
  )
}

/** Inline size: a mark the height of a word, for table cells. The words stand beside it. */
export function RulerInline({ ruler }: { readonly ruler: Ruler }) {
  const { shared, gap } = ruler
  return (
    <svg className={style.inline} width="68" height="14" aria-hidden="true" focusable="false">
      <line x1="0" x2="100%" y1="7" y2="7" className={style.rail} />
      <line x1="0.5" x2="0.5" y1="2" y2="12" className={style.axis} />
      <line x1="67.5" x2="67.5" y1="2" y2="12" className={style.axis} />
      {shared !== null && narrows(shared) && (
        <rect {...span(shared)} y="3" height="8" className={style.limit} />
      )}
      {gap !== null && (
        <g className={style.gap}>
          <rect x="0" width={percent(gap.from)} y="3" height="8" className={style.limit} />
          <rect x={percent(gap.to)} width={percent(100 - gap.to)} y="3" height="8" className={style.limit} />
        </g>
      )}
      {ruler.now !== null && (
        <line x1={percent(ruler.now)} x2={percent(ruler.now)} y1="0" y2="14" className={style.nowSmall} />
      )}
    </svg>
  )
}

function SharedAndNow({ ruler, height }: { readonly ruler: Ruler; readonly height: number }) {
  return (
    <>
      {ruler.shared !== null && narrows(ruler.shared) && ruler.bars.length > 1 && (
        <rect {...span(ruler.shared)} y="1" height={height - 2} className={style.sharedSmall} />
      )}
      {ruler.now !== null && (
        <line x1={percent(ruler.now)} x2={percent(ruler.now)} y1="0" y2={height} className={style.nowSmall} />
      )}
    </>
  )
}
