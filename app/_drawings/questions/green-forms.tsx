import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { cracked } from '../kit/lines.ts'
import { Flat, Mound, Powder, Stipple, Strokes, Wax } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Green } from './green-ground.tsx'

/** Powder that lies against something: always the same heap. */
const heap = (
  <Powder seed="beside" at={[100, 62]} across={16} up={11} count={46} of={tone.greenPale} size={2.6} />
)

/** Two plates that meet, seen from above the lap. */
function Seam({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="seam-answers" metal={tone.bronze} rough={0.3}>
      <Flat d="M50 36H164V58H50Z" of={tone.bronze} />
      <Flat d="M50 58H164V63H50Z" of={tone.rustDeep} />
      {children}
    </Block>
  )
}

const bumps = (list: readonly (readonly [number, number, number])[]) =>
  list.map(([x, y, r]) => <Mound key={`${x}-${y}`} at={[x, y]} r={r} up={r * 1.3} of={tone.greenDeep} />)

const needles = strewn('green-needles', 17, [72, 50, 72, 28], 14)
  .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l-7-7m7 7l-2-11m2 11l3-10m-3 10l7-6`)
  .join('')

/** What form green has, what lies beside it, how it follows a seam. */
export const greenForms: Drawings = {
  'green-form/powder-in-pits': (id) => (
    <Close id={id}>
      <Green>
        <ellipse cx="98" cy="58" rx="24" ry="10" fill={tone.greenDeep} />
        <ellipse cx="138" cy="70" rx="11" ry="5" fill={tone.greenDeep} />
        <Powder seed="pits-a" at={[98, 55]} across={25} up={12} count={62} of={tone.greenPale} size={2.6} />
        <Powder seed="pits-b" at={[138, 68]} across={12} up={7} count={20} of={tone.greenPale} size={2.6} />
        <Powder seed="pits-c" at={[106, 88]} across={14} up={10} count={10} of={tone.greenPale} size={2.6} />
      </Green>
    </Close>
  ),
  'green-form/open-warts': (id) => (
    <Close id={id}>
      <Green>
        <Mound at={[80, 52]} r={11} of={tone.greenDeep} />
        <Mound at={[138, 54]} r={11} of={tone.greenDeep} />
        <Flat
          d="M92 72C93 60 100 56 104 53Q113 57 122 52C127 57 132 62 132 72Q112 80 92 72Z"
          of={tone.greenDeep}
        />
        <path d="M104 53Q113 45 122 52Q113 59 104 53Z" fill={tone.greenPale} />
        <Arrow at={[113, 50]} from={[112, 22]} />
      </Green>
    </Close>
  ),
  'green-form/firm-crust': (id) => (
    <Close id={id}>
      <Green rough={2}>
        <Strokes
          d={`${cracked('firm-a', [82, 37], [94, 88], 3)}${cracked('firm-b', [90, 58], [140, 50], 3)}`}
        />
        <Strokes d="M62 52h10M66 66h12M116 66h12M128 74h10" of={tone.greenDeep} width={2} />
      </Green>
    </Close>
  ),
  'green-form/even-film': (id) => (
    <Close id={id}>
      <Block seed="film" layers={[{ of: tone.green, deep: 3, rough: 0.3 }]} metal={tone.bronze} rough={0.3}>
        <Strokes d="M92 36L80 80M98 36L87 80M120 36L126 80M126 36L133 80" width={1.4} />
        <Strokes d="M60 60H76M102 52H116M140 58H152" of={tone.gloss} width={1.8} />
        <Arrow at={[107, 82]} from={[96, 102]} />
      </Block>
    </Close>
  ),
  'green-form/fur-or-needles': (id) => (
    <Close id={id}>
      <Green>
        <path d={needles} strokeWidth="2.8" strokeLinecap="round" />
        <path d={needles} stroke={tone.greenPale} strokeWidth="1.5" strokeLinecap="round" />
      </Green>
    </Close>
  ),
  'green-form/greasy-lumps': (id) => (
    <Close id={id}>
      <Green>
        <Wax
          of={tone.turquoise}
          d="M66 64C62 50 78 44 88 50C96 42 110 46 110 58C110 68 74 72 66 64Z"
          gloss="M74 56Q80 50 87 55"
        />
        <Wax
          of={tone.turquoise}
          d="M104 72C100 58 118 50 128 56C140 52 148 64 144 72C136 80 110 80 104 72Z"
          gloss="M112 65Q120 58 128 63"
        />
      </Green>
    </Close>
  ),
  'green-beside/glass-or-enamel': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 30H72Q92 44 88 66Q84 84 50 86Z" of={tone.glass} />
        <Strokes d="M60 42q8 2 12 14M56 52q5 2 7 8" of={tone.gloss} width={2.4} />
        {heap}
      </Green>
    </Close>
  ),
  'green-beside/leather-fat-or-wax': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 28H86L90 84L50 90Z" of={tone.leather} />
        <path d="M80 30L84 86" stroke={tone.bone} strokeWidth="1.8" strokeDasharray="4 4" />
        <Stipple seed="hide" box={[56, 36, 20, 46]} count={16} size={1.5} />
        {heap}
      </Green>
    </Close>
  ),
  'green-beside/opening-to-core': (id) => (
    <Close id={id}>
      <Green>
        <ellipse cx="98" cy="58" rx="15" ry="8" fill={tone.black} />
        <Flat d="M92 80Q96 98 88 112H112Q100 98 106 80Z" of={tone.black} />
        {heap}
        <Arrow at={[99, 92]} from={[136, 98]} />
      </Green>
    </Close>
  ),
  'green-beside/joint': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 28H90V84H50Z" of={tone.green} />
        <Flat d="M90 28H95V112H90Z" of={tone.black} />
        <Strokes d="M50 80H90" />
        {heap}
      </Green>
    </Close>
  ),
  'green-beside/other-metal': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 24H88V88H50Z" of={tone.iron} />
        <circle cx="72" cy="56" r="9" fill={tone.ironDeep} />
        <Strokes d="M50 78l10 10M58 74l14 14M70 74l14 14M80 72l8 8M68 52q3-3 7-2" of={tone.line} />
        {heap}
      </Green>
    </Close>
  ),
  'seam-line/whole-joint-evenly': (id) => (
    <Close id={id}>
      <Seam>
        {bumps([
          [64, 64, 8],
          [80, 64, 8],
          [96, 64, 8],
          [112, 64, 8],
          [128, 64, 8],
          [144, 64, 8],
        ])}
      </Seam>
    </Close>
  ),
  'seam-line/spots-beyond-the-joint': (id) => (
    <Close id={id}>
      <Seam>
        {bumps([
          [74, 46, 7],
          [124, 44, 6],
          [146, 52, 6],
          [70, 64, 7],
          [96, 63, 8],
          [122, 65, 7],
          [146, 72, 6],
          [84, 78, 6],
          [108, 76, 5],
        ])}
      </Seam>
    </Close>
  ),
  'seam-line/one-stretch': (id) => (
    <Close id={id}>
      <Seam>
        {bumps([
          [94, 64, 8],
          [108, 63, 9],
          [122, 64, 8],
        ])}
        <Arrow at={[108, 50]} from={[108, 22]} />
      </Seam>
    </Close>
  ),
}
