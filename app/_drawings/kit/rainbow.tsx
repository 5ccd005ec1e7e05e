import { short } from './lines.ts'
import { tone } from './tones.ts'

/** One band of the film, along the curve all of them follow. */
const bow = (step: number) => `M50 ${short(46 + step * 4.6)}q16-9 32-1t32-3 50-4`

/** The same colours come twice, in the same order. */
const bands = [tone.purple, tone.gold, tone.turquoise, tone.blue].map(
  (of, index) => [of, bow(index) + bow(index + 4)] as const,
)
const edges = [-0.5, 1.5, 3.5, 5.5, 7.5].map(bow).join('')
const dashes = [0.5, 2.5, 4.5, 6.5].map(bow).join('')

/** Colours of a film thinner than a hair: bands that follow one curve and come again. */
export function Rainbow() {
  return (
    <>
      {bands.map(([of, d]) => (
        <path key={of} d={d} stroke={of} strokeWidth="4.7" />
      ))}
      <path d={edges} strokeWidth="0.8" />
      <path d={dashes} strokeWidth="1.2" strokeDasharray="2 3" />
    </>
  )
}
