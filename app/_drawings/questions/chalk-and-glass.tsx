import type { ReactNode } from 'react'
import { Block, type Layer } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Bead, Flat, Grains, Powder, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** A chalky surface with a loss in it: what the loss and the cut show differs. */
function Chalky({
  below,
  floor,
  metal = tone.bronze,
  children,
}: {
  readonly below: readonly Layer[]
  readonly floor: string
  readonly metal?: string
  readonly children?: ReactNode
}) {
  return (
    <Block
      seed="chalky"
      layers={[{ of: tone.white, deep: 6, rough: 0.6 }, ...below]}
      metal={metal}
      edge={72}
      rough={0.6}
    >
      <Stipple seed="chalk" box={[58, 40, 98, 30]} count={40} size={1.6} />
      <Flat d={blot('chalk-loss', [106, 55], 32, 13, 0.14, 12)} of={floor} />
      {children}
    </Block>
  )
}

function Glass({ children }: { readonly children: ReactNode }) {
  return (
    <Block
      seed="glass-feel"
      layers={[{ of: tone.glass, deep: 22, rough: 0.3 }]}
      metal={tone.bronze}
      rough={0.3}
    >
      {children}
    </Block>
  )
}

const sweat = 'M66 40Q72 58 66 84M92 38Q98 50 92 62M140 40Q146 62 140 88'

/** What lies beneath a chalky surface, and what glass is like to look at. */
export const chalkAndGlass: Drawings = {
  'chalk-below/glass-or-colour': (id) => (
    <Close id={id}>
      <Chalky below={[{ of: tone.glass, deep: 22, rough: 0.4 }]} floor={tone.glass}>
        <Shine
          at={[
            [88, 62],
            [100, 56],
            [116, 62],
            [70, 94],
            [104, 94],
            [136, 94],
          ]}
        />
      </Chalky>
    </Close>
  ),
  'chalk-below/leaves': (id) => (
    <Close id={id}>
      <Chalky below={[{ of: tone.silver, deep: 22, rough: 0.4 }]} floor={tone.silver}>
        <Strokes d={leaves} width={1.4} />
        <path
          d="M80 60Q96 42 124 48L132 56Q108 52 92 66ZM86 66Q104 52 130 58L126 64Q108 60 96 68Z"
          fill={tone.silver}
        />
        <Strokes d="M86 57Q102 46 122 50M94 63Q108 56 124 60" of={tone.purple} width={1.4} />
        <Arrow at={[112, 84]} from={[142, 100]} />
      </Chalky>
    </Close>
  ),
  'chalk-below/same-to-the-bottom': (id) => (
    <Close id={id}>
      <Chalky below={[]} floor={tone.white}>
        <path d="M50 71H164V98Q107 102 50 97Z" fill={tone.white} />
        <Stipple seed="chalk-through" box={[56, 74, 102, 22]} count={56} size={1.6} />
        <Stipple seed="chalk-floor" box={[84, 48, 46, 14]} count={16} size={1.6} />
      </Chalky>
    </Close>
  ),
  'chalk-below/grain-or-lines': (id) => (
    <Close id={id}>
      <Chalky below={[{ of: tone.bone, deep: 24, rough: 0.6 }]} floor={tone.bone}>
        <Strokes
          d="M82 50Q106 44 132 52M78 56Q106 50 136 58M82 62Q106 56 130 64M52 82Q106 76 162 84M52 88Q106 82 162 90M52 94Q106 88 162 96"
          of={tone.rustDeep}
          width={1.4}
        />
        <Grains
          points={[
            ...strewn('pores', 5, [88, 50, 38, 11], 12),
            ...strewn('pores-cut', 8, [62, 80, 90, 14], 14),
          ]}
          of={tone.rustDeep}
          size={1.6}
        />
      </Chalky>
    </Close>
  ),
  'chalk-below/metal-or-grey': (id) => (
    <Close id={id}>
      <Chalky below={[]} floor={tone.lead} metal={tone.lead}>
        <Strokes d="M82 60l10-12M92 64l13-16M104 66l14-18M116 65l12-15" width={0.9} />
        <Strokes d="M96 50Q106 46 116 49" of={tone.gloss} width={2} />
        <Arrow at={[106, 82]} from={[138, 100]} />
      </Chalky>
    </Close>
  ),
  'glass-feel/wet-or-slippery': (id) => (
    <Close id={id}>
      <Glass>
        <path d={sweat} stroke={tone.gloss} strokeWidth="4" strokeLinecap="round" />
        <Bead at={[66, 88]} r={6} of={tone.bluePale} />
        <Bead at={[92, 66]} r={7} of={tone.bluePale} />
        <Bead at={[140, 92]} r={6} of={tone.bluePale} />
        <Bead at={[116, 52]} r={6} of={tone.bluePale} />
        <Bead at={[114, 80]} r={5} of={tone.bluePale} />
      </Glass>
    </Close>
  ),
  'glass-feel/fine-white-bloom': (id) => (
    <Close id={id}>
      <Glass>
        <Powder seed="bloom-spot" at={[82, 52]} across={17} up={9} count={40} of={tone.white} size={2} />
        <Grains points={bloomLine} of={tone.white} size={2.2} />
        <Powder seed="bloom-spot-b" at={[84, 72]} across={13} up={5} count={26} of={tone.white} size={2} />
      </Glass>
    </Close>
  ),
  'glass-feel/dry-and-firm': (id) => (
    <Close id={id}>
      <Glass>
        <Strokes d="M64 48Q88 42 112 46" of={tone.gloss} width={3} />
        <Shine
          at={[
            [78, 70],
            [126, 66],
            [138, 54],
          ]}
        />
      </Glass>
    </Close>
  ),
}

const bloomLine = Array.from({ length: 13 }, (_, at) => [108 + at * 3.4, 44 + at * 2.6 + (at % 3)] as const)
/** The edges of leaves that lie on one another. */
const leaves =
  'M50 82q30-4 56 0t60 0M50 86q30-4 56 0t60 0M50 90q30-4 56 0t60 0M50 94q30-4 56 0t60 0M50 98q30-4 56 0t60 0'
