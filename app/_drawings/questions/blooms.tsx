import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Bead, Flat, Grains, Powder, Shadow, Shine, Stipple, Strokes, Wax } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Lying } from './lying.tsx'

function Soil({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="bloom-ground" layers={[{ of: tone.soil, deep: 12, rough: 2 }]} metal={tone.iron} rough={1.6}>
      {children}
    </Block>
  )
}

function Crust({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="even-crust" layers={[{ of: tone.rust, deep: 11, rough: 2 }]} rough={2}>
      {children}
    </Block>
  )
}

/** A silver coin, whole; the green lies in one place or another. */
function Coin({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <circle cx="80" cy="60" r="48" fill={tone.silver} stroke={tone.ink} strokeWidth="1.4" />
      <circle cx="80" cy="60" r="40" strokeWidth="2" strokeDasharray="0.1 6" strokeLinecap="round" />
      <path d="M73 34h14v19h19v14H87v19H73V67H54V53h19z" />
      {children}
    </>
  )
}

/** A dull green lump with a pattern of its shine. */
function Lump({ of, children }: { readonly of: string; readonly children: ReactNode }) {
  return (
    <Block seed="shine-ground" layers={[{ of: tone.green, deep: 10 }]} metal={tone.bronze}>
      <Shadow d="M100 76L146 78L152 66L136 58Z" />
      <Flat d="M70 68C66 48 92 42 106 46C124 40 146 54 140 68C132 80 78 80 70 68Z" of={of} />
      {children}
    </Block>
  )
}

/** Blooms, shines and drops, and where green and blue lie. */
export const blooms: Drawings = {
  'bloom-look/needles-or-crystals': (id) => (
    <Close id={id}>
      <Soil>
        <path d={needles} strokeWidth="2.8" strokeLinecap="round" />
        <path d={needles} stroke={tone.white} strokeWidth="1.5" strokeLinecap="round" />
      </Soil>
    </Close>
  ),
  'bloom-look/dull-crust': (id) => (
    <Close id={id}>
      <Soil>
        <Flat d={blot('dull-bloom', [104, 58], 44, 17, 0.15, 14)} of={tone.white} />
        <Stipple seed="dull-bloom-dots" box={[72, 48, 64, 20]} count={34} />
      </Soil>
    </Close>
  ),
  'bloom-look/greasy-film': (id) => (
    <Close id={id}>
      <Soil>
        <path d={blot('greasy-bloom', [104, 58], 46, 18, 0.12)} fill={tone.gloss} fillOpacity="0.5" />
        <Strokes d="M70 54Q88 44 108 48M90 68Q110 60 132 64" of={tone.gloss} width={3} />
        <path d="M80 62q4 4 10 2m20-8q5 4 12 1" stroke={tone.soft} strokeWidth="1.4" />
      </Soil>
    </Close>
  ),
  'bloom-look/threads-or-round-dots': (id) => (
    <Close id={id}>
      <Soil>
        <path d={mould} strokeWidth="2.6" />
        <path d={mould} stroke={tone.white} strokeWidth="1.3" />
        <Grains points={strewn('mould-heads', 11, [72, 46, 72, 28], 13)} of={tone.white} size={4.4} />
      </Soil>
    </Close>
  ),
  'bloom-look/turns-wet-in-damp-weather': (id) => (
    <Close id={id}>
      <Soil>
        <Powder seed="half-bloom" at={[82, 56]} across={22} up={14} count={40} of={tone.white} size={1.8} />
        <Bead at={[118, 52]} r={7} of={tone.bluePale} />
        <Bead at={[138, 62]} r={6} of={tone.bluePale} />
        <Bead at={[112, 70]} r={8} of={tone.bluePale} />
        <Arrow at={[108, 58]} from={[92, 24]} />
      </Soil>
    </Close>
  ),
  'green-shine/greasy': (id) => (
    <Close id={id}>
      <Lump of={tone.turquoise}>
        <Strokes d="M80 60Q88 50 104 52M112 54Q122 52 130 60M88 70Q104 74 120 71" of={tone.gloss} width={4} />
      </Lump>
    </Close>
  ),
  'green-shine/clear-like-candle-wax': (id) => (
    <Close id={id}>
      <Lump of={tone.wax}>
        <path
          d="M82 64C82 54 98 50 106 53C118 50 132 58 128 65C120 72 88 72 82 64Z"
          fill={tone.greenPale}
          stroke={tone.soft}
          strokeDasharray="3 3"
        />
        <Grains
          points={[
            [98, 62],
            [112, 60],
            [106, 66],
          ]}
          of={tone.greenDeep}
          size={2.6}
        />
        <Strokes d="M78 58Q84 50 94 49" of={tone.gloss} width={3} />
      </Lump>
    </Close>
  ),
  'green-shine/dull': (id) => (
    <Close id={id}>
      <Lump of={tone.greenPale}>
        <Stipple seed="dull-green" box={[76, 50, 60, 24]} count={44} size={1.6} />
      </Lump>
    </Close>
  ),
  'green-shine/polished-stone': (id) => (
    <Close id={id}>
      <Lump of={tone.greenDeep}>
        <path
          d="M74 66Q100 54 138 60M78 72Q104 62 136 68M82 56Q104 46 130 52"
          stroke={tone.green}
          strokeWidth="2"
        />
        <path d="M86 52l8-3 2 6-8 4z" fill={tone.gloss} stroke="none" />
        <Shine at={[[100, 60]]} />
      </Lump>
    </Close>
  ),
  'silver-green-lie/edges-and-wear': () => (
    <Coin>
      <path
        d="M34 50Q36 84 66 106L76 98Q48 84 44 56ZM112 26Q126 40 127 56L118 58Q116 44 106 34ZM62 54l20-1 1 13-20 1z"
        fill={tone.green}
      />
    </Coin>
  ),
  'silver-green-lie/facing-a-neighbour': () => (
    <Coin>
      <path d="M106 24Q124 40 126 60Q124 84 104 100Q92 80 94 60Q94 40 106 24Z" fill={tone.green} />
      <path
        d="M134 24Q152 30 156 60Q152 92 134 98Q122 80 122 60Q122 40 134 24Z"
        fill={tone.bronze}
        stroke={tone.ink}
      />
      <Arrow at={[112, 60]} from={[78, 60]} />
    </Coin>
  ),
  'silver-green-lie/at-a-joint': () => (
    <Coin>
      <path d="M70 13Q70 3 80 3T90 13L88 22H72Z" fill={tone.silver} stroke={tone.ink} />
      <path d="M66 20q6-5 10 0q4-5 9 0q5-4 9 1q-2 8-9 7q-5 4-9 0q-8 2-10-8z" fill={tone.green} />
      <Arrow at={[94, 22]} from={[124, 12]} />
    </Coin>
  ),
  'silver-green-lie/all-over': () => (
    <Coin>
      <path d={blot('green-all', [80, 60], 46, 46, 0.05, 14)} fill={tone.green} fillOpacity="0.85" />
      <Stipple seed="green-all-dots" box={[50, 30, 60, 60]} count={60} size={1.6} />
    </Coin>
  ),
  'silver-green-lie/powder-in-pits': () => (
    <Coin>
      <ellipse cx="64" cy="74" rx="10" ry="7" fill={tone.lead} />
      <ellipse cx="98" cy="46" rx="9" ry="6" fill={tone.lead} />
      <Powder seed="coin-pit" at={[64, 73]} across={12} up={8} count={32} of={tone.greenPale} size={2.2} />
      <Powder seed="coin-pit-b" at={[98, 45]} across={11} up={7} count={28} of={tone.greenPale} size={2.2} />
    </Coin>
  ),
  'silver-green-lie/greasy-patches': () => (
    <Coin>
      <Wax
        of={tone.turquoise}
        d="M50 70C46 60 58 54 66 58C74 52 86 58 84 68C84 80 56 82 50 70Z"
        gloss="M57 66Q62 60 70 62"
      />
      <Wax
        of={tone.turquoise}
        d="M88 42C88 34 98 32 104 36C112 36 114 46 108 50C100 54 88 52 88 42Z"
        gloss="M93 42Q97 37 103 39"
      />
    </Coin>
  ),
  'iron-blue-place/bone-wood-or-soil': () => (
    <Lying specks={[]}>
      <path d="M4 100H156V116H4Z" fill={tone.soil} stroke="none" />
      <Grains
        points={[
          ...strewn('blue-iron', 14, [46, 44, 54, 34], 10),
          ...strewn('blue-wood', 12, [108, 44, 44, 34], 9),
          ...strewn('blue-soil', 10, [10, 102, 140, 10], 11),
        ]}
        of={tone.blue}
        size={3}
      />
    </Lying>
  ),
  'iron-blue-place/beside-copper': () => (
    <Lying specks={[]}>
      <path d="M74 34H90V88H74Z" fill={tone.green} />
      <path d="M78 38v46M86 38v46" />
      <Grains
        points={[
          ...strewn('blue-left', 9, [60, 44, 12, 34], 6),
          ...strewn('blue-right', 7, [92, 44, 10, 34], 6),
        ]}
        of={tone.blue}
        size={3}
      />
      <Arrow at={[72, 46]} from={[56, 18]} />
    </Lying>
  ),
  'iron-blue-place/in-a-design': () => (
    <Lying specks={[]}>
      <path d="M40 58L54 46L68 58L54 70ZM72 58L86 46L100 58L86 70Z" fill={tone.blue} />
      <Strokes d="M36 76H100" of={tone.blue} width={3} />
    </Lying>
  ),
  'iron-blue-place/loose-grains': () => (
    <Lying specks={[]}>
      {[
        [30, 102],
        [52, 108],
        [70, 99],
        [96, 106],
        [118, 101],
        [60, 56],
      ].map(([x = 0, y = 0]) => (
        <g key={x}>
          <circle cx={x} cy={y} r="5" fill={tone.blue} stroke={tone.ink} />
          <path d={`M${x - 2.5} ${y}a2.5 2.5 0 0 1 2.5-2.5`} stroke={tone.gloss} strokeWidth="1.4" />
        </g>
      ))}
    </Lying>
  ),
  'drop-place/cracks-and-pits': (id) => (
    <Close id={id}>
      <Crust>
        <path d="M78 36L84 46L78 56L90 66L86 80" strokeWidth="2.6" />
        <ellipse cx="128" cy="60" rx="14" ry="7" fill={tone.rustDeep} />
        <Bead at={[81, 50]} r={6} of={tone.bright} />
        <Bead at={[87, 68]} r={6} of={tone.bright} />
        <Bead at={[128, 57]} r={7} of={tone.bright} />
      </Crust>
    </Close>
  ),
  'drop-place/everywhere': (id) => (
    <Close id={id}>
      <Crust>
        <path d="M50 12Q107 26 164 12" stroke={tone.soft} strokeWidth="3" />
        <Bead at={[78, 48]} r={5} of={tone.bluePale} />
        <Bead at={[108, 56]} r={6} of={tone.bluePale} />
        <Bead at={[138, 50]} r={5} of={tone.bluePale} />
        <Bead at={[90, 70]} r={6} of={tone.bluePale} />
        <Bead at={[126, 72]} r={5} of={tone.bluePale} />
        <Bead at={[92, 22]} r={4} of={tone.bluePale} />
        <Bead at={[126, 22]} r={4} of={tone.bluePale} />
      </Crust>
    </Close>
  ),
  'drop-place/beside-glass': (id) => (
    <Close id={id}>
      <Crust>
        <Flat d="M46 26H82Q100 44 94 66Q88 86 46 88Z" of={tone.glass} />
        <Strokes d="M60 38q10 2 14 16" of={tone.gloss} width={2.4} />
        <Bead at={[76, 66]} r={6} of={tone.bluePale} />
        <Bead at={[100, 52]} r={6} of={tone.bluePale} />
        <Bead at={[102, 70]} r={7} of={tone.bluePale} />
      </Crust>
    </Close>
  ),
}

const needles = strewn('bloom-needles', 17, [72, 50, 72, 28], 14)
  .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l-7-7m7 7l-2-11m2 11l3-10m-3 10l7-6`)
  .join('')
const mould = 'M66 70Q84 50 98 62T130 50T150 62M74 48Q92 60 104 46T140 70M84 76Q104 66 120 76'
