import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { Flat, Glint, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** How a wire sits, and what form a glint has. */
export const wiresAndGlints: Drawings = {
  'wire-seat/flush-in-a-groove': (id) => (
    <Close id={id}>
      <Block seed="seat" metal={tone.iron} rough={0.4}>
        <Flat d="M99 36H115L120 80H94Z" of={tone.gold} />
        <Flat d="M94 80H120L124 94H90Z" of={tone.gold} />
        <Shine
          at={[
            [104, 56],
            [102, 72],
          ]}
        />
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
        <Shine
          at={[
            [104, 46],
            [102, 62],
          ]}
        />
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
        <path d="M97 37H117L124 80H90Z" fill={tone.silver} stroke="none" />
        <Strokes
          d="M98 42l5 4M108 40l5 4M96 52l5 4M106 50l5 4M116 56l4 4M94 64l5 4M104 62l5 4M114 68l5 4M98 74l4 4M108 73l5 4"
          width={1.6}
        />
        <Strokes d="M62 48h22M58 58h24M60 70h20M128 48h22M132 58h22M134 70h20" width={1.6} />
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
      <Flat
        d="M76 44L92 36L96 42L82 50ZM122 56L138 58L136 64L124 62ZM92 84L104 78L110 84L98 90Z"
        of={tone.gold}
      />
      <Strokes d="M82 46L92 40M126 60H134M98 86L105 82" of={tone.gloss} width={1.4} />
      <Glint at={[86, 38]} r={10} />
    </Close>
  ),
  'glint-form/smooth-skin': (id) => (
    <Close id={id}>
      <Block
        seed="brassy-skin"
        layers={[
          { of: tone.gold, deep: 3, rough: 0.3 },
          { of: tone.rust, deep: 9 },
        ]}
        rough={0.4}
      >
        <Strokes d="M93 36L82 80M121 36L132 80" width={1.6} />
        <Shine
          at={[
            [64, 62],
            [74, 52],
            [102, 56],
            [104, 72],
            [138, 54],
            [144, 74],
          ]}
        />
      </Block>
    </Close>
  ),
  'glint-form/line-of-even-width': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      <Strokes d="M50 84L78 42L106 84L134 42L164 84" width={9} />
      <Strokes d="M50 84L78 42L106 84L134 42L164 84" of={tone.gold} width={6.6} />
      <Shine
        at={[
          [70, 58],
          [124, 60],
        ]}
      />
    </Close>
  ),
  'glint-form/pool-or-fillet': (id) => (
    <Close id={id}>
      <Flat d="M50 16H96V72H164V112H50Z" of={tone.iron} />
      <Strokes
        d="M56 40l16-16M56 60l34-34M56 80l36-36M60 96l24-24M80 100l16-16M104 104l20-20M126 104l20-20"
        width={0.8}
      />
      <Flat d="M96 34Q98 66 138 72H96Z" of={tone.gold} />
      <Shine at={[[100, 66]]} />
      <Arrow at={[112, 60]} from={[138, 34]} />
    </Close>
  ),
}
