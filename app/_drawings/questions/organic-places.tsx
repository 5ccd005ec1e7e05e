import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Grains, Shadow, Stipple, Strokes } from '../kit/marks.tsx'
import { strapOutline } from '../kit/objects.tsx'
import { tone } from '../kit/tones.ts'

/** A tang lying, with what is left of a grip on it. */
function Tang({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path d="M6 36H84V50H154V70H84V84H6Z" fill={tone.rust} stroke={tone.ink} strokeWidth="1.4" />
      {children}
    </>
  )
}

/** A pattern of threads on a surface seen aslant. */
const aslant =
  'M70 44h68M66 52h76M62 60h84M58 68h92M82 40l-12 36M96 40l-7 36M110 40v36M124 40l7 36M138 40l12 36'

/** A leather-like layer near by. */
function Hide({ of = tone.leather, children }: { readonly of?: string; readonly children: ReactNode }) {
  return (
    <>
      <path d="M40 0H174V120H40Z" fill={of} stroke="none" />
      {children}
    </>
  )
}

/** Where cloth, wood and leather lie, and how far they go. */
export const organicPlaces: Drawings = {
  'weave-place/made-of-crust': (id) => (
    <Close id={id}>
      <Place>
        <Strokes d={aslant} of={tone.line} width={5} />
        <Strokes d={aslant} of={tone.rust} width={3} />
      </Place>
    </Close>
  ),
  'weave-place/pressed-into-soft': (id) => (
    <Close id={id}>
      <Block seed="soft-ground" layers={[{ of: tone.wax, deep: 18, rough: 1 }]} metal={tone.lead} rough={0.4}>
        <path d="M62 41H146L162 80H52Z" fill={tone.wax} />
        <g stroke={tone.greenDeep} strokeWidth="6.4" strokeLinecap="round">
          <path d="M66 46h80M60 65h92" strokeDasharray="8 11" />
          <path d="M72 55.5h72M66 74.5h88" strokeDasharray="8 11" />
        </g>
        <g stroke={tone.gloss} strokeWidth="1.6" strokeLinecap="round">
          <path d="M66 49.6h80M60 68.6h92" strokeDasharray="8 11" />
          <path d="M72 59.1h72M66 78.1h88" strokeDasharray="8 11" />
        </g>
        <path
          d="M60 80a6 5 0 0 0 12 0M82 80a6 5 0 0 0 12 0M104 80a6 5 0 0 0 12 0M126 80a6 5 0 0 0 12 0M148 80a6 5 0 0 0 12 0"
          fill={tone.air}
        />
        <Arrow at={[110, 84]} from={[124, 104]} />
      </Block>
    </Close>
  ),
  'weave-place/in-the-metal': (id) => (
    <Close id={id}>
      <Block seed="cut-grid" metal={tone.iron} rough={0.3}>
        <Strokes d={aslant} width={2} />
        <Strokes d="M60 48h6M148 50h8M54 70h4M152 74h4" of={tone.gloss} width={1.6} />
        <path d="M76 80l3 6 3-6M106 80l3 6 3-6M136 80l3 6 3-6" fill={tone.air} />
      </Block>
    </Close>
  ),
  'weave-place/lies-loose': (id) => (
    <Close id={id}>
      <Place>
        <Shadow d="M70 52L138 44L150 74L64 80Z" />
        <path d="M66 44L134 36L148 66Q132 60 118 70Q98 60 60 72Z" fill={tone.bone} />
        <Strokes d="M64 54L139 46M62 63L144 56M80 43L74 69M96 41L94 66M112 39L114 67M124 38L132 63" />
        <path d="M66 44l-6-5M134 36l7-4M148 66l7 2M60 72l-7 3" stroke={tone.line} />
      </Place>
    </Close>
  ),
  'weave-evenness/machine-even': (id) => (
    <Close id={id} ground={tone.bone}>
      <path
        d={Array.from({ length: 11 }, (_, step) => `M${57 + step * 10} 6V114M46 ${10 + step * 10}H168`).join(
          '',
        )}
        strokeWidth="2"
      />
    </Close>
  ),
  'weave-evenness/nearly-even': (id) => (
    <Close id={id} ground={tone.bone}>
      <path
        d={
          [58, 66, 79, 87, 99, 112, 119, 132, 141, 153]
            .map((x, step) => `M${x} 6q${step % 2 === 0 ? 3 : -3} 54 ${(step % 3) - 1} 108`)
            .join('') +
          [16, 28, 36, 49, 57, 70, 81, 89, 102]
            .map((y, step) => `M46 ${y}q60 ${step % 2 === 0 ? 4 : -3} 122 ${(step % 3) - 1}`)
            .join('')
        }
        strokeWidth="2.2"
      />
    </Close>
  ),
  'grain-direction/across-the-metal': () => (
    <Tang>
      <path d="M88 40H150V80H88Z" fill={tone.wood} />
      <Strokes d="M94 42V78M102 42V78M110 42V78M118 42V78M126 42V78M134 42V78M142 42V78" />
    </Tang>
  ),
  'grain-direction/changes-direction': () => (
    <Tang>
      <path d="M88 40H150V80H88Z" fill={tone.wood} />
      <Strokes d="M118 40V80" width={2} />
      <Strokes d="M94 42V78M102 42V78M110 42V78M120 46H148M120 54H148M120 62H148M120 70H148" />
    </Tang>
  ),
  'grain-direction/along-the-metal': () => (
    <Tang>
      <path d="M88 40H150V80H88Z" fill={tone.wood} />
      <Strokes d="M90 46H148M90 53H148M90 60H148M90 67H148M90 74H148" />
    </Tang>
  ),
  'grain-direction/bends-with-the-metal': () => (
    <>
      <path
        d="M8 30H80Q112 30 112 62V112H88V66Q88 54 76 54H8Z"
        fill={tone.rust}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <Strokes
        d="M10 36H80Q106 36 106 62V110M10 42H80Q100 42 100 62V110M10 48H78Q94 48 94 64V110"
        width={1.4}
      />
    </>
  ),
  'grain-end/ends-at-a-line': () => (
    <Tang>
      <path d="M96 42H154V78H96Z" fill={tone.wood} />
      <Strokes d="M98 48H152M98 54H152M98 60H152M98 66H152M98 72H152" />
      <Arrow at={[96, 40]} from={[84, 14]} />
    </Tang>
  ),
  'grain-end/whole-length': () => (
    <Tang>
      <Strokes d="M8 42H82M8 48H82M8 54H152M8 60H152M8 66H152M8 72H82M8 78H82" />
    </Tang>
  ),
  'grain-in-break/outside-the-metal': (id) => (
    <Close id={id}>
      <path d={blot('wood-ring', [107, 60], 44, 38, 0.05)} fill={tone.wood} />
      <path d="M68 50Q107 14 146 50M66 62Q70 90 107 94T148 62M74 42Q107 22 140 42M72 76Q84 88 107 88T142 76" />
      <path d={blot('core', [107, 60], 22, 19, 0.08)} fill={tone.iron} />
      <Strokes d="M92 70l22-22M100 76l24-24M90 58l10-10" width={0.8} />
    </Close>
  ),
  'grain-in-break/within-the-metal': (id) => (
    <Close id={id}>
      <path d={blot('wood-ring', [107, 60], 44, 38, 0.05)} fill={tone.iron} />
      <Strokes
        d="M66 46H148M64 54H150M64 62H150M64 70H150M68 78H146M76 86H138M74 38H140M84 30H130"
        width={1.4}
      />
    </Close>
  ),
  'leather-surface/pores-in-pattern': (id) => (
    <Close id={id}>
      <Hide>
        <path d={pores} stroke={tone.black} strokeWidth="3" strokeLinecap="round" />
        <Strokes d="M56 44q26-8 50 0t50-4M58 80q24-8 48 0t48-4" />
      </Hide>
    </Close>
  ),
  'leather-surface/smooth-sheets': (id) => (
    <Close id={id}>
      <path d="M50 92Q100 84 164 92V114H50Z" fill={tone.leather} />
      <path d="M50 72Q96 66 150 76L164 92Q104 82 50 92Z" fill={tone.wood} />
      <path d="M50 52Q92 46 138 58L152 76Q100 66 50 74Z" fill={tone.leather} />
      <Strokes d="M60 60Q84 55 116 62M62 80Q90 75 130 82" of={tone.gloss} width={2.4} />
    </Close>
  ),
  'leather-surface/long-grain': (id) => (
    <Close id={id}>
      <Hide>
        <Strokes
          d="M46 22Q100 16 168 24M46 34Q100 30 168 35M46 46Q100 40 168 47M46 58Q100 54 168 59M46 70Q100 66 168 71M46 82Q100 78 168 84M46 94Q100 90 168 95M46 104H168"
          width={1.4}
        />
      </Hide>
    </Close>
  ),
  'leather-surface/gritty': (id) => (
    <Close id={id}>
      <Hide of={tone.soil}>
        <Grains points={strewn('grit-a', 34, [58, 14, 96, 92], 12)} of={tone.iron} size={3.4} />
        <Grains points={strewn('grit-b', 26, [58, 14, 96, 92], 12)} of={tone.rust} size={2} />
      </Hide>
    </Close>
  ),
  'leather-surface/paper-or-film': (id) => (
    <Close id={id}>
      <Hide of={tone.green}>
        <Shadow d="M64 28L146 22L152 96L70 100Z" />
        <path d="M60 24L142 18L148 78L128 94L66 96Z" fill={tone.white} />
        <path d="M148 78L128 94L130 76Z" fill={tone.silver} />
        <Strokes d="M72 38H128M72 48H120M72 58H130M72 68H112" of={tone.soft} width={2} />
      </Hide>
    </Close>
  ),
  'leather-place/held-by-rivets': () => (
    <>
      <path d="M16 30H144V46H16ZM16 74H144V90H16Z" fill={tone.bronze} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M8 48H152V72H8Z" fill={tone.leather} stroke={tone.ink} />
      <Stipple seed="held" box={[14, 52, 132, 16]} count={30} size={1.6} />
      <path
        d="M38 24H46V96H38ZM114 24H122V96H114ZM32 20H52V26H32ZM108 20H128V26H108ZM32 94H52V100H32ZM108 94H128V100H108Z"
        fill={tone.iron}
      />
    </>
  ),
  'leather-place/along-the-blade': () => (
    <>
      <path
        d="M6 60Q24 40 96 40H152V80H96Q40 82 6 60Z"
        fill={tone.rust}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <path d="M24 48Q50 32 112 34V88Q50 90 20 70Z" fill={tone.leather} />
      <path d="M30 72Q60 82 108 82" stroke={tone.bone} strokeWidth="2" strokeDasharray="4 4" />
      <Stipple seed="sheath" box={[36, 44, 70, 30]} count={26} size={1.6} />
    </>
  ),
  'leather-place/over-everything': () => (
    <>
      <g transform="rotate(-90 60 60) translate(26 4)">
        <path d={strapOutline} fill={tone.green} stroke={tone.ink} strokeWidth="1.4" />
      </g>
      <path d="M4 96H156V116H4Z" fill={tone.soil} stroke="none" />
      <path
        d="M40 30Q70 24 92 36Q112 46 108 66Q116 92 130 108Q92 116 66 104Q44 92 46 66Q34 48 40 30Z"
        fill={tone.leather}
        fillOpacity="0.85"
      />
      <Stipple seed="over-all" box={[50, 40, 50, 60]} count={26} size={1.6} />
    </>
  ),
}

function Place({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="weave-ground" layers={[{ of: tone.rust, deep: 11, rough: 2 }]} rough={1.4}>
      <Stipple seed="crust-grain" box={[58, 40, 98, 38]} count={26} />
      {children}
    </Block>
  )
}

const pores = [24, 36, 56, 68, 92, 102]
  .flatMap((y, row) => Array.from({ length: 9 }, (_, step) => `M${58 + step * 12 + (row % 2) * 6} ${y}h0`))
  .join('')
