import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { cracked } from '../kit/lines.ts'
import { Bead, Flat, Shadow, Strokes } from '../kit/marks.tsx'
import { Rainbow } from '../kit/rainbow.tsx'
import { tone } from '../kit/tones.ts'

function Glass({ children }: { readonly children: ReactNode }) {
  return (
    <Block
      seed="glass-body"
      layers={[{ of: tone.glass, deep: 22, rough: 0.4 }]}
      metal={tone.bronze}
      rough={0.3}
    >
      {children}
    </Block>
  )
}

function Drops({ id, on }: { readonly id: string; readonly on: 'glass' | 'both' }) {
  return (
    <Close id={id}>
      <Glass>
        <Flat d="M112 30H164V114H112Z" of={tone.bronze} />
        <Strokes d="M118 112l20-20M134 112l20-20" width={0.8} />
        <Strokes d="M112 80H160" />
        <Bead at={[74, 52]} r={8} of={tone.bluePale} />
        <Bead at={[98, 62]} r={9} of={tone.bluePale} />
        <Bead at={[76, 73]} r={5} of={tone.bluePale} />
        {on === 'both' && (
          <>
            <Bead at={[130, 52]} r={8} of={tone.bluePale} />
            <Bead at={[142, 70]} r={6} of={tone.bluePale} />
            <Bead at={[124, 73]} r={4} of={tone.bluePale} />
          </>
        )}
      </Glass>
    </Close>
  )
}

/** What happens to the skin of glass. */
export const glassSkins: Drawings = {
  'glass-skin/rainbow-leaves': (id) => (
    <Close id={id}>
      <Glass>
        <Shadow d="M80 72L112 76L136 62L124 54Z" />
        <Flat d="M72 68L84 54Q102 56 124 40L138 50Q116 68 94 66L86 73Z" of={tone.silver} />
        <path d="M84 60Q106 60 128 44M88 64Q108 64 132 47" stroke={tone.purple} strokeWidth="2" />
        <path d="M86 62Q106 62 130 46" stroke={tone.gold} strokeWidth="1.6" />
        <Flat d="M62 50l9-6 8 5-8 6zM140 70l8-3 6 4-9 3zM104 78l9-4 6 4-8 3z" of={tone.silver} />
      </Glass>
    </Close>
  ),
  'glass-skin/net-of-cracks': (id) => (
    <Close id={id}>
      <Glass>
        <Strokes
          d={
            ['a', 'b', 'c', 'd', 'e']
              .map((seed, index) => cracked(`net-${seed}`, [58 + index * 22, 37], [50 + index * 28, 80], 4))
              .join('') +
            ['f', 'g', 'h']
              .map((seed, index) =>
                cracked(`net-${seed}`, [50, 48 + index * 11], [162, 46 + index * 12], 3, 11),
              )
              .join('')
          }
        />
      </Glass>
    </Close>
  ),
  'glass-skin/thin-sheen-no-loss': (id) => (
    <Close id={id}>
      <Glass>
        <Rainbow />
        <Strokes d="M60 48Q86 38 112 44M116 74Q136 72 152 64" of={tone.gloss} width={3} />
      </Glass>
    </Close>
  ),
  'glass-skin/few-deep-cracks': (id) => (
    <Close id={id}>
      <Glass>
        <Strokes
          d={`${cracked('deep-a', [96, 36], [112, 102], 3)}${cracked('deep-b', [136, 36], [150, 98], 3)}`}
          width={2.4}
        />
        <Strokes d="M64 58Q72 48 84 46" of={tone.gloss} width={3} />
      </Glass>
    </Close>
  ),
  'glass-skin/coat-peeling': (id) => (
    <Close id={id}>
      <Glass>
        <Shadow d="M98 46L136 50L138 76L98 78Z" />
        <path d="M50 36H100L94 58L98 80H50Z" fill={tone.gloss} opacity="0.55" />
        <path
          d="M94 58L100 36Q120 26 138 34L130 52Q112 46 104 76L98 80Z"
          fill={tone.gloss}
          fillOpacity="0.85"
        />
        <Strokes d="M60 50H80M58 62H74" of={tone.soft} />
        <Arrow at={[126, 50]} from={[146, 74]} />
      </Glass>
    </Close>
  ),
  'drops-where/glass-only': (id) => <Drops id={id} on="glass" />,
  'drops-where/on-a-coat': (id) => (
    <Close id={id}>
      <Glass>
        <path d="M50 36H132Q120 48 134 58T124 80H50Z" fill={tone.gloss} fillOpacity="0.5" />
        <Strokes d="M56 44H96M54 70H76" of={tone.gloss} width={2.4} />
        <path
          d="M70 54Q78 46 90 50Q98 56 92 64Q90 84 84 84T80 66Q66 64 70 54ZM104 58Q112 52 120 58Q124 66 116 70Q104 70 104 58Z"
          fill={tone.bone}
          fillOpacity="0.85"
        />
        <Strokes d="M76 54Q80 50 86 53M108 60Q111 57 115 59" of={tone.gloss} width={2.6} />
        <Arrow at={[132, 52]} from={[148, 26]} />
      </Glass>
    </Close>
  ),
  'drops-where/glass-and-metal': (id) => <Drops id={id} on="both" />,
}
