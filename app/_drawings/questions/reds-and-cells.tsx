import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, shard } from '../kit/lines.ts'
import { Bead, Flat, Glint, Grains, Powder, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** A red field cut through: what is red, and how deep. */
function RedCut({ fill, children }: { readonly fill: string; readonly children?: ReactNode }) {
  return (
    <>
      <path d="M46 44H76V88H138V44H168V114H46Z" fill={tone.bronze} />
      <Strokes
        d="M54 108l16-16M56 86l16-16M76 110l18-18M100 110l18-18M124 110l18-18M142 92l16-16M142 70l16-16"
        width={0.8}
      />
      <path d="M76 44H138V88H76Z" fill={fill} />
      {children}
    </>
  )
}

const stripes = (of: string) => <Strokes d="M80 54H134M80 62H134M80 70H134M80 78H134" of={of} />

/** Paint, earth and the like lie alike on iron and on lead; the ground tells which. */
function Painted({ ground, of }: { readonly ground: string; readonly of: string }) {
  return (
    <Block seed="painted" metal={ground} rough={0.5}>
      <Flat d="M46 36H140L132 44L142 52L128 60L136 70L118 74Q116 90 110 90T106 78L94 80H46Z" of={of} />
      <Strokes d="M54 44H130M54 51H134M54 58H122M54 65H128M54 72H112" of={tone.line} />
      <Arrow at={[111, 86]} from={[140, 98]} />
    </Block>
  )
}

function Earthy({ ground, seed }: { readonly ground: string; readonly seed: string }) {
  return (
    <Block seed="earthy" metal={ground} rough={0.8}>
      <Flat d={blot(`${seed}-a`, [88, 54], 24, 11, 0.3)} of={tone.soil} />
      <Flat d={blot(`${seed}-b`, [134, 66], 16, 8, 0.3)} of={tone.soil} />
      <Grains points={strewn(`${seed}-grit`, 14, [70, 46, 76, 28], 10)} of={tone.rust} size={2.6} />
      <Stipple seed={`${seed}-dots`} box={[74, 48, 30, 14]} count={12} />
    </Block>
  )
}

/** Reds and yellows, and the forms of cells. */
export const redsAndCells: Drawings = {
  'red-break/red-in-chip': (id) => (
    <Close id={id}>
      <RedCut fill={tone.red}>
        {stripes(tone.line)}
        <path d="M76 44H138V54H122L118 66L108 68L102 56L96 54H76Z" fill={tone.greenDeep} />
        <Arrow at={[110, 62]} from={[112, 22]} />
      </RedCut>
    </Close>
  ),
  'red-break/red-throughout': (id) => (
    <Close id={id}>
      <RedCut fill={tone.red}>
        {stripes(tone.line)}
        <path d="M102 44L108 56L118 58L124 44Z" fill={tone.air} />
      </RedCut>
    </Close>
  ),
  'red-break/red-by-metal': (id) => (
    <Close id={id}>
      <RedCut fill={tone.green}>
        <path d="M76 44H81V83H133V44H138V88H76Z" fill={tone.red} />
        <Stipple seed="green-in-cell" box={[86, 50, 42, 28]} count={24} />
        <Arrow at={[107, 85]} from={[88, 64]} />
      </RedCut>
    </Close>
  ),
  'red-break/deep-clear-red': (id) => (
    <Close id={id}>
      <RedCut fill={tone.red}>
        <path d="M76 44L88 36H126L138 44Z" fill={tone.red} />
        <path d="M80 86H134L120 66H94Z" fill={tone.gold} opacity="0.55" />
        <Strokes d="M88 36L96 52H118L126 36M96 52L80 84M118 52L134 84" />
        <Shine
          at={[
            [90, 62],
            [108, 70],
          ]}
        />
      </RedCut>
    </Close>
  ),
  'cell-shape/even-fields': (id) => (
    <Close id={id}>
      <path d="M46 50H64V78H96V50H118V78H150V50H168V112H46Z" fill={tone.bronze} />
      <Strokes
        d="M54 108l18-18M76 108l18-18M98 108l18-18M120 108l18-18M142 108l16-16M100 74l14-14"
        width={0.8}
      />
      <Arrow at={[80, 77]} from={[80, 30]} />
    </Close>
  ),
  'cell-shape/narrow-undercut-lines': (id) => (
    <Close id={id}>
      <path d="M46 50H76L68 76H90L82 50H128L120 76H142L134 50H168V112H46Z" fill={tone.bronze} />
      <Strokes
        d="M54 108l18-18M76 108l18-18M98 108l18-18M120 108l18-18M142 108l16-16M96 76l16-16"
        width={0.8}
      />
      <Arrow at={[87, 71]} from={[104, 28]} />
    </Close>
  ),
  'cell-shape/thin-strips': (id) => (
    <Close id={id}>
      <path d="M46 84H168V112H46Z" fill={tone.bronze} />
      <path d="M66 44H70V84H66ZM90 44H94V84H90ZM118 44H122V84H118ZM146 44H150V84H146Z" fill={tone.gold} />
      <Strokes d="M54 108l18-18M76 108l18-18M98 108l18-18M120 108l18-18M142 108l16-16" width={0.8} />
      <Arrow at={[92, 43]} from={[104, 20]} />
    </Close>
  ),
  'cell-shape/collar-or-claws': (id) => (
    <Close id={id}>
      <path d="M46 84H168V112H46Z" fill={tone.bronze} />
      <path
        d="M72 84L74 50Q76 42 84 42L82 50L80 84ZM142 84L140 50Q138 42 130 42L132 50L134 84Z"
        fill={tone.gold}
      />
      <Strokes d="M54 108l18-18M76 108l18-18M98 108l18-18M120 108l18-18M142 108l16-16" width={0.8} />
      <Arrow at={[84, 42]} from={[104, 20]} />
    </Close>
  ),
  'cell-shape/chance-holes': (id) => (
    <Close id={id}>
      <path
        d="M46 50H70L74 62L82 58L90 76L96 66L104 70L108 54L122 52L126 60L134 58L140 72L146 66L150 50H168V112H46Z"
        fill={tone.bronze}
      />
      <Flat d={blot('bubble-in-cut', [112, 90], 8, 6, 0.2)} of={tone.air} />
      <Strokes d="M54 108l18-18M76 108l18-18M128 108l18-18M146 104l12-12" width={0.8} />
    </Close>
  ),
  'lead-red-look/yellow-to-orange-glassy': (id) => (
    <Close id={id}>
      <Block seed="litharge" metal={tone.lead} rough={0.5}>
        <Flat
          d="M50 36H96Q116 40 108 48Q100 54 120 58Q134 62 126 68Q112 70 104 66Q106 78 98 80H50Z"
          of={tone.bright}
        />
        <Bead at={[140, 60]} r={6} of={tone.bright} />
        <Strokes d="M60 46Q80 42 96 46M62 66Q78 62 92 64" of={tone.gloss} width={2.8} />
      </Block>
    </Close>
  ),
  'lead-red-look/under-the-white': (id) => (
    <Close id={id}>
      <Block seed="under-white" layers={[{ of: tone.red, deep: 8 }]} metal={tone.lead} rough={0.8}>
        <Strokes d="M60 48h12M66 58h14M60 68h12M80 52h12M84 66h10" />
        <Flat d="M160 28L118 32L112 41L116 50L105 58L110 66L100 72L101 80H160Z" of={tone.white} />
        <Flat d="M160 76L101 80L100 72L96 72L98 85L160 85Z" of={tone.bone} />
        <Arrow at={[90, 60]} from={[78, 22]} />
      </Block>
    </Close>
  ),
  'lead-red-look/brush-marks': (id) => (
    <Close id={id}>
      <Painted ground={tone.lead} of={tone.red} />
    </Close>
  ),
  'lead-red-look/rust-brown': (id) => (
    <Close id={id}>
      <Block seed="rust-spot" metal={tone.lead} rough={0.5}>
        <path d={blot('rust-halo', [104, 60], 34, 16, 0.15)} fill={tone.rust} stroke="none" opacity="0.5" />
        <path d={blot('rust-heart', [104, 60], 20, 9, 0.15)} fill={tone.rust} stroke="none" />
        <Flat d="M96 14H112V56L104 62L96 56Z" of={tone.rustDeep} />
        <Arrow at={[112, 62]} from={[140, 40]} />
      </Block>
    </Close>
  ),
  'lead-red-look/earthy': (id) => (
    <Close id={id}>
      <Earthy ground={tone.lead} seed="lead-earth" />
    </Close>
  ),
  'red-look/even-with-detail': (id) => (
    <Close id={id}>
      <Block seed="even-red" layers={[{ of: tone.purple, deep: 4, rough: 0.3 }]} rough={0.3}>
        <Strokes d="M92 36L80 80M98 36L87 80M120 36L126 80M126 36L133 80" width={1.4} />
        <Strokes d="M60 60H76M102 52H116M140 58H152" of={tone.gloss} width={1.6} />
      </Block>
    </Close>
  ),
  'red-look/brush-marks': (id) => (
    <Close id={id}>
      <Painted ground={tone.iron} of={tone.red} />
    </Close>
  ),
  'red-look/purple-black-film': (id) => (
    <Close id={id}>
      <Block seed="scale-film" layers={[{ of: tone.black, deep: 3, rough: 0.3 }]} rough={0.4}>
        <Flat d={blot('purple-part', [90, 56], 34, 14, 0.15)} of={tone.purple} bare />
        <Shine
          at={[
            [70, 58],
            [94, 60],
            [132, 56],
            [142, 74],
          ]}
        />
        <Flat d={shard('scale-off', [130, 66], 13, 7, 0.25, 8)} of={tone.iron} />
      </Block>
    </Close>
  ),
  'red-look/earthy': (id) => (
    <Close id={id}>
      <Earthy ground={tone.iron} seed="iron-earth" />
    </Close>
  ),
  'red-look/glassy-red-by-green': (id) => (
    <Close id={id}>
      <Block seed="red-by-green" layers={[{ of: tone.rust, deep: 9, rough: 2 }]} rough={1.4}>
        <Flat d={blot('green-near', [82, 56], 26, 13, 0.25)} of={tone.green} />
        <Stipple seed="green-near-dots" box={[66, 50, 28, 12]} count={12} />
        <Flat d="M104 66l4-14 10-4 8 8-2 12-10 4zM128 60l6-9 9 4 1 9-8 4z" of={tone.red} />
        <Glint at={[114, 54]} r={7} />
        <Glint at={[136, 58]} r={5} />
      </Block>
    </Close>
  ),
  'yellow-look/pale-dust': (id) => (
    <Close id={id}>
      <Rusty>
        <Powder seed="pale-dust" at={[106, 58]} across={44} up={20} count={110} of={tone.yellow} size={1.4} />
      </Rusty>
    </Close>
  ),
  'yellow-look/fur-or-crystals': (id) => (
    <Close id={id}>
      <Rusty>
        <path d={needles} strokeWidth="2.8" strokeLinecap="round" />
        <path d={needles} stroke={tone.yellow} strokeWidth="1.5" strokeLinecap="round" />
      </Rusty>
    </Close>
  ),
  'yellow-look/orange-in-cracks': (id) => (
    <Close id={id}>
      <Rusty>
        <Flat d="M88 35L96 36L92 48L100 60L95 70L102 80L98 84L90 72L86 62L90 50L84 42Z" of={tone.rustDeep} />
        <Powder seed="yellow-crack" at={[93, 60]} across={9} up={22} count={44} of={tone.bright} size={2} />
      </Rusty>
    </Close>
  ),
  'yellow-look/earthy': (id) => (
    <Close id={id}>
      <Earthy ground={tone.iron} seed="yellow-earth" />
    </Close>
  ),
}

function Rusty({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="even-crust" layers={[{ of: tone.rust, deep: 11, rough: 2 }]} rough={2}>
      {children}
    </Block>
  )
}
const needles = strewn('yellow-needles', 15, [72, 50, 72, 28], 15)
  .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l-7-7m7 7l-2-11m2 11l3-10m-3 10l7-6`)
  .join('')
