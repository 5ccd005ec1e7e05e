import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Flat, Grains, Powder, Shadow, Shine, Stipple, Strokes, Wax } from '../kit/marks.tsx'
import { Bag, Knife } from '../kit/objects.tsx'
import { tone } from '../kit/tones.ts'
import { Crust } from './iron-ground.tsx'

function Iron({
  of,
  deep,
  children,
}: {
  readonly of: string
  readonly deep: number
  readonly children: ReactNode
}) {
  return (
    <Block seed="iron-skin" layers={[{ of, deep, rough: 0.4 }]} metal={tone.ironDeep} rough={0.5}>
      {children}
    </Block>
  )
}

/** Crystals that meet in straight lines, each with its feather. */
const spangles =
  'M46 36L78 34L88 52L70 66L46 60ZM78 34L120 32L116 50L88 52ZM120 32L166 36V60L132 62L116 50ZM88 52L116 50L132 62L118 82H92L70 66ZM46 60L70 66L92 82H46ZM132 62L166 60V82H118Z'
const feathers =
  'M52 44l24 12M58 42l-2 10M66 46l-2 10M94 38l18 8M102 36l-2 8M126 44l28 8M136 42l-2 10M146 44l-2 10M92 62l28 12M100 60l-3 12M110 62l-3 12M54 68l24 10M130 72l26-6M140 66l3 8'

const moss = strewn('moss', 20, [72, 50, 68, 24], 11).map(([x, y]) => [Math.round(x), Math.round(y)] as const)
const stems = moss.map(([x, y]) => `M${x} ${y}q-1-7-4-10M${x} ${y}q1-7 4-9`).join('')

const flake = 'M70 50L82 44L88 52L80 60L68 58Z'

/** What a white skin on iron is like, what green on rust is, and what lies below the find. */
export const ironSkins: Drawings = {
  'iron-skin-tone/silvery-film': (id) => (
    <Close id={id}>
      <Block seed="iron-film" metal={tone.ironDeep} rough={0.5}>
        <path d="M50 35H120L112 46L120 56L110 66L116 80H50Z" fill={tone.silver} strokeWidth="0.8" />
        <path d="M50 80H116V82H50Z" fill={tone.silver} strokeWidth="0.6" />
        <Shine
          at={[
            [64, 56],
            [74, 74],
            [92, 54],
            [98, 74],
          ]}
        />
        <Arrow at={[116, 62]} from={[144, 40]} />
      </Block>
    </Close>
  ),
  'iron-skin-tone/spangles-or-white-bloom': (id) => (
    <Close id={id}>
      <Iron of={tone.iron} deep={4}>
        <path d={spangles} fill={tone.silver} />
        <path d={feathers} stroke={tone.lead} strokeWidth="1.4" />
        <Powder seed="zinc-bloom" at={[136, 72]} across={18} up={8} count={26} of={tone.white} size={2} />
      </Iron>
    </Close>
  ),
  'iron-skin-tone/soft-dull-grey': (id) => (
    <Close id={id}>
      <Block
        seed="iron-lead"
        layers={[{ of: tone.lead, deep: 16, rough: 3 }]}
        metal={tone.ironDeep}
        rough={2.6}
      >
        <path
          d="M62 62Q76 50 92 58M98 70Q116 58 134 66M112 48Q126 42 142 50"
          stroke={tone.silver}
          strokeWidth="4"
          strokeLinecap="round"
          opacity="0.7"
        />
        <Flat d={blot('white-on-lead', [76, 74], 14, 5, 0.3)} of={tone.white} />
        <Arrow at={[107, 92]} from={[140, 102]} />
      </Block>
    </Close>
  ),
  'iron-skin-tone/lavender-or-black': (id) => (
    <Close id={id}>
      <Iron of={tone.lavender} deep={7}>
        <Flat d="M164 34H128Q118 44 126 52Q116 62 124 80H164Z" of={tone.black} />
        <Wax
          of={tone.lavender}
          d="M62 64C60 50 74 44 84 50C94 42 110 48 108 60C108 72 68 76 62 64Z"
          gloss="M70 59Q77 52 86 56"
        />
        <Strokes d="M72 66Q84 72 98 66" of={tone.soft} width={1.6} />
      </Iron>
    </Close>
  ),
  'iron-skin-tone/peeling': (id) => (
    <Close id={id}>
      <Block seed="iron-shell" layers={[{ of: tone.rust, deep: 5 }]} metal={tone.ironDeep} rough={0.5}>
        <Flat d="M46 34H86L80 80H46Z" of={tone.silver} />
        <Shadow d="M82 44L104 50L100 80H78Z" />
        <path d="M86 34Q104 26 106 40Q104 48 98 44Q102 38 96 38Q88 40 84 54Z" fill={tone.silver} />
        <path d="M82 60Q102 50 104 66Q102 74 96 70Q100 64 94 64Q86 66 80 80Z" fill={tone.silver} />
        <Shadow d="M122 74L148 78L154 68L138 64Z" />
        <path d="M118 68Q126 50 142 54Q152 58 148 68Q142 58 134 60Q128 62 128 72Z" fill={tone.silver} />
        <Shine at={[[60, 60]]} />
        <Arrow at={[106, 36]} from={[128, 20]} />
      </Block>
    </Close>
  ),
  'rust-green-kind/turned-blue': () => (
    <>
      <path d="M6 20H66V104H6Z" fill={tone.white} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M11 25H61V88H11Z" fill={tone.soil} />
      <path d="M13 95h20m4 0h8" stroke={tone.soft} strokeWidth="2.4" />
      <g transform="translate(20 26) scale(0.52)">
        <Knife of={tone.rust}>
          <Flat d={patch} of={tone.greenPale} />
        </Knife>
      </g>
      <path d="M72 60H92M85 53L92 60L85 67" stroke={tone.ink} strokeWidth="2.6" />
      <g transform="translate(102 4)">
        <Knife of={tone.rust}>
          <Flat d={patch} of={tone.blue} />
          <path d="M13 52l10-12M13 62l17-20M16 68l15-17M22 70l9-11" strokeWidth="1.6" />
        </Knife>
      </g>
    </>
  ),
  'rust-green-kind/hard-green': (id) => (
    <Close id={id}>
      <Crust>
        <Shadow d={blot('hard-green', [108, 63], 34, 15, 0.15, 9)} />
        <Flat d={blot('hard-green', [105, 59], 34, 15, 0.15, 9)} of={tone.greenDeep} />
        <Strokes d="M92 46L98 58L92 72M98 58L122 62L132 56" />
        <Shine
          at={[
            [80, 60],
            [108, 56],
          ]}
        />
      </Crust>
    </Close>
  ),
  'rust-green-kind/pale-powder': (id) => (
    <Close id={id}>
      <Crust>
        <Powder
          seed="pale-on-rust"
          at={[104, 60]}
          across={36}
          up={15}
          count={80}
          of={tone.greenPale}
          size={2.6}
        />
      </Crust>
    </Close>
  ),
  'rust-green-kind/soft-or-furry': (id) => (
    <Close id={id}>
      <Crust>
        <path d={blot('moss-bed', [106, 64], 40, 14, 0.1, 13)} fill={tone.green} />
        <path d={stems} strokeWidth="3" strokeLinecap="round" />
        <path d={stems} stroke={tone.greenPale} strokeWidth="1.5" strokeLinecap="round" />
        <Strokes d="M78 72Q92 78 106 74" of={tone.gloss} width={2.6} />
      </Crust>
    </Close>
  ),
  'fresh-debris/fresh-in-clean-bag': () => (
    <>
      <Bag />
      <Flat d={bagged} of={tone.rust} />
      <Flat d={flake} of={tone.bright} />
      <g transform="translate(22 38)">
        <Flat d={flake} of={tone.rust} />
      </g>
      <Powder seed="fresh-dust" at={[70, 100]} across={24} up={7} count={44} of={tone.bright} size={2.2} />
      <path d="M86 66L92 78" stroke={tone.ink} strokeWidth="1.6" strokeDasharray="3 3" />
    </>
  ),
  'fresh-debris/old-with-soil': () => (
    <>
      <Bag />
      <Flat d={bagged} of={tone.rust} />
      <path d="M18 104Q40 88 66 92T118 88Q136 92 142 108Q80 115 18 110Z" fill={tone.soil} stroke={tone.ink} />
      <Stipple seed="bag-soil" box={[28, 94, 106, 14]} count={40} size={1.6} />
      <Grains points={strewn('bag-stones', 8, [34, 95, 96, 12], 13)} of={tone.iron} size={4.4} />
      <Grains points={strewn('bag-crumbs', 9, [30, 94, 104, 14], 12)} of={tone.rustDeep} size={3} />
    </>
  ),
}

const bagged = 'M36 62Q44 44 92 42H104V46H128V56H104V62Z'
const patch = blot('blue-patch', [22, 56], 10, 15, 0.2)
