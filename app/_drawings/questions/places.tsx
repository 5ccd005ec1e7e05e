import type { ReactNode } from 'react'
import { strewn, type Point } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Flat, Grains, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { strapOutline } from '../kit/objects.tsx'
import { tone } from '../kit/tones.ts'
import { Lying } from './lying.tsx'

/** Front and back of one strap-end: the front has a cut border, the back is plain. */
function BothSides({
  front,
  back,
  children,
}: {
  readonly front: string
  readonly back: string
  readonly children?: ReactNode
}) {
  return (
    <>
      {[
        [24, front],
        [90, back],
      ].map(([at = 0, of = '']) => (
        <g key={at} transform={`translate(${at} 0)`}>
          <path d={strapOutline} fill={String(of)} stroke={tone.ink} strokeWidth="1.4" />
          <circle cx="14" cy="18" r="2.6" fill={tone.paper} />
          <circle cx="32" cy="18" r="2.6" fill={tone.paper} />
        </g>
      ))}
      <path d="M36 30H58M36 34H58M36 78H58M36 82H58M38 70L47 44L56 70" />
      <path d="M70 56q8-8 16 0m-5-5l5 5-7 1" stroke={tone.ink} strokeWidth="1.6" />
      {children}
    </>
  )
}
const gleam = (x: number): Point[] => [
  [x, 52],
  [x + 12, 74],
  [x + 4, 96],
]

/** Green of one kind on the lying knife, as loose or as close as it is. */
const green = (d: string) => (
  <>
    <path d={d} strokeWidth="5" />
    <path d={d} stroke={tone.green} strokeWidth="3.2" />
  </>
)

/** Where something lies, on the whole find. */
export const placeAnswers: Drawings = {
  'skin-place/on-every-face': () => (
    <BothSides front={tone.silver} back={tone.silver}>
      <Shine at={[...gleam(34), ...gleam(100)]} />
    </BothSides>
  ),
  'skin-place/show-side': () => (
    <BothSides front={tone.silver} back={tone.green}>
      <Shine at={gleam(34)} />
      <Stipple seed="plain-back" box={[100, 30, 26, 64]} count={24} />
    </BothSides>
  ),
  'skin-place/inside-a-vessel': () => (
    <>
      <path d="M20 34Q22 100 80 104Q138 100 140 34Z" fill={tone.green} stroke={tone.ink} strokeWidth="1.4" />
      <Stipple seed="pot-outside" box={[36, 60, 88, 36]} count={30} />
      <path
        d="M20 34A60 15 0 1 1 140 34A60 15 0 1 1 20 34Z"
        fill={tone.green}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <path d="M26 34A54 11 0 1 1 134 34A54 11 0 1 1 26 34Z" fill={tone.silver} />
      <Shine
        at={[
          [56, 38],
          [84, 36],
          [104, 40],
        ]}
      />
      <Arrow at={[80, 38]} from={[80, 8]} />
    </>
  ),
  'skin-place/where-a-part-sat': () => (
    <BothSides front={tone.green} back={tone.green}>
      <circle cx="113" cy="54" r="11" fill={tone.silver} />
      <circle cx="113" cy="54" r="5" fill={tone.green} />
      <path d="M104 80h18v6h-18z" fill={tone.silver} />
      <Arrow at={[122, 48]} from={[146, 32]} />
    </BothSides>
  ),
  'skin-place/patches-like-the-crust': () => (
    <BothSides front={tone.green} back={tone.green}>
      <path
        d={`${blot('patch-a', [40, 48], 8, 11, 0.3)}${blot('patch-b', [54, 84], 7, 9, 0.3)}${blot('patch-c', [120, 44], 7, 8, 0.3)}${blot('patch-d', [106, 72], 8, 11, 0.3)}${blot('patch-e', [118, 96], 5, 6, 0.3)}`}
        fill={tone.silver}
      />
    </BothSides>
  ),
  'gold-film-place/on-the-design': () => (
    <BothSides front={tone.bronze} back={tone.bronze}>
      <path d="M35 29H59V35H35ZM35 77H59V83H35ZM36 72L47 42L58 72Z" fill={tone.gold} />
      <Shine at={[[42, 68]]} />
    </BothSides>
  ),
  'gold-film-place/everywhere-made': () => (
    <BothSides front={tone.gold} back={tone.gold}>
      <Shine at={[...gleam(34), ...gleam(100)]} />
    </BothSides>
  ),
  'gold-film-place/over-breaks-or-soil': () => (
    <>
      <path
        d="M10 40H96L90 50L100 58L92 68L98 80H10Z"
        fill={tone.bronze}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <Flat d={blot('gold-stone', [126, 74], 20, 15, 0.15)} of={tone.iron} />
      <Flat
        d="M56 44Q80 40 94 46L90 50L100 58L92 68L96 76Q112 62 132 62L138 74Q120 74 104 84Q76 82 58 76Z"
        of={tone.gold}
      />
      <Shine
        at={[
          [70, 66],
          [118, 74],
        ]}
      />
      <Arrow at={[99, 60]} from={[112, 30]} />
    </>
  ),
  'gold-film-place/only-where-scraped': () => (
    <BothSides front={tone.green} back={tone.green}>
      <Strokes d="M34 66L58 46M36 74L60 54M100 84L124 64" width={4.4} />
      <Strokes d="M34 66L58 46M36 74L60 54M100 84L124 64" of={tone.gold} width={3} />
    </BothSides>
  ),
  'rust-green-place/at-joints': () => (
    <Lying specks={[]}>
      {green('M104 40V80M112 56a5 5 0 0 1 8 0M138 56a5 5 0 0 1 8 0')}
      <Arrow at={[104, 36]} from={[92, 14]} />
    </Lying>
  ),
  'rust-green-place/film-over-all': () => (
    <Lying specks={[]}>
      <path d="M12 66Q30 44 101 40V80Q42 82 12 66Z" fill={tone.green} />
      <Stipple seed="green-film" box={[34, 48, 64, 28]} count={30} />
    </Lying>
  ),
  'rust-green-place/lines-or-pattern': () => (
    <Lying specks={[]}>{green('M26 66L38 48L50 66L62 48L74 66L86 48L98 66M36 74H98')}</Lying>
  ),
  'rust-green-place/round-one-spot': () => (
    <Lying specks={[]}>
      <circle cx="70" cy="60" r="13" fill={tone.green} />
      <circle cx="70" cy="60" r="4.6" fill={tone.rustDeep} />
      <Arrow at={[80, 52]} from={[96, 22]} />
    </Lying>
  ),
  'rust-green-place/one-side': () => (
    <Lying specks={[]}>
      <path d="M34 76Q60 66 96 76V83Q60 84 34 76Z" fill={tone.green} />
      <circle cx="66" cy="98" r="13" fill={tone.green} stroke={tone.ink} />
      <Strokes d="M60 98h12M66 92v12" />
    </Lying>
  ),
  'rust-green-place/loose-on-top': () => (
    <Lying specks={[]}>
      <path d="M4 96H156V116H4Z" fill={tone.soil} stroke="none" />
      <Grains
        points={[
          ...strewn('loose-green', 16, [42, 44, 56, 34], 10),
          ...strewn('loose-soil', 14, [12, 99, 136, 14], 9),
        ]}
        of={tone.green}
        size={3}
      />
    </Lying>
  ),
  'glint-place/in-wood-or-soil-too': () => (
    <Lying specks={[]}>
      <path d="M4 100H156V116H4Z" fill={tone.soil} stroke="none" />
      <Grains
        points={[
          ...strewn('brass-iron', 12, [46, 44, 54, 34], 12),
          ...strewn('brass-wood', 10, [108, 44, 44, 34], 10),
          ...strewn('brass-soil', 8, [10, 102, 140, 10], 12),
        ]}
        of={tone.gold}
        size={3}
      />
    </Lying>
  ),
  'glint-place/at-joints': () => (
    <Lying specks={[]}>
      <path d="M101 38h6v44h-6z" fill={tone.gold} />
      <circle cx="116" cy="60" r="5" fill={tone.gold} />
      <circle cx="142" cy="60" r="5" fill={tone.gold} />
      <Arrow at={[104, 36]} from={[92, 14]} />
    </Lying>
  ),
  'glint-place/on-the-design': () => (
    <Lying specks={[]}>
      <path d="M26 66L38 48L50 66L62 48L74 66L86 48L98 66M36 74H98" strokeWidth="5" />
      <path d="M26 66L38 48L50 66L62 48L74 66L86 48L98 66M36 74H98" stroke={tone.gold} strokeWidth="3.2" />
    </Lying>
  ),
  'glint-place/anywhere-in-the-crust': () => (
    <Lying specks={[]}>
      <Grains points={strewn('brass-any', 15, [40, 44, 60, 34], 12)} of={tone.gold} size={3} />
    </Lying>
  ),
  'wire-course/makes-a-pattern': () => (
    <Lying specks={[]}>{wire('M30 60q8-14 16 0t16 0t16 0t16 0M34 60q8 14 16 0t16 0t16 0t16 0')}</Lying>
  ),
  'wire-course/along-the-length': () => <Lying specks={[]}>{wire('M14 65Q50 54 103 54')}</Lying>,
  'wire-course/along-a-joint': () => (
    <Lying specks={[]}>
      {wire('M104 38V82')}
      <Arrow at={[102, 44]} from={[84, 16]} />
    </Lying>
  ),
  'wire-course/crosswise-and-away': () => <Lying specks={[]}>{wire('M52 12L70 40L76 82L96 112')}</Lying>,
}

function wire(d: string) {
  return (
    <>
      <path d={d} strokeWidth="5.4" />
      <path d={d} stroke={tone.silver} strokeWidth="3.4" />
    </>
  )
}
