import type { ReactNode } from 'react'
import { Block, type Layer } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { shard } from '../kit/lines.ts'
import { Flat, Glint, Mound, Powder, Shine, Stipple, Strokes, Wax } from '../kit/marks.tsx'
import { Rainbow } from '../kit/rainbow.tsx'
import { tone } from '../kit/tones.ts'
import { Green } from './green-ground.tsx'

/** A crust chipped away on the left: the layers below it, and in the cut. */
function Chipped({
  cut,
  floor,
  children,
}: {
  readonly cut: readonly Layer[]
  readonly floor: string
  readonly children?: ReactNode
}) {
  return (
    <Block seed="chipped" layers={cut} surface={floor} metal={tone.bronze} rough={0.6}>
      {children}
      <Flat d="M160 28L118 32L112 41L116 50L105 58L110 66L100 72L101 80H160Z" of={tone.green} />
      <Flat d="M160 76L101 80L100 72L96 72L98 85L160 85Z" of={tone.greenDeep} />
    </Block>
  )
}

const tufts = strewn('fluff', 9, [72, 50, 70, 30], 18)
  .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l-5-6m5 6l-1-9m1 9l4-8`)
  .join('')

/** What a chip in the green shows, where wax lies, what blue looks like. */
export const greenLayers: Drawings = {
  'chip-below/red-then-metal': (id) => (
    <Close id={id}>
      <Chipped cut={[{ of: tone.red, deep: 9 }]} floor={tone.red}>
        <Strokes d="M62 46h12M66 56h14M60 66h12M78 74h12M82 48h12M88 62h9" />
        <path d="M56 80L62 66L76 62L86 70L82 80Z" fill={tone.bronze} />
      </Chipped>
    </Close>
  ),
  'chip-below/metal-at-once': (id) => (
    <Close id={id}>
      <Chipped cut={[]} floor={tone.bronze}>
        <Shine
          at={[
            [66, 56],
            [80, 66],
            [90, 50],
          ]}
        />
      </Chipped>
    </Close>
  ),
  'chip-below/waxy-grey': (id) => (
    <Close id={id}>
      <Chipped cut={[{ of: tone.wax, deep: 13, rough: 3 }]} floor={tone.wax}>
        <Strokes d="M62 52Q70 44 80 48M76 66Q86 58 96 62M60 74Q64 68 70 70" of={tone.gloss} width={2.8} />
        <Strokes d="M66 58Q76 54 86 56M80 74Q90 68 98 70" of={tone.soft} width={1.4} />
      </Chipped>
    </Close>
  ),
  'chip-below/black-layer': (id) => (
    <Close id={id}>
      <Chipped cut={[{ of: tone.black, deep: 9 }]} floor={tone.black}>
        <Stipple seed="chip-black" box={[58, 40, 44, 38]} count={30} of={tone.soft} size={1.6} />
      </Chipped>
    </Close>
  ),
  'chip-below/jumbled-crust': (id) => (
    <Close id={id}>
      <Chipped cut={[{ of: tone.greenDeep, deep: 26, rough: 4 }]} floor={tone.greenDeep}>
        {strewn('jumble', 9, [60, 44, 44, 60], 15).map(([x, y], index) => (
          <Flat
            key={x}
            d={shard(`jumble-${index}`, [x, y], 6, 5, 0.35, 6)}
            of={[tone.red, tone.greenPale, tone.soil, tone.black][index % 4] ?? tone.red}
          />
        ))}
      </Chipped>
    </Close>
  ),
  'blue-look/glittering-grains': (id) => (
    <Close id={id}>
      <Green>
        {strewn('azure', 9, [70, 50, 76, 28], 18).map(([x, y]) => (
          <Flat key={x} d={`M${Math.round(x)} ${Math.round(y)}l-2-9 5-5 6 4-2 11-4 3z`} of={tone.blue} />
        ))}
        <Glint at={[96, 48]} r={8} />
        <Glint at={[130, 62]} r={7} />
      </Green>
    </Close>
  ),
  'blue-look/coloured-film': (id) => (
    <Close id={id}>
      <Block seed="blue-film" metal={tone.black} surface={tone.black} rough={0.3}>
        <Rainbow />
        <path d="M130 24H164V36H130Z" fill={tone.air} stroke="none" />
        <Flat d="M164 36H138L146 50L134 62L142 80H164Z" of={tone.black} />
        <Shine
          at={[
            [74, 58],
            [128, 54],
          ]}
        />
      </Block>
    </Close>
  ),
  'blue-look/earthy-spots': (id) => (
    <Close id={id}>
      <Block seed="earth-blue" layers={[{ of: tone.soil, deep: 12, rough: 2 }]} metal={tone.iron} rough={2}>
        <Powder seed="earth-a" at={[88, 54]} across={18} up={9} count={44} of={tone.blue} size={1.8} />
        <Powder seed="earth-b" at={[130, 66]} across={16} up={8} count={36} of={tone.blue} size={1.8} />
      </Block>
    </Close>
  ),
  'blue-look/glassy': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M72 40H142L150 76H64Z" of={tone.blue} />
        <path d="M122 76Q116 60 134 54L145 56L150 76Z" fill={tone.bluePale} />
        <Strokes d="M130 76Q126 64 138 60" />
        <Strokes d="M76 58Q82 48 96 46M74 68Q76 64 80 62" of={tone.gloss} width={3} />
      </Green>
    </Close>
  ),
  'blue-look/pale-fluff': (id) => (
    <Close id={id}>
      <Green>
        <path d={tufts} strokeWidth="3.2" strokeLinecap="round" />
        <path d={tufts} stroke={tone.bluePale} strokeWidth="1.7" strokeLinecap="round" />
        <Powder seed="fluff" at={[104, 60]} across={34} up={14} count={44} of={tone.bluePale} size={2.4} />
      </Green>
    </Close>
  ),
  'waxy-place/in-pits-or-under-red': (id) => (
    <Close id={id}>
      <Block
        seed="under-red"
        layers={[
          { of: tone.red, deep: 5 },
          { of: tone.wax, deep: 12, rough: 4 },
        ]}
        metal={tone.bronze}
      >
        <Strokes d="M60 50h10M64 70h9M140 50h9M138 72h10" />
        <Wax
          of={tone.wax}
          d="M76 62C74 50 92 46 104 50C120 44 138 52 136 62C132 74 84 76 76 62Z"
          gloss="M84 58Q94 51 104 55"
        />
        <Arrow at={[106, 91]} from={[140, 100]} />
      </Block>
    </Close>
  ),
  'waxy-place/coat-over-all': (id) => (
    <Close id={id}>
      <Block
        seed="coated"
        layers={[
          { of: tone.gloss, deep: 5, rough: 0.4 },
          { of: tone.green, deep: 9 },
        ]}
        surface={tone.green}
        metal={tone.bronze}
        rough={0.4}
      >
        <Mound at={[80, 54]} r={8} of={tone.greenDeep} />
        <Mound at={[134, 60]} r={9} of={tone.greenDeep} />
        <path d="M50 36H164V80H50Z" fill={tone.gloss} opacity="0.35" stroke="none" />
        <Strokes
          d="M60 48Q90 40 130 44M64 70Q96 62 140 72M100 56Q112 52 122 54"
          of={tone.gloss}
          width={2.4}
        />
        <Arrow at={[107, 83]} from={[134, 100]} />
      </Block>
    </Close>
  ),
  'waxy-place/by-leather-or-fat': (id) => (
    <Close id={id}>
      <Green>
        <Wax
          of={tone.turquoise}
          d="M70 66C66 52 80 48 88 54C94 44 110 46 114 56C124 48 140 56 138 66Z"
          gloss="M78 58Q82 54 86 58M98 54Q104 49 109 54"
        />
        <Flat d="M50 64Q100 60 160 64V114H50Z" of={tone.leather} />
        <Strokes d="M56 72h8m6 0h8m6 0h8m6 0h8m6 0h8m6 0h8m6 0h8" of={tone.bone} width={1.8} />
        <Stipple seed="hide-b" box={[60, 80, 92, 28]} count={26} size={1.5} />
      </Green>
    </Close>
  ),
  'waxy-place/skin-that-keeps-detail': (id) => (
    <Close id={id}>
      <Block
        seed="detail-skin"
        layers={[{ of: tone.wax, deep: 4, rough: 0.3 }]}
        metal={tone.bronze}
        rough={0.3}
      >
        <Strokes d="M92 36L80 80M98 36L87 80M120 36L126 80M126 36L133 80M50 46H164" width={1.5} />
        <Strokes d="M60 62H76M102 60H116M140 66H152" of={tone.gloss} width={2} />
      </Block>
    </Close>
  ),
}
