import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, shard } from '../kit/lines.ts'
import { Bead, Flat, Grains, Powder, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

function Green({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="black-on-green" layers={[{ of: tone.green, deep: 10 }]} metal={tone.bronze} rough={0.8}>
      {children}
    </Block>
  )
}

/** Silver with a raised bar, as the coin shows it near by. */
function Silver({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="tarnished" metal={tone.silver} rough={0.3}>
      {children}
    </Block>
  )
}

/** Where a black layer lies and how it ends, what fire leaves, how tarnish looks. */
export const blackLayers: Drawings = {
  'black-layer-place/under-green': (id) => (
    <Close id={id}>
      <Block
        seed="black-under"
        layers={[{ of: tone.black, deep: 9 }]}
        surface={tone.black}
        metal={tone.bronze}
        rough={0.8}
      >
        <Stipple seed="under-dots" box={[58, 40, 44, 38]} count={26} of={tone.soft} size={1.6} />
        <Flat d="M160 28L118 32L112 41L116 50L105 58L110 66L100 72L101 80H160Z" of={tone.green} />
        <Flat d="M160 76L101 80L100 72L96 72L98 85L160 85Z" of={tone.greenDeep} />
        <Arrow at={[88, 84]} from={[72, 104]} />
      </Block>
    </Close>
  ),
  'black-layer-place/over-green': (id) => (
    <Close id={id}>
      <Block seed="black-over" layers={[{ of: tone.green, deep: 10 }]} metal={tone.bronze} rough={0.8}>
        <Flat d="M160 28L118 32L112 41L116 50L105 58L110 66L100 72L101 80H160Z" of={tone.black} />
        <Flat d="M160 76L101 80L100 72L96 72L98 85L160 85Z" of={tone.black} />
        <Stipple seed="over-dots" box={[118, 36, 36, 42]} count={24} of={tone.soft} size={1.6} />
        <Arrow at={[108, 62]} from={[82, 50]} />
      </Block>
    </Close>
  ),
  'black-layer-place/inside-vessel': () => (
    <>
      <path d="M20 34Q22 100 80 104Q138 100 140 34Z" fill={tone.green} stroke={tone.ink} strokeWidth="1.4" />
      <Stipple seed="pot-outside" box={[36, 60, 88, 36]} count={30} />
      <path
        d="M20 34A60 15 0 1 1 140 34A60 15 0 1 1 20 34Z"
        fill={tone.green}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <path d="M26 34A54 11 0 1 1 134 34A54 11 0 1 1 26 34Z" fill={tone.black} />
      <Stipple seed="pot-inside" box={[44, 28, 72, 12]} count={20} of={tone.soft} size={1.6} />
      <Arrow at={[80, 38]} from={[80, 8]} />
    </>
  ),
  'black-layer-place/flat-and-hollow-alike': (id) => (
    <Close id={id}>
      <Block
        seed="black-all"
        layers={[{ of: tone.black, deep: 4, rough: 0.4 }]}
        metal={tone.bronze}
        rough={0.4}
      >
        <path d="M92 36L80 80M98 36L87 80M120 36L126 80M126 36L133 80" stroke={tone.soft} strokeWidth="1.6" />
        <Shine
          at={[
            [62, 60],
            [104, 56],
            [140, 62],
          ]}
        />
      </Block>
    </Close>
  ),
  'black-layer-edge/runs-or-drips': (id) => (
    <Close id={id}>
      <Green>
        <Flat
          d="M50 36H92Q108 38 102 44Q94 48 112 50Q132 52 126 59Q116 64 100 61Q92 64 108 68Q122 74 110 80H50Z"
          of={tone.black}
        />
        <Bead at={[138, 58]} r={4.6} of={tone.black} />
        <Strokes d="M60 48Q76 44 90 46M64 68Q80 64 94 66" of={tone.gloss} width={2} />
        <Arrow at={[127, 54]} from={[142, 28]} />
      </Green>
    </Close>
  ),
  'black-layer-edge/spots-and-branches': (id) => (
    <Close id={id}>
      <Green>
        <Flat d={blot('stone-too', [138, 60], 20, 14, 0.15)} of={tone.soil} />
        <path
          d="M76 72V50M76 64l-9-8M76 60l9-9M67 56l-6-1M85 51l1-7M76 54l-6-7M134 68V52M134 62l-6-6M134 58l7-6M104 56V44M104 52l-5-5M104 50l5-5"
          strokeWidth="2"
          strokeLinecap="round"
        />
        <Grains points={strewn('manganese', 11, [60, 42, 90, 36], 14)} of={tone.black} size={3.4} />
      </Green>
    </Close>
  ),
  'black-layer-edge/flakes-with-edge': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 36H96L88 50L100 60L90 80H50Z" of={tone.black} />
        <Shadow d="M108 48L142 52L146 66L112 66Z" />
        <path d="M104 44L136 40L144 54L112 62Z" fill={tone.black} stroke={tone.gloss} strokeWidth="0.9" />
        <Flat d="M124 74l10-6 10 4-6 7z" of={tone.black} />
        <Shine at={[[64, 60]]} />
      </Green>
    </Close>
  ),
  'black-layer-edge/fades-out': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 36H80V80H50Z" of={tone.black} bare />
        <Stipple seed="black-near" box={[78, 38, 18, 40]} count={34} of={tone.black} size={4} />
        <Stipple seed="black-mid" box={[94, 38, 18, 40]} count={20} of={tone.black} size={3} />
        <Stipple seed="black-far" box={[110, 38, 26, 40]} count={12} of={tone.black} size={2} />
      </Green>
    </Close>
  ),
  'fire-signs/melted': (id) => (
    <Close id={id}>
      <path
        d="M40 36H120Q142 40 138 54Q134 60 126 58Q118 58 118 70Q118 88 110 88T102 70Q100 62 92 64Q84 66 86 78Q86 90 79 90T72 78Q72 66 40 66Z"
        fill={tone.bronze}
      />
      <Strokes d="M56 44Q90 40 122 44M108 74v8M77 74v6" of={tone.gloss} width={2.6} />
      <Bead at={[110, 104]} r={5} of={tone.bronze} />
      {[
        [70, 54, 3],
        [96, 52, 4],
        [122, 52, 2.4],
      ].map(([x, y, r]) => (
        <circle key={x} cx={x} cy={y} r={r} fill={tone.black} />
      ))}
    </Close>
  ),
  'fire-signs/charcoal-or-bone': (id) => (
    <Close id={id}>
      <Green>
        <Flat d={shard('coal', [82, 56], 17, 12, 0.2, 7)} of={tone.black} />
        <Strokes d="M70 52l22 6M70 58l20 5M74 47l18 5" of={tone.soft} />
        <Flat d="M110 48L142 44L150 54L144 70L116 72L108 60Z" of={tone.white} />
        <Strokes d="M118 46L122 60L116 70M134 46L130 58L138 70M122 60L130 58" />
      </Green>
    </Close>
  ),
  'fire-signs/soot-only': (id) => (
    <Close id={id}>
      <Green>
        <Powder seed="soot-only" at={[106, 58]} across={48} up={20} count={110} of={tone.black} size={1.4} />
      </Green>
    </Close>
  ),
  'tarnish-look/thin-with-colours': (id) => (
    <Close id={id}>
      <Silver>
        <path d="M50 36H164V46Q100 58 50 50Z" fill={tone.gold} stroke="none" opacity="0.7" />
        <path d="M50 50Q100 58 164 46V58Q100 70 50 62Z" fill={tone.purple} stroke="none" opacity="0.7" />
        <path d="M50 62Q100 70 164 58V80H50Z" fill={tone.blue} stroke="none" opacity="0.6" />
        <path d="M50 50Q100 58 164 46M50 62Q100 70 164 58" strokeDasharray="3 3" />
        <Strokes d="M92 36L82 80M122 36L132 80" />
      </Silver>
    </Close>
  ),
  'tarnish-look/over-waxy-grey': (id) => (
    <Close id={id}>
      <Block
        seed="over-horn"
        layers={[
          { of: tone.black, deep: 3 },
          { of: tone.lavender, deep: 14, rough: 3 },
        ]}
        metal={tone.silver}
        rough={1.6}
      >
        <Flat d={blot('through-to-wax', [106, 58], 27, 13, 0.2)} of={tone.lavender} />
        <Strokes d="M90 54Q100 48 110 52M104 64Q114 60 122 63" of={tone.gloss} width={2.8} />
        <Arrow at={[112, 90]} from={[144, 98]} />
      </Block>
    </Close>
  ),
  'tarnish-look/thick-and-flaking': (id) => (
    <Close id={id}>
      <Block
        seed="thick-tarnish"
        layers={[{ of: tone.black, deep: 8, rough: 1.4 }]}
        metal={tone.silver}
        rough={1}
      >
        <Flat d={shard('flaked-off', [92, 58], 24, 13, 0.25, 9)} of={tone.silver} />
        <Shadow d="M112 60L146 64L148 74L116 74Z" />
        <path
          d="M110 56Q126 44 144 48L150 60Q132 56 118 68Z"
          fill={tone.black}
          stroke={tone.gloss}
          strokeWidth="0.9"
        />
        <Arrow at={[132, 58]} from={[144, 28]} />
      </Block>
    </Close>
  ),
  'tarnish-look/raised-parts-bright': (id) => (
    <Close id={id}>
      <Silver>
        <Flat d="M50 36H96L84 80H50ZM120 36H164V80H132Z" of={tone.black} bare />
        <Flat d="M94 36H122L134 80H82Z" of={tone.silver} />
        <Shine
          at={[
            [100, 52],
            [104, 70],
          ]}
        />
        <Arrow at={[107, 60]} from={[107, 20]} />
      </Silver>
    </Close>
  ),
}
