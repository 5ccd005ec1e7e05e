import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, cracked } from '../kit/lines.ts'
import { Flat, Glint, Grains, Shine, Strokes, Wax } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** Cracks, breaks and grey layers of silver. */
export const silverAnswers: Drawings = {
  'silver-crack-run/crumbling-net': (id) => (
    <Close id={id} ground={tone.silver}>
      <Strokes
        d={
          ['a', 'b', 'c', 'd', 'e']
            .map((word, index) =>
              cracked(`sugar-${word}`, [60 + index * 22, 10], [56 + index * 24, 110], 5, 9),
            )
            .join('') +
          ['f', 'g', 'h', 'i']
            .map((word, index) =>
              cracked(`sugar-${word}`, [50, 26 + index * 22], [164, 24 + index * 23], 5, 10),
            )
            .join('')
        }
        width={1.4}
      />
      <Flat d="M118 70L132 64L142 76L132 88L120 84Z" of={tone.air} />
      <Grains points={strewn('sugar', 14, [118, 72, 30, 26], 6)} of={tone.silver} size={2.6} />
    </Close>
  ),
  'silver-crack-run/at-bends': (id) => (
    <Close id={id}>
      <Flat d="M46 40L104 62L100 112H46Z" of={tone.silver} />
      <Flat d="M104 62L168 34V100L100 112Z" of={tone.lead} />
      <Strokes d={cracked('bend', [104, 62], [100, 112], 1.6, 9)} width={3} />
      <Strokes
        d={`${cracked('bend-b', [98, 60], [95, 108], 1.6, 8)}${cracked('bend-c', [110, 60], [107, 110], 1.6, 8)}`}
      />
      <Arrow at={[102, 84]} from={[136, 84]} />
    </Close>
  ),
  'silver-crack-run/beside-holes': (id) => (
    <Close id={id} ground={tone.silver}>
      {[
        [84, 44, 9],
        [122, 62, 11],
        [94, 84, 7],
      ].map(([x, y, r]) => (
        <circle key={x} cx={x} cy={y} r={r} fill={tone.black} />
      ))}
      <Strokes
        d={`${cracked('hole-a', [93, 46], [112, 58], 2)}${cracked('hole-b', [100, 82], [116, 72], 2)}${cracked('hole-c', [132, 58], [156, 44], 2)}${cracked('hole-d', [76, 40], [58, 30], 2)}`}
        width={1.8}
      />
      <Strokes d="M64 60H78M130 90H146M104 26H118" of={tone.gloss} width={1.8} />
    </Close>
  ),
  'silver-break/bright-grainy': (id) => (
    <Close id={id}>
      <Block seed="silver-break" metal={tone.silver} edge={54} rough={2}>
        <path
          d={strewn('silver-grains', 26, [58, 60, 96, 44], 12)
            .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l4-4 5 2 1 5-5 3-4-2z`)
            .join('')}
          fill={tone.gloss}
        />
        <Glint at={[88, 76]} r={8} />
        <Glint at={[126, 88]} r={7} />
      </Block>
    </Close>
  ),
  'silver-break/grey-waxy': (id) => (
    <Close id={id}>
      <Block seed="silver-break" layers={[{ of: tone.lavender, deep: 62 }]} edge={54} rough={2}>
        <path d="M50 80Q80 74 107 80T164 78V90Q130 94 107 90T50 92Z" fill={tone.silver} />
        <Strokes
          d="M64 66Q76 60 88 64M118 68Q130 62 142 66M96 102Q106 98 118 101"
          of={tone.gloss}
          width={2.6}
        />
      </Block>
    </Close>
  ),
  'silver-break/bright-smooth': (id) => (
    <Close id={id}>
      <Block seed="silver-break" metal={tone.silver} edge={54} rough={0.5}>
        <path d="M46 56Q107 54 168 56V112H46Z" fill={tone.silver} stroke="none" />
        <Strokes
          d="M50 66Q107 62 164 66M50 76Q107 72 164 76M50 88Q107 84 164 88M50 100Q107 96 164 100"
          of={tone.gloss}
          width={2.4}
        />
      </Block>
    </Close>
  ),
  'silver-look/thick-and-waxy': (id) => (
    <Close id={id}>
      <Block seed="horn" layers={[{ of: tone.lavender, deep: 16, rough: 2 }]} metal={tone.silver} rough={1.6}>
        <Wax
          of={tone.lavender}
          d="M60 66C56 50 72 42 84 47C96 36 122 38 128 48C146 48 154 62 142 69C126 80 72 80 60 66Z"
          gloss="M70 58Q78 50 88 53M104 48Q114 44 122 50"
        />
        <Strokes d="M72 68Q96 74 118 68T144 62" of={tone.soft} width={1.8} />
        <Arrow at={[108, 90]} from={[140, 102]} />
      </Block>
    </Close>
  ),
  'silver-look/thin-film': (id) => (
    <Close id={id}>
      <Block
        seed="thin-grey"
        layers={[{ of: tone.lavender, deep: 2, rough: 0.2 }]}
        metal={tone.silver}
        surface={tone.silver}
        rough={0.3}
      >
        <path
          d={blot('thin-grey', [106, 58], 48, 20, 0.15)}
          fill={tone.lavender}
          stroke="none"
          opacity="0.7"
        />
        <Strokes d="M92 36L84 80M122 36L132 80" />
        <Shine
          at={[
            [66, 56],
            [102, 54],
            [106, 70],
            [140, 60],
          ]}
        />
      </Block>
    </Close>
  ),
  'silver-look/clear-and-greasy': (id) => (
    <Close id={id}>
      <Block seed="lacquer" metal={tone.silver} rough={0.3}>
        <Strokes d="M92 36L84 80M122 36L132 80" />
        <path
          d="M60 36Q64 60 70 74Q76 78 78 70L80 36ZM128 36Q134 52 142 62Q150 66 150 56L148 36Z"
          fill={tone.bone}
          fillOpacity="0.8"
        />
        <Strokes d="M68 42L73 68M136 40L144 56" of={tone.gloss} width={2.4} />
        <Arrow at={[74, 75]} from={[96, 92]} />
      </Block>
    </Close>
  ),
  'silver-look/hard-and-smooth': (id) => (
    <Close id={id}>
      <Block
        seed="hard-grey"
        layers={[{ of: tone.lead, deep: 5, rough: 0.3 }]}
        metal={tone.silver}
        rough={0.3}
      >
        <Strokes d="M92 36L84 80M98 36L91 80M122 36L132 80M116 36L125 80" width={1.5} />
        <Strokes d="M58 56H76M56 68H72M140 54H154M142 68H154" of={tone.gloss} width={1.8} />
      </Block>
    </Close>
  ),
}
