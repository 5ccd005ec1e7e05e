import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, shard } from '../kit/lines.ts'
import { Flat, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** One hollow at the cut: half of it has gone with the cut, so that rim and floor show. */
function Dent({ cut, children }: { readonly cut: string; readonly children?: ReactNode }) {
  return (
    <Block seed="dent" metal={tone.bronze} rough={0.3}>
      <Flat d={cut} of={tone.air} />
      {children}
    </Block>
  )
}

/** A plate with one hole in it; the dark is what lies behind. */
function Hole({ d, children }: { readonly d: string; readonly children?: ReactNode }) {
  return (
    <>
      <Flat d={d} of={tone.black} />
      {children}
    </>
  )
}

const scratches = (word: string, count: number, long: number, drop: number): string =>
  strewn(word, count, [52, 18, 80, 84], 5)
    .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l${long}-${drop}`)
    .join('')

/** Dents, holes, relief and the marks of tools. */
export const dentsAndRelief: Drawings = {
  'dots-rim/pushed-up-rim': (id) => (
    <Close id={id}>
      <Dent cut="M95 80C97 102 117 102 119 80Z">
        <path d="M82 80C84 62 130 62 132 80Z" fill={tone.bronze} />
        <path d="M95 80C96 70 118 70 119 80C117 102 97 102 95 80Z" fill={tone.rustDeep} />
        <Shadow d="M95 80C96 70 118 70 119 80Q107 74 95 80Z" />
        <Flat d="M82 80Q88 70 95 80ZM119 80Q126 70 132 80Z" of={tone.gold} />
        <Strokes d="M86 72Q94 66 107 66T128 72M103 94Q107 97 112 94" of={tone.gloss} width={2} />
        <Arrow at={[127, 74]} from={[146, 48]} />
      </Dent>
    </Close>
  ),
  'dots-rim/turned-floor': (id) => (
    <Close id={id} ground={tone.bronze}>
      <circle cx="107" cy="60" r="36" fill={tone.rustDeep} />
      <circle cx="107" cy="60" r="28" fill={tone.bronze} />
      <circle cx="107" cy="60" r="17" fill={tone.rustDeep} />
      <circle cx="107" cy="60" r="11" fill={tone.bronze} />
      <circle cx="107" cy="60" r="3" fill={tone.black} />
      <Strokes d="M80 78A32 32 0 0 0 134 78M97 72A14 14 0 0 0 118 72" of={tone.gloss} width={1.8} />
      <Arrow at={[110, 62]} from={[136, 84]} />
    </Close>
  ),
  'dots-rim/soft-hollow': (id) => (
    <Close id={id}>
      <Dent cut="M74 80C92 82 96 94 107 94S122 82 140 80Z">
        <path d="M74 80Q84 60 107 60T140 80C122 82 118 94 107 94S92 82 74 80Z" fill={tone.rust} />
        <Shadow d="M74 80Q84 60 107 60T140 80Q126 69 107 69T74 80Z" />
        <Strokes d="M98 88Q107 94 117 88" of={tone.gloss} width={2} />
      </Dent>
    </Close>
  ),
  'dots-rim/round-bubble': (id) => (
    <Close id={id}>
      <Dent cut="M98 80C80 84 82 108 107 108S134 84 116 80Z">
        <ellipse cx="107" cy="76" rx="9" ry="4" fill={tone.black} />
        <path d="M98 80C80 84 82 108 107 108S134 84 116 80Z" fill={tone.rustDeep} />
        <Strokes d="M92 98Q96 104 106 104" of={tone.gloss} width={2} />
        <ellipse cx="74" cy="58" rx="6" ry="3" fill={tone.black} />
        <ellipse cx="138" cy="52" rx="4" ry="2" fill={tone.black} />
        <Arrow at={[123, 92]} from={[148, 100]} />
      </Dent>
    </Close>
  ),
  'dots-rim/ragged-pit': (id) => (
    <Close id={id}>
      <Dent cut="M84 80L90 88L86 94L98 98L102 106L112 100L122 102L124 92L134 86L130 80Z">
        <path d="M84 80L80 72L92 66L98 58L110 62L122 58L128 68L138 74L130 80Z" fill={tone.rustDeep} />
        <path d="M84 80L90 88L86 94L98 98L102 106L112 100L122 102L124 92L134 86L130 80Z" fill={tone.green} />
        <Stipple seed="pit-crust" box={[92, 82, 32, 16]} count={14} size={1.6} />
      </Dent>
    </Close>
  ),
  'openwork-edge/made-edge': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Hole d="M107 22L142 60L107 98L72 60Z">
        <path
          d="M107 14L149 60L107 106L65 60ZM107 24L74 60L107 96L140 60Z"
          fill={tone.gold}
          fillRule="evenodd"
        />
        <Strokes d="M107 14V24M149 60H140M107 106V96M65 60H74" />
        <Arrow at={[92, 36]} from={[66, 22]} />
      </Hole>
    </Close>
  ),
  'openwork-edge/rounded-lip': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Hole d={blot('misrun', [107, 60], 32, 26, 0.22, 8)}>
        <path d={blot('misrun', [107, 60], 36, 30, 0.22, 8)} strokeWidth="1" />
        <Strokes d="M78 44Q90 32 106 31M72 66Q72 54 78 46" of={tone.gloss} width={3.4} />
      </Hole>
    </Close>
  ),
  'openwork-edge/eaten-thin': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d={shard('eaten', [107, 60], 42, 36, 0.2, 16)} fill={tone.green} />
      <Stipple seed="eaten-crust" box={[68, 28, 78, 64]} count={50} size={1.6} />
      <Hole d={shard('eaten-hole', [107, 60], 28, 22, 0.42, 20)} />
      <Flat d="M124 40l4 3-3 4-4-3zM86 74l4 2-2 4-4-2zM132 66l3 3-3 3-3-3z" of={tone.rustDeep} />
    </Close>
  ),
  'openwork-edge/torn-or-burred': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Hole d="M76 50L98 40L108 46L124 34L140 54L130 64L142 78L118 84L104 78L90 90L74 70Z">
        <Flat
          d="M76 50L98 40L88 30L70 38ZM124 34L140 54L152 42L136 24ZM142 78L118 84L128 98L150 92ZM90 90L74 70L62 82L78 100Z"
          of={tone.gold}
        />
        <Shadow d="M98 40L108 46L124 34L118 30L108 38L100 34Z" />
        <Arrow at={[140, 40]} from={[150, 62]} />
      </Hole>
    </Close>
  ),
  'relief-form/soft-edged': (id) => (
    <Close id={id} ground={tone.leather}>
      <path
        d="M107 16Q113 16 118 21L146 52Q152 60 146 68L118 99Q107 108 96 99L68 68Q62 60 68 52L96 21Q101 16 107 16Z"
        fill={tone.bronze}
      />
      <path
        d="M107 17Q113 17 118 22L145 52Q149 57 149 60Q124 63 109 56Q103 40 107 17Z"
        fill={tone.gold}
        stroke="none"
      />
      <path
        d="M149 60Q149 63 145 68L118 98Q112 103 107 103Q104 78 110 64Q128 58 149 60Z"
        fill={tone.rustDeep}
        stroke="none"
      />
      <path
        d="M107 103Q102 103 96 98L69 68Q65 63 65 60Q88 58 104 64Q110 78 107 103Z"
        fill={tone.rust}
        stroke="none"
      />
      <Strokes d="M80 50Q88 36 100 30" of={tone.gloss} width={3.6} />
    </Close>
  ),
  'relief-form/crisp-with-tool-lines': (id) => (
    <Close id={id} ground={tone.leather}>
      <path d="M107 14L153 60L107 60Z" fill={tone.gold} />
      <path d="M153 60L107 106V60Z" fill={tone.rustDeep} />
      <path d="M107 106L61 60H107Z" fill={tone.rust} />
      <path d="M61 60L107 14V60Z" fill={tone.bronze} />
      <path
        d="M112 26l34 34M112 33l27 27M112 40l20 20M102 26L68 60M102 33L75 60M102 40L82 60M102 94L68 64M102 86L80 64M112 94l32-30M112 86l22-22"
        strokeWidth="0.8"
      />
    </Close>
  ),
  'relief-form/swelling': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Shadow d={blot('swell', [112, 66], 38, 32, 0.06)} />
      <path d={blot('swell', [107, 60], 38, 32, 0.06)} fill={tone.bronze} stroke={tone.rustDeep} />
      <path d={blot('swell', [103, 55], 24, 19, 0.06)} fill={tone.gold} stroke="none" opacity="0.6" />
      <Strokes d="M84 52Q90 40 104 38" of={tone.gloss} width={3.4} />
    </Close>
  ),
  'relief-form/shapeless-lumps': (id) => (
    <Close id={id} ground={tone.bronze}>
      {[
        [78, 38, 16],
        [128, 34, 12],
        [98, 70, 20],
        [138, 74, 14],
        [70, 92, 11],
      ].map(([x = 0, y = 0, r = 1]) => (
        <g key={x}>
          <Shadow d={blot(`lump-${x}`, [x + 4, y + 4], r, r * 0.8, 0.3, 9)} />
          <Flat d={blot(`lump-${x}`, [x, y], r, r * 0.8, 0.3, 9)} of={tone.rust} />
        </g>
      ))}
    </Close>
  ),
  'toolmark-kind/facets-or-dents': (id) => (
    <Close id={id} ground={tone.bronze}>
      {[
        [76, 36],
        [108, 32],
        [138, 42],
        [70, 66],
        [102, 62],
        [134, 72],
        [86, 94],
        [120, 98],
      ].map(([x = 0, y = 0], index) => (
        <path
          key={x}
          d={`M${x - 16} ${y}L${x - 6} ${y - 14}L${x + 10} ${y - 13}L${x + 16} ${y + 2}L${x + 5} ${y + 14}L${x - 10} ${y + 12}Z`}
          fill={[tone.gold, tone.bronze, tone.rust][index % 3]}
        />
      ))}
      <Shine
        at={[
          [72, 38],
          [98, 66],
        ]}
      />
    </Close>
  ),
  'toolmark-kind/rounded-polish': (id) => (
    <Close id={id}>
      <path d="M50 54Q96 50 134 66Q146 72 146 80Q144 90 130 92Q90 98 50 98Z" fill={tone.iron} />
      <Strokes d="M110 62l12 28M118 64l11 26M126 67l9 22M133 70l7 16" />
      <Strokes d="M58 62Q96 58 126 70" of={tone.gloss} width={3} />
      <Arrow at={[146, 78]} from={[140, 46]} />
    </Close>
  ),
  'toolmark-kind/fine-bright-scratches': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d={scratches('fine', 54, 26, 9)} stroke={tone.gloss} strokeWidth="0.9" />
      <path d={scratches('fine-dark', 20, 26, 9)} strokeWidth="0.6" />
    </Close>
  ),
  'toolmark-kind/deep-gouge': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path d="M58 84Q92 66 148 34L152 42Q104 78 66 94Z" fill={tone.rustDeep} />
      <path d="M58 84Q92 66 148 34L144 26Q90 56 54 78Z" fill={tone.gold} />
      <Strokes d="M70 84Q106 68 144 42" of={tone.gloss} width={1.6} />
      <Arrow at={[108, 54]} from={[92, 26]} />
    </Close>
  ),
  'toolmark-kind/soft-and-fluid': (id) => (
    <Close id={id} ground={tone.bronze}>
      <path
        d="M52 44Q76 30 96 46T150 40M50 62Q76 48 98 64T156 58M54 80Q78 66 100 82T152 76"
        stroke={tone.rustDeep}
        strokeWidth="6"
        strokeLinecap="round"
      />
      <path
        d="M52 41Q76 27 96 43T150 37M50 59Q76 45 98 61T156 55M54 77Q78 63 100 79T152 73"
        stroke={tone.gloss}
        strokeWidth="1.6"
        strokeLinecap="round"
      />
    </Close>
  ),
}
