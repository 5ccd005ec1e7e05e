import type { ReactNode } from 'react'
import { Block, type Layer } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Close } from './kit/lens.tsx'
import { blot, cracked, shard } from './kit/lines.ts'
import { Flat, Glint, Grains, Mound, Powder, Shine, Stipple, Strokes, Wax } from './kit/marks.tsx'
import { tone } from './kit/tones.ts'

const layers = [{ of: tone.green, deep: 10 }]

function Green({ children, rough = 1 }: { readonly children: ReactNode; readonly rough?: number }) {
  return (
    <Block seed="green-answers" layers={layers} metal={tone.bronze} rough={rough}>
      {children}
    </Block>
  )
}

/** Powder that lies against something: always the same heap. */
const heap = <Powder seed="beside" at={[100, 62]} across={16} up={11} count={46} of={tone.greenPale} size={2.6} />

/** Two plates that meet, seen from above the lap. */
function Seam({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="seam-answers" metal={tone.bronze} rough={0.3}>
      <Flat d="M50 36H164V58H50Z" of={tone.bronze} />
      <Flat d="M50 58H164V63H50Z" of={tone.rustDeep} />
      {children}
    </Block>
  )
}
const bumps = (list: readonly (readonly [number, number, number])[]) =>
  list.map(([x, y, r]) => <Mound key={`${x}-${y}`} at={[x, y]} r={r} up={r * 1.3} of={tone.greenDeep} />)

/** A crust chipped away on the left: the layers below it, and in the cut. */
function Chipped({ cut, floor, children }: { readonly cut: readonly Layer[]; readonly floor: string; readonly children?: ReactNode }) {
  return (
    <Block seed="chipped" layers={cut} surface={floor} metal={tone.bronze} rough={0.6}>
      {children}
      <Flat d="M160 28L118 32L112 41L116 50L105 58L110 66L100 72L101 80H160Z" of={tone.green} />
      <Flat d="M160 76L101 80L100 72L96 72L98 85L160 85Z" of={tone.greenDeep} />
    </Block>
  )
}

export const greenAnswers: Drawings = {
  'green-form/powder-in-pits': (id) => (
    <Close id={id}>
      <Green>
        <ellipse cx="98" cy="58" rx="24" ry="10" fill={tone.greenDeep} />
        <ellipse cx="138" cy="70" rx="11" ry="5" fill={tone.greenDeep} />
        <Powder seed="pits-a" at={[98, 55]} across={25} up={12} count={62} of={tone.greenPale} size={2.6} />
        <Powder seed="pits-b" at={[138, 68]} across={12} up={7} count={20} of={tone.greenPale} size={2.6} />
        <Powder seed="pits-c" at={[106, 88]} across={14} up={10} count={10} of={tone.greenPale} size={2.6} />
      </Green>
    </Close>
  ),
  'green-form/open-warts': (id) => (
    <Close id={id}>
      <Green>
        <Mound at={[80, 52]} r={11} of={tone.greenDeep} />
        <Mound at={[138, 54]} r={11} of={tone.greenDeep} />
        <Flat d="M92 72C93 60 100 56 104 53Q113 57 122 52C127 57 132 62 132 72Q112 80 92 72Z" of={tone.greenDeep} />
        <path d="M104 53Q113 45 122 52Q113 59 104 53Z" fill={tone.greenPale} />
        <Arrow at={[113, 50]} from={[112, 22]} />
      </Green>
    </Close>
  ),
  'green-form/firm-crust': (id) => (
    <Close id={id}>
      <Green rough={2}>
        <Strokes d={`${cracked('firm-a', [82, 37], [94, 88], 3)}${cracked('firm-b', [90, 58], [140, 50], 3)}`} />
        <Strokes d="M62 52h10M66 66h12M116 66h12M128 74h10" of={tone.greenDeep} width={2} />
      </Green>
    </Close>
  ),
  'green-form/even-film': (id) => (
    <Close id={id}>
      <Block seed="film" layers={[{ of: tone.green, deep: 3, rough: 0.3 }]} metal={tone.bronze} rough={0.3}>
        <Strokes d="M92 36L80 80M98 36L87 80M120 36L126 80M126 36L133 80" width={1.4} />
        <Strokes d="M60 60H76M102 52H116M140 58H152" of={tone.gloss} width={1.8} />
        <Arrow at={[107, 82]} from={[96, 102]} />
      </Block>
    </Close>
  ),
  'green-form/fur-or-needles': (id) => (
    <Close id={id}>
      <Green>
        <path d={needles} strokeWidth="2.8" strokeLinecap="round" />
        <path d={needles} stroke={tone.greenPale} strokeWidth="1.5" strokeLinecap="round" />
      </Green>
    </Close>
  ),
  'green-form/greasy-lumps': (id) => (
    <Close id={id}>
      <Green>
        <Wax of={tone.turquoise} d="M66 64C62 50 78 44 88 50C96 42 110 46 110 58C110 68 74 72 66 64Z" gloss="M74 56Q80 50 87 55" />
        <Wax of={tone.turquoise} d="M104 72C100 58 118 50 128 56C140 52 148 64 144 72C136 80 110 80 104 72Z" gloss="M112 65Q120 58 128 63" />
      </Green>
    </Close>
  ),
  'green-beside/glass-or-enamel': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 30H72Q92 44 88 66Q84 84 50 86Z" of={tone.glass} />
        <Strokes d="M60 42q8 2 12 14M56 52q5 2 7 8" of={tone.gloss} width={2.4} />
        {heap}
      </Green>
    </Close>
  ),
  'green-beside/leather-fat-or-wax': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 28H86L90 84L50 90Z" of={tone.leather} />
        <path d="M80 30L84 86" stroke={tone.bone} strokeWidth="1.8" strokeDasharray="4 4" />
        <Stipple seed="hide" box={[56, 36, 20, 46]} count={16} size={1.5} />
        {heap}
      </Green>
    </Close>
  ),
  'green-beside/opening-to-core': (id) => (
    <Close id={id}>
      <Green>
        <ellipse cx="98" cy="58" rx="15" ry="8" fill={tone.black} />
        <Flat d="M92 80Q96 98 88 112H112Q100 98 106 80Z" of={tone.black} />
        {heap}
        <Arrow at={[99, 92]} from={[136, 98]} />
      </Green>
    </Close>
  ),
  'green-beside/joint': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 28H90V84H50Z" of={tone.green} />
        <Flat d="M90 28H95V112H90Z" of={tone.black} />
        <Strokes d="M50 80H90" />
        {heap}
      </Green>
    </Close>
  ),
  'green-beside/other-metal': (id) => (
    <Close id={id}>
      <Green>
        <Flat d="M50 24H88V88H50Z" of={tone.iron} />
        <circle cx="72" cy="56" r="9" fill={tone.ironDeep} />
        <Strokes d="M50 78l10 10M58 74l14 14M70 74l14 14M80 72l8 8M68 52q3-3 7-2" of={tone.line} />
        {heap}
      </Green>
    </Close>
  ),
  'seam-line/whole-joint-evenly': (id) => (
    <Close id={id}>
      <Seam>{bumps([[64, 64, 8], [80, 64, 8], [96, 64, 8], [112, 64, 8], [128, 64, 8], [144, 64, 8]])}</Seam>
    </Close>
  ),
  'seam-line/spots-beyond-the-joint': (id) => (
    <Close id={id}>
      <Seam>{bumps([[74, 46, 7], [124, 44, 6], [146, 52, 6], [70, 64, 7], [96, 63, 8], [122, 65, 7], [146, 72, 6], [84, 78, 6], [108, 76, 5]])}</Seam>
    </Close>
  ),
  'seam-line/one-stretch': (id) => (
    <Close id={id}>
      <Seam>
        {bumps([[94, 64, 8], [108, 63, 9], [122, 64, 8]])}
        <Arrow at={[108, 50]} from={[108, 22]} />
      </Seam>
    </Close>
  ),
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
        <Shine at={[[66, 56], [80, 66], [90, 50]]} />
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
        <path d={blot('blue-film', [106, 58], 46, 19, 0.15)} fill={tone.purple} />
        <path d={blot('blue-film', [106, 58], 34, 13, 0.15)} fill={tone.blue} strokeDasharray="5 2" />
        <path d={blot('blue-film', [106, 58], 18, 7, 0.15)} fill={tone.gold} strokeDasharray="2 2" />
        <Shine at={[[74, 58], [128, 54]]} />
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
        <path d={curls} strokeWidth="2.6" strokeLinecap="round" />
        <path d={curls} stroke={tone.bluePale} strokeWidth="1.5" strokeLinecap="round" />
        <Grains points={strewn('fluff-dust', 16, [74, 48, 70, 30], 9)} of={tone.bluePale} size={1.6} />
      </Green>
    </Close>
  ),
  'waxy-place/in-pits-or-under-red': (id) => (
    <Close id={id}>
      <Block seed="under-red" layers={[{ of: tone.red, deep: 5 }, { of: tone.wax, deep: 12, rough: 4 }]} metal={tone.bronze}>
        <Strokes d="M60 50h10M64 70h9M140 50h9M138 72h10" />
        <Wax of={tone.wax} d="M76 62C74 50 92 46 104 50C120 44 138 52 136 62C132 74 84 76 76 62Z" gloss="M84 58Q94 51 104 55" />
        <Arrow at={[106, 91]} from={[140, 100]} />
      </Block>
    </Close>
  ),
  'waxy-place/coat-over-all': (id) => (
    <Close id={id}>
      <Block seed="coated" layers={[{ of: tone.gloss, deep: 5, rough: 0.4 }, { of: tone.green, deep: 9 }]} surface={tone.green} metal={tone.bronze} rough={0.4}>
        <Mound at={[80, 54]} r={8} of={tone.greenDeep} />
        <Mound at={[134, 60]} r={9} of={tone.greenDeep} />
        <path d="M50 36H164V80H50Z" fill={tone.gloss} opacity="0.35" stroke="none" />
        <Strokes d="M60 48Q90 40 130 44M64 70Q96 62 140 72M100 56Q112 52 122 54" of={tone.gloss} width={2.4} />
        <Arrow at={[107, 83]} from={[134, 100]} />
      </Block>
    </Close>
  ),
  'waxy-place/by-leather-or-fat': (id) => (
    <Close id={id}>
      <Green>
        <Wax of={tone.turquoise} d="M70 66C66 52 80 48 88 54C94 44 110 46 114 56C124 48 140 56 138 66Z" gloss="M78 58Q82 54 86 58M98 54Q104 49 109 54" />
        <Flat d="M50 64Q100 60 160 64V114H50Z" of={tone.leather} />
        <Strokes d="M56 72h8m6 0h8m6 0h8m6 0h8m6 0h8m6 0h8m6 0h8" of={tone.bone} width={1.8} />
        <Stipple seed="hide-b" box={[60, 80, 92, 28]} count={26} size={1.5} />
      </Green>
    </Close>
  ),
  'waxy-place/skin-that-keeps-detail': (id) => (
    <Close id={id}>
      <Block seed="detail-skin" layers={[{ of: tone.wax, deep: 4, rough: 0.3 }]} metal={tone.bronze} rough={0.3}>
        <Strokes d="M92 36L80 80M98 36L87 80M120 36L126 80M126 36L133 80M50 46H164" width={1.5} />
        <Strokes d="M60 62H76M102 60H116M140 66H152" of={tone.gloss} width={2} />
      </Block>
    </Close>
  ),
}

const needles = strewn('green-needles', 17, [72, 50, 72, 28], 14)
  .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l-7-7m7 7l-2-11m2 11l3-10m-3 10l7-6`)
  .join('')
const curls = strewn('fluff', 24, [70, 48, 76, 30], 9)
  .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}q-4-6 2-9`)
  .join('')
