import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { shard } from '../kit/lines.ts'
import { Bead, Flat, Glint, Mound, Powder, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Crusted, Fading, Worn } from './films.tsx'

/** A film with a hole that was there, and what shows in it. */
function Torn({
  under,
  below,
  children,
}: {
  readonly under: string
  readonly below: string
  readonly children?: ReactNode
}) {
  return (
    <Block
      seed="torn-film"
      layers={[
        { of: tone.gold, deep: 3, rough: 0.3 },
        { of: below, deep: 10 },
      ]}
      metal={tone.bronze}
      rough={0.4}
    >
      <Shine
        at={[
          [64, 60],
          [76, 50],
          [140, 50],
          [144, 72],
        ]}
      />
      <Flat d={shard('film-hole', [107, 59], 26, 14, 0.2, 9)} of={under} />
      {children}
    </Block>
  )
}

/** How a golden film ends, and what lies beneath it. */
export const goldFilms: Drawings = {
  'gold-film-edge/pools-or-drips': (id) => (
    <Close id={id}>
      <Crusted>
        <Flat
          d="M50 36H92Q108 38 102 44Q94 48 112 50Q132 52 126 59Q116 64 100 61Q92 64 108 68Q122 74 110 80H50Z"
          of={tone.gold}
        />
        <Flat d="M50 80H110Q112 85 104 85H50Z" of={tone.gold} />
        <Bead at={[138, 56]} r={5} of={tone.gold} />
        <Bead at={[124, 74]} r={4} of={tone.gold} />
        <Shine
          at={[
            [62, 52],
            [78, 72],
          ]}
        />
        <Arrow at={[127, 53]} from={[142, 28]} />
      </Crusted>
    </Close>
  ),
  'gold-film-edge/straight-or-lifting': (id) => (
    <Close id={id}>
      <Crusted>
        <Flat d="M50 36H96L88 80H50Z" of={tone.gold} />
        <Shadow d="M84 40L132 40L130 72L80 72Z" />
        <Flat d="M80 40H130L124 68H74Z" of={tone.gold} />
        <Flat d="M130 40L124 68L114 68Q126 56 120 40Z" of={tone.bone} />
        <Strokes d="M84 48h24M82 56h16" of={tone.soft} />
        <Shine at={[[58, 60]]} />
        <Arrow at={[124, 52]} from={[144, 28]} />
      </Crusted>
    </Close>
  ),
  'gold-film-edge/blisters': (id) => (
    <Close id={id}>
      <Block
        seed="gold-closed"
        layers={[{ of: tone.gold, deep: 3, rough: 0.3 }]}
        metal={tone.bronze}
        rough={0.4}
      >
        <Mound at={[78, 52]} r={9} of={tone.gold} />
        <Mound at={[112, 58]} r={13} of={tone.gold} />
        <Mound at={[142, 50]} r={7} of={tone.gold} />
        <Mound at={[84, 75]} r={8} of={tone.gold} />
        <Mound at={[134, 76]} r={9} of={tone.gold} />
        <Shine
          at={[
            [60, 66],
            [94, 48],
          ]}
        />
        <Arrow at={[110, 47]} from={[106, 22]} />
      </Block>
    </Close>
  ),
  'gold-film-edge/worn-on-high-places': (id) => (
    <Close id={id}>
      <Worn of={tone.gold} />
    </Close>
  ),
  'gold-film-edge/flakes-with-black': (id) => (
    <Close id={id}>
      <Block
        seed="flaky-gold"
        layers={[{ of: tone.black, deep: 11, rough: 2 }]}
        metal={tone.bronze}
        rough={1}
      >
        <Flat d="M50 36H84L76 52L86 64L74 80H50Z" of={tone.gold} />
        <Flat d="M92 58Q100 40 120 38L132 46Q114 48 106 64Z" of={tone.gold} />
        <Flat d="M92 58L106 64L104 70L90 63Z" of={tone.black} />
        <path d="M120 76Q124 62 142 58L150 66Q136 68 132 80Z" fill={tone.black} stroke={tone.gloss} />
        <Stipple seed="black-on-back" box={[126, 64, 18, 10]} count={7} of={tone.soft} size={1.6} />
        <Shine
          at={[
            [60, 56],
            [64, 74],
            [110, 52],
          ]}
        />
        <Arrow at={[134, 68]} from={[144, 34]} />
      </Block>
    </Close>
  ),
  'gold-film-edge/no-edge': (id) => (
    <Close id={id}>
      <Fading of={tone.gold} />
    </Close>
  ),
  'gold-film-beneath/black': (id) => (
    <Close id={id}>
      <Torn under={tone.black} below={tone.black}>
        <Powder
          seed="black-under"
          at={[107, 59]}
          across={26}
          up={14}
          count={34}
          of={tone.ironDeep}
          size={1.6}
        />
      </Torn>
    </Close>
  ),
  'gold-film-beneath/green': (id) => (
    <Close id={id}>
      <Torn under={tone.green} below={tone.green}>
        <Mound at={[107, 64]} r={9} up={12} of={tone.greenDeep} />
        <Mound at={[78, 74]} r={6} up={9} of={tone.greenDeep} />
        <Mound at={[140, 60]} r={5} up={8} of={tone.greenDeep} />
        <Mound at={[70, 48]} r={5} up={7} of={tone.greenDeep} />
      </Torn>
    </Close>
  ),
  'gold-film-beneath/red': (id) => (
    <Close id={id}>
      <Torn under={tone.red} below={tone.red}>
        <Strokes d="M92 54h28M86 60h40M90 66h32" />
      </Torn>
    </Close>
  ),
  'gold-film-beneath/same-yellow': (id) => (
    <Close id={id}>
      <Block seed="yellow-through" metal={tone.gold} rough={0.4}>
        <Shine
          at={[
            [64, 60],
            [76, 50],
            [140, 50],
            [144, 72],
          ]}
        />
        <Strokes d="M84 70L128 46M88 73L132 49" width={1.6} />
        <Strokes d="M86 72L130 48" of={tone.gloss} width={1.4} />
        <Arrow at={[112, 59]} from={[130, 78]} />
      </Block>
    </Close>
  ),
  'gold-film-beneath/white-or-grey': (id) => (
    <Close id={id}>
      <Torn under={tone.silver} below={tone.silver}>
        <Strokes d="M92 66l12-14M100 68l14-18M110 68l12-14" />
        <Glint at={[118, 54]} r={7} />
      </Torn>
    </Close>
  ),
}
