import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn, type Point } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'

import { Grains, Powder, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Green } from './green-ground.tsx'
import { Lying } from './lying.tsx'

/** Upright crystals, each with one lit edge. */
function Crystals({ at }: { readonly at: readonly Point[] }) {
  const body = at.map(([x, y]) => `M${x - 4} ${y}v-9l4-5 5 5v9l-4 3z`).join('')
  return (
    <>
      <path d={body} fill={tone.blue} />
      <path d={at.map(([x, y]) => `M${x} ${y + 2}v-13`).join('')} stroke={tone.gloss} />
    </>
  )
}

/** Zinc or what holds it: a plate from above, with what touches it. */
function Plate({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path d="M20 18H140V102H20Z" fill={tone.iron} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M28 28l14-6M28 94l14-6M112 28l14-6" stroke={tone.gloss} strokeWidth="1.4" />
      {children}
    </>
  )
}

/** Where blue and white sit, and what touches the yellow. */
export const besideWhat: Drawings = {
  'blue-crust-place/inside-a-hollow': (id) => (
    <Close id={id}>
      <path d="M46 92H66Q68 30 107 30T148 92H168V102H46Z" fill={tone.bronze} />
      <path d="M74 92Q76 42 107 42T140 92Z" fill={tone.air} />
      <Strokes d="M50 100l7-7M66 88l5-5M72 62l8-8M98 40l8-8M128 46l6-6M140 70l5-5M150 100l7-7" width={0.8} />
      <Crystals
        at={[
          [86, 88],
          [97, 90],
          [108, 88],
          [119, 90],
          [129, 88],
        ]}
      />
      <path
        d="M92 54l8-6 6 5-5 7zM106 53l8-4 6 6-7 4zM84 66l5-8 6 4-4 7zM120 60l6-4 5 8-6 4z"
        fill={tone.blue}
      />
      <Strokes d="M46 92H168" />
    </Close>
  ),
  'blue-crust-place/in-cut-or-cast-fields': (id) => (
    <Close id={id}>
      <Block seed="blue-fields" metal={tone.bronze} surface={tone.green} rough={0.3}>
        <path d="M66 44H98L94 72H56ZM112 44H144L154 72H116Z" fill={tone.blue} strokeWidth="2.4" />
        <Strokes d="M72 64L84 50M80 68L92 52M122 64L132 50M132 68L140 54" of={tone.gloss} width={1.4} />
        <Arrow at={[84, 58]} from={[98, 22]} />
      </Block>
    </Close>
  ),
  'blue-crust-place/by-bone-wood-or-iron': (id) => (
    <Close id={id}>
      <Green rough={0.5}>
        <Crystals
          at={[
            [96, 50],
            [106, 58],
            [98, 66],
            [110, 72],
            [94, 78],
          ]}
        />
        <path d="M40 22Q66 18 84 26Q96 40 90 56Q94 74 84 90H40Z" fill={tone.bone} />
        <Strokes d="M56 30Q72 42 70 84M66 26Q82 42 80 86M48 34Q58 46 58 86" of={tone.soft} width={1.6} />
        <Arrow at={[108, 62]} from={[134, 28]} />
      </Green>
    </Close>
  ),
  'blue-crust-place/open-face': (id) => (
    <Close id={id}>
      <Green rough={0.5}>
        <Crystals
          at={[
            [104, 50],
            [116, 53],
            [92, 58],
            [108, 63],
            [122, 66],
            [98, 72],
          ]}
        />
      </Green>
    </Close>
  ),
  'white-zinc-place/beside-glass': () => (
    <Plate>
      <Powder seed="zinc-glass" at={[84, 60]} across={42} up={32} count={90} of={tone.white} size={2.6} />
      <circle cx="84" cy="60" r="17" fill={tone.glass} stroke={tone.ink} />
      <circle cx="84" cy="60" r="5" fill={tone.iron} />
      <path d="M73 56a12 12 0 0 1 9-8" stroke={tone.gloss} strokeWidth="3" strokeLinecap="round" />
      <Arrow at={[104, 46]} from={[128, 28]} />
    </Plate>
  ),
  'white-zinc-place/beside-card-or-wood': () => (
    <Plate>
      <Grains points={boxPrint} of={tone.white} size={2.8} />
      <path d="M92 8L156 4V56L92 60Z" fill={tone.wood} stroke={tone.ink} />
      <Strokes d="M98 16L150 13M98 26L150 23M98 36L150 33M98 46L150 43" of={tone.soft} />
      <Arrow at={[44, 74]} from={[26, 112]} />
    </Plate>
  ),
  'white-zinc-place/all-over': () => (
    <Plate>
      <Grains
        points={[
          ...strewn('zinc-top', 34, [24, 24, 112, 36], 10),
          ...strewn('zinc-low', 60, [24, 62, 112, 36], 6),
        ]}
        of={tone.white}
        size={2.8}
      />
    </Plate>
  ),
  'yellow-beside/wood-or-leather': () => (
    <Lying specks={[]}>
      <Powder seed="yellow-grip" at={[128, 66]} across={26} up={20} count={60} of={tone.yellow} size={2.8} />
      <Powder seed="yellow-fall" at={[124, 94]} across={20} up={7} count={16} of={tone.yellow} size={2.8} />
      <Arrow at={[118, 56]} from={[92, 14]} />
    </Lying>
  ),
  'yellow-beside/jet-shale-or-coal': () => (
    <>
      <path
        d="M22 84L30 44L62 22L112 28L140 56L132 92L84 104L40 100Z"
        fill={tone.black}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <path d="M30 44L62 22L74 40L58 62L36 64Z" fill={tone.film} stroke={tone.gloss} strokeWidth="1.1" />
      <path
        d="M40 60Q54 56 62 34M46 62Q60 56 68 38M28 78L134 84M28 90L104 98M92 34L130 52"
        stroke={tone.gloss}
        strokeWidth="1"
      />
      <Powder seed="yellow-jet" at={[100, 62]} across={34} up={18} count={66} of={tone.yellow} size={2.8} />
      <Stipple seed="yellow-crack" box={[40, 78, 88, 8]} count={14} of={tone.yellow} size={3} />
      <Arrow at={[104, 56]} from={[132, 16]} />
    </>
  ),
}

/** The outline of a box that stood on it. */
const boxPrint: readonly Point[] = [
  ...Array.from({ length: 13 }, (_, at): Point => [44 + at * 6, 70 + (at % 2) * 3]),
  ...Array.from({ length: 6 }, (_, at): Point => [44 + (at % 2) * 3, 34 + at * 6]),
  ...Array.from({ length: 13 }, (_, at): Point => [44 + at * 6, 30 + (at % 2) * 3]),
  ...Array.from({ length: 6 }, (_, at): Point => [118 + (at % 2) * 3, 36 + at * 6]),
]
