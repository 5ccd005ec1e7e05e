import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, shard } from '../kit/lines.ts'
import { Bead, Flat, Grains, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** The two faces of one flake: the outer as the crust is, the inner turned up beside it. */
function Flake({ of, children }: { readonly of: string; readonly children: ReactNode }) {
  return (
    <>
      <path d={outer} fill={tone.rust} stroke={tone.ink} strokeWidth="1.4" />
      <Stipple seed="flake-outside" box={[20, 32, 40, 56]} count={30} size={1.8} />
      <path d="M68 26q12-10 24 0m-7-5l7 5-2-8" stroke={tone.ink} strokeWidth="1.8" />
      <g transform="matrix(-1 0 0 1 160 0)">
        <path d={outer} fill={of} stroke={tone.ink} strokeWidth="1.4" />
      </g>
      {children}
    </>
  )
}
const outer = 'M18 34L40 22L62 30L70 56L60 88L38 98L16 86L10 58Z'

const tufts = strewn('flake-needles', 13, [104, 42, 38, 46], 13)
  .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l-6-6m6 6l-2-9m2 9l3-9m-3 9l7-6`)
  .join('')

/** What a black crust is like, and the inner face of a flake. */
export const blackCrusts: Drawings = {
  'black-crust-look/grey-shine': (id) => (
    <Close id={id}>
      <Block
        seed="graphite"
        layers={[{ of: tone.film, deep: 5, rough: 0.5 }]}
        metal={tone.silver}
        rough={0.4}
      >
        <path d="M66 80L92 36H122L98 80Z" fill={tone.ironDeep} stroke="none" />
        <path d="M80 80L106 36H114L89 80Z" fill={tone.iron} stroke="none" />
        <Strokes d="M58 52H76M56 66H66M126 48H142M118 62H150M112 74H134" of={tone.ironDeep} width={1.6} />
      </Block>
    </Close>
  ),
  'black-crust-look/black-with-white': (id) => (
    <Close id={id}>
      <Block
        seed="black-white"
        layers={[
          { of: tone.black, deep: 6, rough: 1.6 },
          { of: tone.white, deep: 6, rough: 1.6 },
          { of: tone.black, deep: 5, rough: 1.6 },
        ]}
        metal={tone.lead}
        rough={1}
      >
        <Flat
          d={`${blot('white-a', [78, 52], 10, 5, 0.3)}${blot('white-b', [120, 62], 15, 7, 0.3)}${blot('white-c', [138, 46], 7, 4, 0.3)}${blot('white-d', [90, 71], 8, 4, 0.3)}`}
          of={tone.white}
        />
      </Block>
    </Close>
  ),
  'black-crust-look/brown-where-thin': (id) => (
    <Close id={id}>
      <Block seed="thin-edge" metal={tone.silver} rough={0.4}>
        <path d="M46 34H98Q112 46 106 58Q114 68 108 80H46Z" fill={tone.black} />
        <path
          d="M98 36H126Q138 46 132 58Q140 68 136 80H108Q114 68 106 58Q112 46 98 36Z"
          fill={tone.leather}
        />
        <Stipple seed="brown-rim" box={[112, 40, 18, 38]} count={30} size={2.2} />
        <path d="M46 80H108L118 84L46 95Z" fill={tone.black} />
        <path d="M108 80H136L118 84Z" fill={tone.leather} />
        <Arrow at={[126, 78]} from={[142, 104]} />
      </Block>
    </Close>
  ),
  'black-crust-look/spots-and-branches': (id) => (
    <Close id={id}>
      <Block seed="branches" layers={[{ of: tone.wax, deep: 6 }]} metal={tone.silver} rough={0.5}>
        <Flat d={blot('branch-stone', [136, 60], 19, 14, 0.15)} of={tone.soil} />
        <path
          d="M76 74V48M76 65l-9-8M76 60l9-9M67 57l-6-1M85 51l1-7M76 54l-6-7M134 70V50M134 62l-7-6M134 58l7-6M104 56V42M104 52l-6-5M104 50l6-5"
          strokeWidth="2.4"
          strokeLinecap="round"
        />
        <Grains points={strewn('black-dots', 11, [60, 42, 90, 36], 14)} of={tone.black} size={3.4} />
      </Block>
    </Close>
  ),
  'black-crust-look/pitch': (id) => (
    <Close id={id}>
      <Block seed="pitchy" metal={tone.silver} rough={0.4}>
        <path
          d="M46 32H134Q144 42 134 50Q140 66 132 72Q134 92 127 96T118 84Q114 70 106 74Q106 102 97 106T88 92Q86 78 76 80H46Z"
          fill={tone.black}
          stroke={tone.gloss}
          strokeWidth="0.8"
        />
        <path d="M62 44L96 40L104 54L82 66L60 60Z" fill={tone.film} stroke={tone.gloss} strokeWidth="1.2" />
        <path d="M68 58Q80 58 88 44M74 62Q88 60 96 46" stroke={tone.gloss} strokeWidth="1.2" />
        <Strokes d="M122 78V90M93 84V98M112 42Q122 42 127 47" of={tone.gloss} width={2.4} />
        <Bead at={[146, 72]} r={4} of={tone.black} />
      </Block>
    </Close>
  ),
  'flake-inside/orange-needles': () => (
    <Flake of={tone.rustDeep}>
      <path d={tufts} strokeWidth="3.4" strokeLinecap="round" />
      <path d={tufts} stroke={tone.bright} strokeWidth="1.9" strokeLinecap="round" />
    </Flake>
  ),
  'flake-inside/same-as-outside': () => (
    <Flake of={tone.rust}>
      <Stipple seed="flake-inside" box={[100, 32, 40, 56]} count={30} size={1.8} />
    </Flake>
  ),
  'flake-inside/blue-grey-scale': () => (
    <Flake of={tone.iron}>
      <path d={shard('scale-gone', [138, 44], 7, 9, 0.2, 7)} fill={tone.rust} />
      <Strokes d="M98 48L118 36M100 76L138 56" of={tone.gloss} width={2.6} />
      <Strokes d="M92 62L112 66L118 92M112 66L144 74M112 66L120 44" />
    </Flake>
  ),
}
