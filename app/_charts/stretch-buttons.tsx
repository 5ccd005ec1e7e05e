import { shifted, zoomedRound, type Span } from '../../lib/papers/store-chart.ts'
import style from './chart.module.css'

interface Props {
  readonly name: string
  readonly view: Span
  readonly whole: Span
  readonly onGo: (to: Span) => void
}

/** Ways to another stretch of the same readings. */
export function StretchButtons({ name, view, whole, onGo }: Props) {
  const middle = (view.fromMs + view.toMs) / 2
  const [atFirst, atLast] = [view.fromMs <= whole.fromMs, view.toMs >= whole.toMs]
  const ways = [
    { says: 'Nearer', to: zoomedRound(view, middle, 0.5), ended: false },
    { says: 'Wider', to: zoomedRound(view, middle, 2), ended: atFirst && atLast },
    { says: 'Earlier', to: shifted(view, -0.5), ended: atFirst },
    { says: 'Later', to: shifted(view, 0.5), ended: atLast },
    { says: 'All of it', to: whole, ended: atFirst && atLast },
  ]
  return (
    <div className={`${style.buttons} no-print`} role="group" aria-label={`Stretch of ${name}`}>
      {ways.map(({ says, to, ended }) => (
        // Not truly disabled, or whoever pressed it last would lose their place on the page.
        <button
          key={says}
          className="button"
          type="button"
          aria-disabled={ended}
          onClick={() => !ended && onGo(to)}
        >
          {says}
        </button>
      ))}
    </div>
  )
}
