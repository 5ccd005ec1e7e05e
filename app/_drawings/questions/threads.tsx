import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { Flat, Grains, Shadow, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { threads } from '../weave.ts'

const rust = <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />

const branch =
  'M158 30Q128 34 110 56Q92 70 62 78M110 56Q104 40 86 30M128 40Q134 62 150 76M92 67Q96 86 112 98M100 62Q82 58 66 54'

/** Lines with a dark rim, as threads, hairs and roots are drawn. */
function Strands({ d, of, width }: { readonly d: string; readonly of: string; readonly width: number }) {
  return (
    <g strokeLinecap="round">
      <path d={d} strokeWidth={width + 2} />
      <path d={d} stroke={of} strokeWidth={width} />
    </g>
  )
}

function Bond({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="bond" layers={[{ of: tone.rust, deep: 11, rough: 2 }]} rough={2}>
      <Stipple seed="crust-grain" box={[58, 40, 98, 38]} count={36} />
      {children}
    </Block>
  )
}

/** Threads, hairs and roots. */
export const threadAnswers: Drawings = {
  'weave-crossing/over-and-under': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path d={threads.under} strokeWidth="8.6" />
      <path d={threads.under} stroke={tone.wood} strokeWidth="6.4" />
      <path d={threads.over} strokeWidth="8.6" />
      <path d={threads.over} stroke={tone.bone} strokeWidth="6.4" />
    </Close>
  ),
  'weave-crossing/flat-grid': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path
        d="M72 14V106M87 14V106M102 14V106M117 14V106M132 14V106M147 14V106M56 24H160M56 39H160M56 54H160M56 69H160M56 84H160M56 99H160"
        strokeWidth="2.4"
      />
    </Close>
  ),
  'weave-crossing/one-way': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path d="M54 34l70-18M60 42l92-24M56 52l64-17M64 58l90-24M54 70l100-26M60 78l60-15M70 84l86-22M62 94l74-19M76 100l78-20M90 106l50-13" />
      <path d="M58 48l56-15M70 66l84-22M64 88l60-15" stroke={tone.gloss} strokeWidth="0.9" />
    </Close>
  ),
  'weave-crossing/branching': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <Strands d={branch} of={tone.wood} width={3.4} />
    </Close>
  ),
  'weave-strand/twisted-thread': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path d="M46 46H168V76H46Z" fill={tone.bone} />
      <path
        d="M50 76Q62 64 66 46M64 76Q76 64 80 46M78 76Q90 64 94 46M92 76Q104 64 108 46M106 76Q118 64 122 46M120 76Q132 64 136 46M134 76Q146 64 150 46"
        strokeWidth="1.6"
      />
      <path
        d="M52 52q-3-8 4-12M96 46q3-10 10-10M124 76q2 10 10 10M84 76q-3 8-9 9"
        stroke={tone.bone}
        strokeWidth="1.6"
      />
    </Close>
  ),
  'weave-strand/flat-strip': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path d="M46 46H168V76H46Z" fill={tone.wood} />
      <Strokes d="M46 53H168M46 58H168M46 64H168M46 70H168" />
    </Close>
  ),
  'weave-strand/groove': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path d="M46 46H168V76H46Z" fill={tone.rustDeep} />
      <Shadow d="M46 46H168V56H46Z" />
      <Strokes d="M46 75H168" of={tone.gloss} width={1.8} />
    </Close>
  ),
  'weave-strand/round-root': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path
        d="M46 44Q80 40 104 48T168 46V72Q140 76 128 74L148 112H136L112 76Q80 70 46 76Z"
        fill={tone.wood}
      />
      <Strokes d="M56 50Q84 46 104 54T150 52" of={tone.gloss} width={2.4} />
      <path d="M74 44q-4-12-12-16M96 74q-2 10-10 14M138 45q4-10 2-18" strokeWidth="1.8" />
    </Close>
  ),
  'fibre-shape/twisted-together': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <Strands
        d="M132 52Q146 42 158 44M134 58Q148 56 160 60M132 64Q146 68 154 78M130 68Q140 78 142 88"
        of={tone.bone}
        width={1.8}
      />
      {[44, 58, 72, 86, 100, 114].map((x, index) => (
        <path
          key={x}
          d={`M${x} 74C${x - 5} 60 ${x + 8} 44 ${x + 22} 44C${x + 27} 58 ${x + 14} 74 ${x} 74Z`}
          fill={index % 2 === 0 ? tone.bone : tone.wood}
        />
      ))}
    </Close>
  ),
  'fibre-shape/parallel-lock': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <Strands
        d="M54 44Q90 30 156 42M54 51Q90 37 158 50M52 58Q90 45 158 58M54 65Q92 53 158 66M56 72Q92 61 156 74M58 79Q94 69 152 82"
        of={tone.bone}
        width={2.2}
      />
    </Close>
  ),
  'fibre-shape/flat-stems': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <path
        d="M58 30L150 66L146 78L54 42ZM84 104L112 14L124 18L96 108ZM62 86L92 78L94 88L64 96Z"
        fill={tone.wood}
      />
      <Strokes d="M58 34L148 70M57 38L147 74M88 105L116 15M92 107L120 17M62 90L93 82M104 40l12 4" />
    </Close>
  ),
  'fibre-shape/branching': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <Strands d={branch} of={tone.wood} width={3.4} />
    </Close>
  ),
  'fibre-shape/white-fluff': (id) => (
    <Close id={id} ground={tone.rust}>
      {rust}
      <Strands
        d="M84 60Q72 40 94 38T116 52Q132 36 140 56T124 78Q110 92 98 76T78 80Q66 70 84 60M92 54Q104 66 120 58M88 70Q104 60 112 74M100 44Q98 60 110 66M126 50Q116 66 128 70M142 50q8-4 10-10M72 82q-8 4-8 12"
        of={tone.white}
        width={1.6}
      />
    </Close>
  ),
  'fibre-shape/stiff-tufts': (id) => (
    <Close id={id}>
      <Block seed="tufts-on-rust" layers={[{ of: tone.rust, deep: 10, rough: 2 }]} rough={2}>
        <Strands
          d="M78 66l-12-18m12 18l-4-22m4 22l4-22m-4 22l12-18M116 58l-10-16m10 16l-3-20m3 20l4-20m-4 20l11-15M132 77l-11-16m11 16l-3-20m3 20l5-20m-5 20l12-14"
          of={tone.bright}
          width={1.6}
        />
      </Block>
    </Close>
  ),
  'fibre-bond/bound-in-crust': (id) => (
    <Close id={id}>
      <Bond>
        <Strands
          d="M56 66Q76 58 92 64M104 62Q122 54 136 62M146 60L160 54M70 76Q82 72 92 77M108 74Q126 70 138 76"
          of={tone.bone}
          width={2.6}
        />
        {[
          [98, 63],
          [141, 61],
          [99, 77],
          [64, 72],
        ].map(([x, y]) => (
          <circle key={x} cx={x} cy={y} r="7" fill={tone.rust} stroke={tone.rustDeep} />
        ))}
        <Arrow at={[98, 58]} from={[108, 24]} />
      </Bond>
    </Close>
  ),
  'fibre-bond/grow-from-surface': (id) => (
    <Close id={id}>
      <Bond>
        <Strands
          d="M68 60V40M76 72V48M86 58V36M94 74V50M104 60V38M112 72V46M122 58V36M130 74V50M140 62V42"
          of={tone.white}
          width={1.6}
        />
        <Arrow at={[104, 62]} from={[138, 92]} />
      </Bond>
    </Close>
  ),
  'fibre-bond/run-into-soil': (id) => (
    <Close id={id}>
      <Bond>
        <Flat d="M50 14H100Q112 30 104 50Q112 62 98 72L88 80H50Z" of={tone.soil} />
        <Grains points={strewn('clod', 10, [60, 26, 36, 44], 13)} of={tone.iron} size={3} />
        <Strands
          d="M150 70Q124 50 100 54Q80 58 62 42M140 56Q116 66 94 62Q76 64 62 66"
          of={tone.wood}
          width={2.6}
        />
        <Arrow at={[103, 53]} from={[132, 30]} />
      </Bond>
    </Close>
  ),
  'fibre-bond/lie-on-top': (id) => (
    <Close id={id}>
      <Bond>
        <path d="M62 70Q84 46 108 58T154 50" transform="translate(3 6)" opacity="0.35" strokeWidth="3.6" />
        <path d="M74 76Q108 84 138 64" transform="translate(3 6)" opacity="0.35" strokeWidth="3.6" />
        <Strands d="M62 70Q84 46 108 58T154 50M74 76Q108 84 138 64" of={tone.white} width={2.6} />
        <Arrow at={[112, 64]} from={[112, 26]} />
      </Bond>
    </Close>
  ),
}
