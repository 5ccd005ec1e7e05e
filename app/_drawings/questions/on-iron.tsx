import { Block } from '../kit/block.tsx'
import { heaped, type Point, strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { shard } from '../kit/lines.ts'
import { Flat, Glint, Grains, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Lying } from './lying.tsx'

const crust = [{ of: tone.rust, deep: 10, rough: 2 }]

const grain = <Stipple seed="crust-grain" box={[58, 40, 98, 38]} count={36} />

const row = (y: number): Point[] =>
  Array.from({ length: 8 }, (_, index) => [38 + index * 8, y + (index % 2) * 5] as const)

/** Where something bright lies on iron. */
export const onIron: Drawings = {
  'bright-place/in-a-pattern': () => <Lying specks={[...row(47), ...row(57), ...row(67)]} />,
  'bright-place/at-joints': () => (
    <Lying
      specks={[
        [104, 40],
        [103, 47],
        [105, 54],
        [103, 61],
        [105, 68],
        [103, 75],
        [111, 57],
        [111, 63],
        [121, 57],
        [121, 64],
        [137, 57],
        [147, 58],
        [147, 64],
      ]}
    >
      <Arrow at={[104, 36]} from={[92, 14]} />
    </Lying>
  ),
  'bright-place/all-over': () => <Lying specks={strewn('all-over', 38, [46, 43, 55, 36], 9)} />,
  'bright-place/along-the-edge': () => (
    <Lying
      specks={[
        [16, 71],
        [26, 75],
        [36, 78],
        [46, 80],
        [56, 81],
        [66, 81.6],
        [76, 82],
        [86, 82],
        [96, 82],
      ]}
    >
      <Arrow at={[60, 86]} from={[52, 108]} />
    </Lying>
  ),
  'bright-place/one-cluster': () => <Lying specks={heaped('cluster', 20, [52, 56], 13, 10)} />,
  'bright-place/in-wood-or-soil-too': () => (
    <Lying
      specks={[
        ...strewn('iron-and', 14, [46, 44, 54, 34], 12),
        ...strewn('wood-and', 12, [108, 44, 44, 34], 9),
      ]}
    >
      <path d="M4 100H156V116H4Z" fill={tone.soil} stroke="none" />
      <Grains points={strewn('soil-and', 9, [10, 102, 140, 10], 12)} of={tone.gloss} size={3} />
    </Lying>
  ),
  'iron-skin-place/within-the-rust': (id) => (
    <Close id={id}>
      <Block
        seed="tin-in-rust"
        layers={[...crust, { of: tone.silver, deep: 3, rough: 0.4 }, { of: tone.rustDeep, deep: 6 }]}
        rough={2}
      >
        {grain}
        <Flat d={shard('rust-chip', [104, 60], 24, 12)} of={tone.silver} />
        <Shine
          at={[
            [94, 64],
            [108, 66],
          ]}
        />
        <Arrow at={[130, 91]} from={[146, 70]} />
      </Block>
    </Close>
  ),
  'iron-skin-place/even-over-all': () => (
    <>
      <path
        d="M22 38L36 22H60L68 38V80L60 96H36L22 80Z"
        fill={tone.silver}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <path d="M68 44H146V76H68Z" fill={tone.silver} stroke={tone.ink} strokeWidth="1.4" />
      <Strokes d="M36 22V96M60 22V96M92 44l-5 32M102 44l-5 32M112 44l-5 32M122 44l-5 32M132 44l-5 32M142 44l-5 32" />
      <Shine
        at={[
          [44, 52],
          [44, 76],
          [76, 62],
          [26, 60],
        ]}
      />
      <Glint at={[138, 50]} r={7} />
    </>
  ),
  'iron-skin-place/on-the-design': () => (
    <Lying specks={[]}>
      <path d="M26 66L38 46L50 66L62 46L74 66L86 46L98 66M30 74H100" strokeWidth="5" />
      <path d="M26 66L38 46L50 66L62 46L74 66L86 46L98 66M30 74H100" stroke={tone.silver} strokeWidth="3" />
    </Lying>
  ),
  'iron-skin-place/at-a-joint': (id) => (
    <Close id={id}>
      <Block seed="iron-joint" metal={tone.iron} surface={tone.rust} rough={0.6}>
        <Flat d="M50 36H164V58H50Z" of={tone.rust} />
        <Flat d="M50 58H164V63H50Z" of={tone.rustDeep} />
        <Flat d="M50 63H164V69Q150 72 138 69Q124 67 112 70Q96 73 84 69Q70 67 50 71Z" of={tone.silver} />
        <Shine
          at={[
            [70, 70],
            [104, 71],
            [140, 70],
          ]}
        />
        <Arrow at={[106, 66]} from={[92, 24]} />
      </Block>
    </Close>
  ),
  'iron-skin-place/blob-or-splash': (id) => (
    <Close id={id}>
      <Block seed="splash" layers={crust} rough={2}>
        {grain}
        <Shadow d="M82 68L140 76L146 66L130 54Z" />
        <Flat
          d="M76 66C72 46 92 40 104 44C112 34 134 46 132 58C140 66 128 72 120 68C118 82 108 84 106 72C92 78 80 76 76 66Z"
          of={tone.silver}
        />
        <Strokes d="M84 60Q86 50 96 50M112 50Q122 50 124 56" of={tone.gloss} width={2.6} />
        <Arrow at={[132, 58]} from={[146, 30]} />
      </Block>
    </Close>
  ),
  'iron-skin-place/where-rust-came-off': (id) => (
    <Close id={id}>
      <Block seed="came-off" layers={crust} rough={2}>
        {grain}
        <Flat d={shard('bare-iron', [106, 60], 30, 15, 0.2, 10)} of={tone.iron} />
        <Strokes d="M84 58l12-8M86 66l24-16M94 68l28-18M106 70l22-14M118 70l10-6" />
        <Shadow d="M77 58L92 47L120 46L132 52L128 56L116 50L94 52L82 62Z" />
      </Block>
    </Close>
  ),
}
