import type { ReactNode } from 'react'
import { Block } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Close } from './kit/lens.tsx'
import { blot, cracked, shard } from './kit/lines.ts'
import { Bead, Flat, Grains, Powder, Shadow, Shine, Stipple, Strokes } from './kit/marks.tsx'
import { tone } from './kit/tones.ts'

const grain = <Stipple seed="crust-grain" box={[58, 40, 98, 38]} count={36} />

function Crust({ children }: { readonly children?: ReactNode }) {
  return (
    <Block seed="even-crust" layers={[{ of: tone.rust, deep: 11, rough: 2 }]} rough={2}>
      {grain}
      {children}
    </Block>
  )
}

/** A broken blister of which the rim stands; what is inside differs. */
function Blister({ shell, inside, children }: { readonly shell: string; readonly inside: string; readonly children?: ReactNode }) {
  return (
    <Crust>
      <Shadow d="M100 74L142 76L148 62L132 56Z" />
      <path d="M80 70Q78 42 107 42T134 70Q107 82 80 70Z" fill={shell} />
      <path d="M88 66L92 54L99 58L104 48L112 54L120 50L127 64Q107 76 88 66Z" fill={inside} />
      {children}
    </Crust>
  )
}

/** A flake has left its scar; what shows in it differs. */
function Scar({ of, children }: { readonly of: string; readonly children?: ReactNode }) {
  return (
    <Crust>
      <Flat d={shard('asked-scar', [107, 60], 32, 16, 0.2, 10)} of={of} />
      <Shadow d="M76 60L88 46L120 44L134 52L130 56L118 49L92 51L82 63Z" />
      {children}
    </Crust>
  )
}

/** A crack wide enough to look into. */
function Gap({ of, children }: { readonly of: string; readonly children?: ReactNode }) {
  return (
    <Crust>
      <Flat d="M100 35L110 36L106 48L116 60L110 70L118 80L114 112H98L100 80L92 70L99 60L90 48Z" of={of} />
      {children}
    </Crust>
  )
}

export const ironAnswers: Drawings = {
  'crack-run/along-the-length': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      <Strokes d={['a', 'b', 'c', 'd'].map((word, index) => cracked(`run-${word}`, [48, 30 + index * 20], [166, 24 + index * 22], 2.4, 9)).join('')} width={2.6} />
    </Close>
  ),
  'crack-run/like-dried-mud': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />
      <Strokes
        d={['a', 'b', 'c', 'd'].map((word, index) => cracked(`mud-${word}`, [64 + index * 26, 10], [58 + index * 30, 110], 6)).join('') + ['e', 'f', 'g'].map((word, index) => cracked(`mud-${word}`, [54, 32 + index * 26], [160, 30 + index * 28], 5, 9)).join('')}
        width={2}
      />
    </Close>
  ),
  'crack-run/one-break': (id) => (
    <Close id={id}>
      <Flat d="M40 36H104L98 48L108 58L100 70L106 84H40Z" of={tone.rust} />
      <Flat d="M116 36H180V84H118L112 70L120 58L110 48Z" of={tone.rust} />
      <Stipple seed="one-break" box={[60, 40, 34, 42]} count={16} />
      <Stipple seed="one-break-b" box={[124, 40, 32, 42]} count={14} />
    </Close>
  ),
  'crack-walls/bright-orange': (id) => (
    <Close id={id}>
      <Gap of={tone.rustDeep}>
        <Powder seed="wall-fresh" at={[104, 54]} across={12} up={22} count={48} of={tone.bright} size={2.6} />
        <Powder seed="wall-fresh-b" at={[107, 94]} across={9} up={16} count={24} of={tone.bright} size={2.6} />
      </Gap>
    </Close>
  ),
  'crack-walls/soil-filled': (id) => (
    <Close id={id}>
      <Gap of={tone.soil}>
        <Stipple seed="soil-in-crack" box={[100, 40, 10, 70]} count={20} size={1.6} />
        <Grains points={[[104, 50], [108, 68], [104, 86], [109, 100]]} of={tone.iron} size={4} />
      </Gap>
    </Close>
  ),
  'crack-walls/clean-dark': (id) => (
    <Close id={id}>
      <Gap of={tone.black} />
    </Close>
  ),
  'blister-shell/hollow-rust-shell': (id) => (
    <Close id={id}>
      <Blister shell={tone.bright} inside={tone.black}>
        <Arrow at={[107, 62]} from={[112, 22]} />
      </Blister>
    </Close>
  ),
  'blister-shell/clear-film': (id) => (
    <Close id={id}>
      <Crust>
        <path d="M76 70Q76 40 107 40T138 70Q107 82 76 70Z" fill={tone.gloss} fillOpacity="0.55" />
        <Strokes d="M84 62Q86 48 102 46M124 50Q132 56 133 64" of={tone.gloss} width={3} />
        <Flat d="M112 78L120 62L136 58L142 68L128 80Z" of={tone.rust} />
        <path d="M120 62L130 50L138 54L136 58Z" fill={tone.gloss} />
      </Crust>
    </Close>
  ),
  'blister-shell/dark-scale': (id) => (
    <Close id={id}>
      <Blister shell={tone.ironDeep} inside={tone.black}>
        <Strokes d="M84 60Q88 48 98 46M88 64Q90 58 92 54" of={tone.gloss} width={1.6} />
        <Flat d="M60 72l10-8 12 5-8 8zM138 74l8-7 8 6-8 6z" of={tone.ironDeep} />
      </Blister>
    </Close>
  ),
  'blister-shell/soil-through': (id) => (
    <Close id={id}>
      <Blister shell={tone.soil} inside={tone.soil}>
        <Stipple seed="soil-through" box={[86, 48, 42, 22]} count={26} size={1.8} />
        <Grains points={[[98, 60], [112, 62], [106, 54]]} of={tone.iron} size={4} />
      </Blister>
    </Close>
  ),
  'flake-scar/orange-scar': (id) => (
    <Close id={id}>
      <Scar of={tone.rustDeep}>
        <Powder seed="scar-fresh" at={[108, 60]} across={28} up={13} count={70} of={tone.bright} size={2.4} />
      </Scar>
    </Close>
  ),
  'flake-scar/dark-firm-scar': (id) => (
    <Close id={id}>
      <Scar of={tone.black}>
        <Shine at={[[92, 66], [108, 62], [120, 68]]} />
      </Scar>
    </Close>
  ),
  'flake-scar/soiled-scar': (id) => (
    <Close id={id}>
      <Scar of={tone.soil}>
        <Stipple seed="scar-soil" box={[84, 52, 48, 18]} count={26} size={1.6} />
        <Grains points={[[96, 62], [118, 58], [110, 67]]} of={tone.rust} size={4} />
      </Scar>
    </Close>
  ),
  'spot-place/in-cracks-or-scars': (id) => (
    <Close id={id}>
      <Crust>
        <Strokes d={cracked('spot-crack', [72, 37], [92, 84], 3)} width={2.6} />
        <Powder seed="spot-in-crack" at={[82, 58]} across={6} up={16} count={30} of={tone.bright} />
        <Flat d={shard('spot-scar', [124, 58], 17, 9)} of={tone.rustDeep} />
        <Powder seed="spot-in-scar" at={[124, 58]} across={14} up={7} count={34} of={tone.bright} />
      </Crust>
    </Close>
  ),
  'spot-place/thin-film-on-metal': (id) => (
    <Close id={id}>
      <Block seed="bare-iron" metal={tone.iron} rough={0.3}>
        <Strokes d="M62 74L92 50M70 76L100 52M112 72L140 50" of={tone.gloss} width={1.4} />
        <path d={blot('thin-rust', [90, 56], 22, 11, 0.3)} fill={tone.bright} stroke="none" opacity="0.75" />
        <path d={blot('thin-rust-b', [134, 66], 13, 7, 0.3)} fill={tone.bright} stroke="none" opacity="0.75" />
        <Stipple seed="thin-a" box={[74, 48, 32, 16]} count={14} />
        <Stipple seed="thin-b" box={[124, 62, 20, 9]} count={7} />
      </Block>
    </Close>
  ),
  'spot-place/in-the-soil': (id) => (
    <Close id={id}>
      <Block seed="spots-in-soil" layers={[{ of: tone.soil, deep: 16, rough: 2 }, { of: tone.rust, deep: 7 }]} rough={2}>
        <Stipple seed="soil-grain" box={[58, 40, 98, 52]} count={44} />
        <Grains points={strewn('soil-spots', 8, [68, 46, 78, 44], 18)} of={tone.bright} size={6} />
      </Block>
    </Close>
  ),
  'spot-place/under-a-contact': (id) => (
    <Close id={id}>
      <Crust>
        <Powder seed="contact" at={[107, 62]} across={34} up={10} count={50} of={tone.bright} size={2.6} />
        <path d="M46 22H168V40L120 46Q107 62 94 46L46 40Z" fill={tone.white} />
        <Strokes d="M60 30H90M112 30H150" of={tone.soft} />
        <Arrow at={[107, 62]} from={[134, 90]} />
      </Crust>
    </Close>
  ),
  'crust-look/firm-with-soil': (id) => (
    <Close id={id}>
      <Block seed="firm-rust" layers={[{ of: tone.soil, deep: 7, rough: 2 }, { of: tone.rust, deep: 10 }]} edge={62} rough={2}>
        <Grains points={strewn('sand', 20, [58, 42, 98, 26], 11)} of={tone.iron} size={2.4} />
        <Stipple seed="firm-cut" box={[58, 70, 98, 10]} count={22} />
      </Block>
    </Close>
  ),
  'crust-look/light-and-hollow': (id) => (
    <Close id={id}>
      <Flat d="M46 38Q80 32 107 36T168 36V112H46Z" of={tone.rust} />
      <Flat d={blot('hollow-a', [88, 72], 22, 14, 0.25)} of={tone.black} />
      <Flat d={blot('hollow-b', [132, 82], 16, 12, 0.25)} of={tone.black} />
      <Flat d={blot('hollow-c', [116, 54], 8, 6, 0.25)} of={tone.black} />
      <Strokes d={`${cracked('hollow-crack', [96, 37], [88, 62], 3)}${cracked('hollow-crack-b', [140, 37], [136, 70], 3)}`} width={1.8} />
      <Grains points={strewn('hollow-crumbs', 10, [78, 76, 22, 8], 5)} of={tone.rust} size={2.2} />
    </Close>
  ),
  'crust-look/thin-and-even': (id) => (
    <Close id={id}>
      <Block seed="thin-rust" layers={[{ of: tone.rust, deep: 3, rough: 0.4 }]} rough={0.4}>
        <Flat d={blot('metal-shows', [84, 56], 16, 8, 0.2)} of={tone.iron} />
        <Flat d={blot('metal-shows-b', [132, 66], 13, 6, 0.2)} of={tone.iron} />
        <Shine at={[[80, 60], [130, 70]]} />
      </Block>
    </Close>
  ),
  'crust-look/layered-soil': (id) => (
    <Close id={id}>
      <Block
        seed="banded"
        layers={[{ of: tone.soil, deep: 10, rough: 2 }, { of: tone.rust, deep: 8, rough: 2 }, { of: tone.soil, deep: 11, rough: 2 }, { of: tone.rust, deep: 40 }]}
        edge={52}
        rough={2}
      >
        <Stipple seed="bands" box={[54, 40, 104, 68]} count={56} size={1.6} />
      </Block>
    </Close>
  ),
  'lump-look/shells-or-coral': (id) => (
    <Close id={id} ground={tone.soil}>
      <Stipple seed="lump-ground" box={[58, 12, 96, 96]} count={40} />
      <Flat d="M80 62Q62 34 88 22Q114 30 102 58Q92 68 80 62Z" of={tone.bone} />
      <Strokes d="M90 63Q76 44 82 26M90 63Q88 44 90 22M90 63Q100 46 100 32" />
      <path d="M108 92Q112 72 126 80T146 62Q152 48 142 40" stroke={tone.line} strokeWidth="9" strokeLinecap="round" />
      <path d="M108 92Q112 72 126 80T146 62Q152 48 142 40" stroke={tone.bone} strokeWidth="6.6" strokeLinecap="round" />
      <circle cx="142" cy="40" r="2.4" fill={tone.black} />
      <path d="M74 92l8-10 10 8-4 12h-10z" fill={tone.bone} />
      <Strokes d="M83 90a4 4 0 1 0 .1 0" />
    </Close>
  ),
  'lump-look/soil-and-stones': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="lump-ground" box={[58, 12, 96, 96]} count={40} />
      {[[80, 36, 15], [120, 30, 11], [102, 66, 18], [140, 62, 12], [72, 78, 11], [122, 94, 13]].map(([x = 0, y = 0, r = 1], index) => (
        <Flat key={x} d={shard(`pebble-${x}`, [x, y], r, r * 0.75, 0.2, 9)} of={index % 2 === 0 ? tone.iron : tone.soil} />
      ))}
    </Close>
  ),
  'lump-look/white-crust': (id) => (
    <Close id={id}>
      <Block seed="mortar" layers={[{ of: tone.white, deep: 20, rough: 3 }]} edge={66} rough={3}>
        <Strokes d="M64 50h9M84 46h8M112 54h10M136 48h9M70 58h8M126 60h9M74 78h10M110 82h9M140 76h8" of={tone.soft} />
        <Strokes d={cracked('mortar-crack', [98, 37], [106, 86], 3)} />
      </Block>
    </Close>
  ),
  'lump-look/bubbles-or-glass': (id) => (
    <Close id={id} ground={tone.ironDeep}>
      {[[78, 40, 12], [112, 34, 7], [100, 66, 9], [70, 76, 7], [92, 92, 8], [124, 56, 5]].map(([x = 0, y = 0, r = 1]) => (
        <g key={x}>
          <circle cx={x} cy={y} r={r} fill={tone.black} />
          <path d={`M${x - r + 2} ${y + 1}a${r - 2} ${r - 2} 0 0 0 ${r} ${r - 3}`} stroke={tone.gloss} strokeWidth="1.6" />
        </g>
      ))}
      <path d="M112 112L118 78L136 66L164 60V112Z" fill={tone.black} />
      <Strokes d="M126 100Q126 84 144 76M138 102Q138 92 150 86" of={tone.gloss} width={1.8} />
    </Close>
  ),
  'lump-look/sandy-ochre': (id) => (
    <Close id={id}>
      <Block
        seed="ochre"
        layers={[{ of: tone.soil, deep: 11, rough: 3 }, { of: tone.bright, deep: 9, rough: 3 }, { of: tone.soil, deep: 12, rough: 3 }, { of: tone.bright, deep: 40 }]}
        edge={50}
        rough={3}
      >
        <Grains points={strewn('ochre-sand', 30, [58, 42, 98, 64], 12)} of={tone.bone} size={2.6} />
      </Block>
    </Close>
  ),
  'drop-look/amber-beads': (id) => (
    <Close id={id}>
      <Crust>
        <Bead at={[82, 50]} r={8} of={tone.bright} />
        <Bead at={[112, 58]} r={13} of={tone.bright} />
        <Bead at={[138, 71]} r={8} of={tone.bright} />
        <Bead at={[86, 72]} r={6} of={tone.bright} />
        <path d="M106 62a8 8 0 0 0 12 0M109 66a6 6 0 0 0 6 0" stroke={tone.rustDeep} strokeWidth="1.4" />
      </Crust>
    </Close>
  ),
  'drop-look/clear-water': (id) => (
    <Close id={id}>
      <Crust>
        <Bead at={[82, 50]} r={8} of={tone.rust} />
        <Bead at={[112, 58]} r={13} of={tone.rust} />
        <Bead at={[138, 71]} r={8} of={tone.rust} />
        <Bead at={[86, 72]} r={6} of={tone.rust} />
        <Stipple seed="seen-through" box={[104, 52, 16, 14]} count={8} />
      </Crust>
    </Close>
  ),
  'drop-look/gummy-drops': (id) => (
    <Close id={id}>
      <Crust>
        <path d="M70 50Q78 42 92 48Q98 56 92 62Q90 80 84 80T80 62Q68 60 70 50ZM108 48Q124 40 136 50Q142 62 132 66Q132 88 124 90T118 68Q104 64 108 48Z" fill={tone.leather} />
        <Strokes d="M76 52Q80 48 86 50M114 54Q120 48 128 52" of={tone.gloss} width={3} />
        <path d="M92 56Q100 62 108 56" stroke={tone.leather} strokeWidth="1.6" />
      </Crust>
    </Close>
  ),
  'iron-black-look/dense-under-brown': (id) => (
    <Close id={id}>
      <Block seed="asked-black" layers={[{ of: tone.black, deep: 11 }]} surface={tone.black}>
        <Shine at={[[64, 74], [72, 56], [84, 50]]} />
        <Flat d="M160 30L114 33L106 42L110 50L99 58L104 66L95 74L98 80H160Z" of={tone.rust} />
        <Flat d="M98 80L95 74L91 73L93 84L160 84V78Z" of={tone.rustDeep} />
      </Block>
    </Close>
  ),
  'iron-black-look/hard-sheet': (id) => (
    <Close id={id}>
      <Block seed="asked-black" metal={tone.iron} rough={0.4}>
        <Flat d="M46 32H92L98 52L86 66L92 82H46Z" of={tone.ironDeep} />
        <Flat d="M46 82H92V88H46Z" of={tone.black} />
        <Shadow d="M104 44L140 46L146 68L108 70Z" />
        <Flat d="M102 38L136 36L142 60L106 64Z" of={tone.ironDeep} />
        <Flat d="M106 64L142 60V65L106 69Z" of={tone.black} />
        <Shine at={[[62, 60], [112, 56]]} />
      </Block>
    </Close>
  ),
  'iron-black-look/fine-black-film': (id) => (
    <Close id={id}>
      <Block seed="asked-black" metal={tone.iron} rough={0.4}>
        <Stipple seed="fine-black" box={[58, 38, 98, 40]} count={70} size={3.4} />
        <Powder seed="fine-soot" at={[106, 58]} across={48} up={20} count={70} of={tone.black} size={1.6} />
      </Block>
    </Close>
  ),
  'iron-black-look/inky-film': (id) => (
    <Close id={id}>
      <Block seed="asked-black" layers={[{ of: tone.black, deep: 3, rough: 0.3 }]} metal={tone.iron} rough={0.4}>
        <path d="M50 36H164V80H50Z" fill={tone.blue} stroke="none" opacity="0.3" />
        <Flat d={blot('ink-pit', [86, 54], 8, 4, 0.3)} of={tone.black} />
        <Flat d={blot('ink-pit-b', [130, 66], 7, 3.5, 0.3)} of={tone.black} />
        <Strokes d="M60 68H78M104 48H124" of={tone.gloss} width={1.6} />
        <Arrow at={[107, 83]} from={[96, 103]} />
      </Block>
    </Close>
  ),
  'iron-black-look/painted-film': (id) => (
    <Close id={id}>
      <Block seed="asked-black" metal={tone.iron} surface={tone.rust} rough={0.6}>
        <Flat d="M50 36H140L132 44L142 52L128 60L136 70L118 74Q116 90 110 90T106 78L94 80H50Z" of={tone.black} />
        <Strokes d="M54 44H132M54 51H136M54 58H124M54 65H130M54 72H114" of={tone.soft} />
        <Arrow at={[111, 86]} from={[138, 98]} />
      </Block>
    </Close>
  ),
  'iron-black-look/greasy-grey': (id) => (
    <Close id={id}>
      <Flat d="M40 30H174V74H40Z" of={tone.lead} />
      <Strokes d="M60 42Q76 36 94 42M100 58Q118 52 138 58" of={tone.gloss} width={2.8} />
      <Flat d="M40 80H174V114H40Z" of={tone.white} />
      <path d="M70 92l18-6-14 10 22-8-16 12 24-10-14 12 24-10-12 10 20-8" stroke={tone.ironDeep} strokeWidth="2.4" />
      <Arrow at={[106, 92]} from={[128, 66]} />
    </Close>
  ),
}
