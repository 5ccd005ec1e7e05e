import type { ReactNode } from 'react'
import { Block } from './kit/block.tsx'
import { heaped, strewn, type Point } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Close } from './kit/lens.tsx'
import { shard } from './kit/lines.ts'
import { Flat, Glint, Grains, Shadow, Shine, Stipple, Strokes } from './kit/marks.tsx'
import { tone } from './kit/tones.ts'

const crust = [{ of: tone.rust, deep: 10, rough: 2 }]
const grain = <Stipple seed="crust-grain" box={[58, 40, 98, 38]} count={36} />

/** The whole knife lying, with its wooden grip riveted on. */
function Lying({ specks, children }: { readonly specks: readonly Point[]; readonly children?: ReactNode }) {
  return (
    <>
      <path d="M6 66Q24 38 104 36V84Q40 86 6 66Z" fill={tone.rust} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M104 40H154V80H104Z" fill={tone.wood} stroke={tone.ink} strokeWidth="1.4" />
      <Strokes d="M108 48H150M108 56H150M108 64H150M108 72H150" of={tone.soft} />
      <g fill={tone.rust}>
        <circle cx="116" cy="60" r="4" />
        <circle cx="142" cy="60" r="4" />
      </g>
      <Grains points={specks} of={tone.gloss} size={3} />
      {children}
    </>
  )
}

const row = (y: number): Point[] => Array.from({ length: 8 }, (_, index) => [38 + index * 8, y + (index % 2) * 5] as const)

export const inlayAnswers: Drawings = {
  'bright-place/in-a-pattern': () => <Lying specks={[...row(47), ...row(57), ...row(67)]} />,
  'bright-place/at-joints': () => (
    <Lying specks={[[104, 40], [103, 47], [105, 54], [103, 61], [105, 68], [103, 75], [111, 57], [111, 63], [121, 57], [121, 64], [137, 57], [147, 58], [147, 64]]}>
      <Arrow at={[104, 36]} from={[92, 14]} />
    </Lying>
  ),
  'bright-place/all-over': () => <Lying specks={strewn('all-over', 38, [46, 43, 55, 36], 9)} />,
  'bright-place/along-the-edge': () => (
    <Lying specks={[[16, 71], [26, 75], [36, 78], [46, 80], [56, 81], [66, 81.6], [76, 82], [86, 82], [96, 82]]}>
      <Arrow at={[60, 86]} from={[52, 108]} />
    </Lying>
  ),
  'bright-place/one-cluster': () => <Lying specks={heaped('cluster', 20, [52, 56], 13, 10)} />,
  'bright-place/in-wood-or-soil-too': () => (
    <Lying specks={[...strewn('iron-and', 14, [46, 44, 54, 34], 12), ...strewn('wood-and', 12, [108, 44, 44, 34], 9)]}>
      <path d="M4 100H156V116H4Z" fill={tone.soil} stroke="none" />
      <Grains points={strewn('soil-and', 9, [10, 102, 140, 10], 12)} of={tone.gloss} size={3} />
    </Lying>
  ),
  'wire-seat/flush-in-a-groove': (id) => (
    <Close id={id}>
      <Block seed="seat" metal={tone.iron} rough={0.4}>
        <Flat d="M99 36H115L120 80H94Z" of={tone.gold} />
        <Flat d="M94 80H120L124 94H90Z" of={tone.gold} />
        <Shine at={[[104, 56], [102, 72]]} />
        <Arrow at={[107, 86]} from={[138, 98]} />
      </Block>
    </Close>
  ),
  'wire-seat/on-the-surface': (id) => (
    <Close id={id}>
      <Block seed="seat" metal={tone.iron} rough={0.4}>
        <Shadow d="M115 36L136 40L142 80H120Z" />
        <Flat d="M99 26H115L120 68H94Z" of={tone.gold} />
        <Flat d="M94 68H120V81H94Z" of={tone.gold} />
        <Flat d="M115 26L120 68V81L117 60L115 36Z" of={tone.bronze} />
        <Shine at={[[104, 46], [102, 62]]} />
        <Arrow at={[121, 75]} from={[142, 90]} />
      </Block>
    </Close>
  ),
  'wire-seat/in-a-seam': (id) => (
    <Close id={id}>
      <Block seed="seat" metal={tone.iron} rough={0.4}>
        <Flat d="M50 36H104L102 80V112H50Z" of={tone.iron} />
        <Flat d="M110 36H164V112H112V80Z" of={tone.ironDeep} />
        <Flat d="M104 36H110L112 80V112H102V80Z" of={tone.gold} />
        <Strokes d="M56 108l16-16M72 110l18-18M122 92l16 16M138 88l16 16" of={tone.line} width={0.8} />
        <Arrow at={[107, 60]} from={[138, 44]} />
      </Block>
    </Close>
  ),
  'wire-seat/goes-round': (id) => (
    <Close id={id}>
      <Flat d="M46 42H168V82H46Z" of={tone.iron} />
      <Strokes d="M46 50H168" of={tone.gloss} width={1.6} />
      {[70, 84, 98, 112, 126, 140].map((x) => (
        <path key={x} d={`M${x - 7} 40q6-6 9 0l6 42q-3 6-9 2z`} fill={tone.gold} />
      ))}
      <Arrow at={[112, 38]} from={[122, 18]} />
    </Close>
  ),
  'wire-seat/no-step': (id) => (
    <Close id={id}>
      <Block seed="seat" metal={tone.iron} rough={0.4}>
        <path d="M99 36H115L120 80H94Z" fill={tone.silver} stroke="none" opacity="0.7" />
        <path d="M99 36L94 80M115 36L120 80" strokeDasharray="2 4" />
        <Strokes d="M100 48h10M98 58h14M98 68h14M62 48h16M62 60h12M130 52h14M132 66h14" of={tone.soft} />
      </Block>
    </Close>
  ),
  'glint-form/cubes-or-grains': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      {strewn('dice', 13, [68, 26, 76, 66], 19).map(([x, y], index) => (
        <path
          key={x}
          d={`M${Math.round(x)} ${Math.round(y)}l5-4 6 3-1 6-6 2-5-2zl5 2 6-3m-6 3v5`}
          fill={index % 3 === 0 ? tone.gloss : tone.gold}
        />
      ))}
      <Glint at={[98, 40]} r={9} />
      <Glint at={[130, 76]} r={8} />
    </Close>
  ),
  'glint-form/thin-flakes': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      <Flat d="M76 44L92 36L96 42L82 50ZM122 56L138 58L136 64L124 62ZM92 84L104 78L110 84L98 90Z" of={tone.gold} />
      <Strokes d="M82 46L92 40M126 60H134M98 86L105 82" of={tone.gloss} width={1.4} />
      <Glint at={[86, 38]} r={10} />
    </Close>
  ),
  'glint-form/smooth-skin': (id) => (
    <Close id={id}>
      <Block seed="brassy-skin" layers={[{ of: tone.gold, deep: 3, rough: 0.3 }, { of: tone.rust, deep: 9 }]} rough={0.4}>
        <Strokes d="M93 36L82 80M121 36L132 80" width={1.6} />
        <Shine at={[[64, 62], [74, 52], [102, 56], [104, 72], [138, 54], [144, 74]]} />
      </Block>
    </Close>
  ),
  'glint-form/line-of-even-width': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      <Strokes d="M50 84L78 42L106 84L134 42L164 84" width={9} />
      <Strokes d="M50 84L78 42L106 84L134 42L164 84" of={tone.gold} width={6.6} />
      <Shine at={[[70, 58], [124, 60]]} />
    </Close>
  ),
  'glint-form/pool-or-fillet': (id) => (
    <Close id={id}>
      <Flat d="M50 16H96V72H164V112H50Z" of={tone.iron} />
      <Strokes d="M56 40l16-16M56 60l34-34M56 80l36-36M60 96l24-24M80 100l16-16M104 104l20-20M126 104l20-20" width={0.8} />
      <Flat d="M96 34Q98 66 138 72H96Z" of={tone.gold} />
      <Shine at={[[100, 66]]} />
      <Arrow at={[112, 60]} from={[138, 34]} />
    </Close>
  ),
  'iron-skin-place/within-the-rust': (id) => (
    <Close id={id}>
      <Block seed="tin-in-rust" layers={[...crust, { of: tone.silver, deep: 3, rough: 0.4 }, { of: tone.rustDeep, deep: 6 }]} rough={2}>
        {grain}
        <Flat d={shard('rust-chip', [104, 60], 24, 12)} of={tone.silver} />
        <Shine at={[[94, 64], [108, 66]]} />
        <Arrow at={[130, 91]} from={[146, 70]} />
      </Block>
    </Close>
  ),
  'iron-skin-place/even-over-all': () => (
    <>
      <path d="M22 38L36 22H60L68 38V80L60 96H36L22 80Z" fill={tone.silver} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M68 44H146V76H68Z" fill={tone.silver} stroke={tone.ink} strokeWidth="1.4" />
      <Strokes d="M36 22V96M60 22V96M92 44l-5 32M102 44l-5 32M112 44l-5 32M122 44l-5 32M132 44l-5 32M142 44l-5 32" />
      <Shine at={[[44, 52], [44, 76], [76, 62], [26, 60]]} />
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
        <Shine at={[[70, 70], [104, 71], [140, 70]]} />
        <Arrow at={[106, 66]} from={[92, 24]} />
      </Block>
    </Close>
  ),
  'iron-skin-place/blob-or-splash': (id) => (
    <Close id={id}>
      <Block seed="splash" layers={crust} rough={2}>
        {grain}
        <Shadow d="M82 68L140 76L146 66L130 54Z" />
        <Flat d="M76 66C72 46 92 40 104 44C112 34 134 46 132 58C140 66 128 72 120 68C118 82 108 84 106 72C92 78 80 76 76 66Z" of={tone.silver} />
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
