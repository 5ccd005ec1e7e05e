import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, cracked, shard } from '../kit/lines.ts'
import { Bead, Flat, Grains, Powder, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Crust } from './iron-ground.tsx'

/** Crusts, spots, lumps and drops on iron. */
export const ironCrusts: Drawings = {
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
        <path
          d={blot('thin-rust-b', [134, 66], 13, 7, 0.3)}
          fill={tone.bright}
          stroke="none"
          opacity="0.75"
        />
        <Stipple seed="thin-a" box={[74, 48, 32, 16]} count={14} />
        <Stipple seed="thin-b" box={[124, 62, 20, 9]} count={7} />
      </Block>
    </Close>
  ),
  'spot-place/in-the-soil': (id) => (
    <Close id={id}>
      <Block
        seed="spots-in-soil"
        layers={[
          { of: tone.soil, deep: 16, rough: 2 },
          { of: tone.rust, deep: 7 },
        ]}
        rough={2}
      >
        <Stipple seed="soil-grain" box={[58, 40, 98, 52]} count={44} />
        <Grains points={strewn('soil-spots', 8, [68, 46, 78, 44], 18)} of={tone.bright} size={6} />
      </Block>
    </Close>
  ),
  'spot-place/under-a-contact': (id) => (
    <Close id={id}>
      <Crust>
        <path d={pinPrint} strokeWidth="9" strokeLinecap="round" />
        <path d={pinPrint} stroke={tone.bright} strokeWidth="6.6" strokeLinecap="round" />
        <Stipple seed="pin-print" box={[72, 60, 68, 14]} count={16} />
        <path d="M62 30L140 12" strokeWidth="8" strokeLinecap="round" />
        <path d="M62 30L140 12" stroke={tone.silver} strokeWidth="5.6" strokeLinecap="round" />
        <circle cx="60" cy="31" r="7" fill={tone.silver} />
        <Arrow at={[104, 64]} from={[102, 26]} />
      </Crust>
    </Close>
  ),
  'crust-look/firm-with-soil': (id) => (
    <Close id={id}>
      <Block
        seed="firm-rust"
        layers={[
          { of: tone.soil, deep: 7, rough: 2 },
          { of: tone.rust, deep: 10 },
        ]}
        edge={62}
        rough={2}
      >
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
      <Strokes
        d={`${cracked('hollow-crack', [96, 37], [88, 62], 3)}${cracked('hollow-crack-b', [140, 37], [136, 70], 3)}`}
        width={1.8}
      />
      <Grains points={strewn('hollow-crumbs', 10, [78, 76, 22, 8], 5)} of={tone.rust} size={2.2} />
    </Close>
  ),
  'crust-look/thin-and-even': (id) => (
    <Close id={id}>
      <Block seed="thin-rust" layers={[{ of: tone.rust, deep: 3, rough: 0.4 }]} rough={0.4}>
        <Flat d={blot('metal-shows', [84, 56], 16, 8, 0.2)} of={tone.iron} />
        <Flat d={blot('metal-shows-b', [132, 66], 13, 6, 0.2)} of={tone.iron} />
        <Shine
          at={[
            [80, 60],
            [130, 70],
          ]}
        />
      </Block>
    </Close>
  ),
  'crust-look/layered-soil': (id) => (
    <Close id={id}>
      <Block
        seed="banded"
        layers={[
          { of: tone.soil, deep: 10, rough: 2 },
          { of: tone.rust, deep: 8, rough: 2 },
          { of: tone.soil, deep: 11, rough: 2 },
          { of: tone.rust, deep: 40 },
        ]}
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
      <path
        d="M108 92Q112 72 126 80T146 62Q152 48 142 40"
        stroke={tone.line}
        strokeWidth="9"
        strokeLinecap="round"
      />
      <path
        d="M108 92Q112 72 126 80T146 62Q152 48 142 40"
        stroke={tone.bone}
        strokeWidth="6.6"
        strokeLinecap="round"
      />
      <circle cx="142" cy="40" r="2.4" fill={tone.black} />
      <path d="M74 92l8-10 10 8-4 12h-10z" fill={tone.bone} />
      <Strokes d="M83 90a4 4 0 1 0 .1 0" />
    </Close>
  ),
  'lump-look/soil-and-stones': (id) => (
    <Close id={id} ground={tone.rust}>
      <Stipple seed="lump-ground" box={[58, 12, 96, 96]} count={40} />
      {[
        [80, 36, 15],
        [120, 30, 11],
        [102, 66, 18],
        [140, 62, 12],
        [72, 78, 11],
        [122, 94, 13],
      ].map(([x = 0, y = 0, r = 1], index) => (
        <Flat
          key={x}
          d={shard(`pebble-${x}`, [x, y], r, r * 0.75, 0.2, 9)}
          of={index % 2 === 0 ? tone.iron : tone.soil}
        />
      ))}
    </Close>
  ),
  'lump-look/white-crust': (id) => (
    <Close id={id}>
      <Block seed="mortar" layers={[{ of: tone.white, deep: 20, rough: 3 }]} edge={66} rough={3}>
        <Strokes
          d="M64 50h9M84 46h8M112 54h10M136 48h9M70 58h8M126 60h9M74 78h10M110 82h9M140 76h8"
          of={tone.soft}
        />
        <Strokes d={cracked('mortar-crack', [98, 37], [106, 86], 3)} />
      </Block>
    </Close>
  ),
  'lump-look/bubbles-or-glass': (id) => (
    <Close id={id} ground={tone.ironDeep}>
      {[
        [78, 40, 12],
        [112, 34, 7],
        [100, 66, 9],
        [70, 76, 7],
        [92, 92, 8],
        [124, 56, 5],
      ].map(([x = 0, y = 0, r = 1]) => (
        <g key={x}>
          <circle cx={x} cy={y} r={r} fill={tone.black} />
          <path
            d={`M${x - r + 2} ${y + 1}a${r - 2} ${r - 2} 0 0 0 ${r} ${r - 3}`}
            stroke={tone.gloss}
            strokeWidth="1.6"
          />
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
        layers={[
          { of: tone.soil, deep: 11, rough: 3 },
          { of: tone.bright, deep: 9, rough: 3 },
          { of: tone.soil, deep: 12, rough: 3 },
          { of: tone.bright, deep: 40 },
        ]}
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
        <path
          d="M70 50Q78 42 92 48Q98 56 92 62Q90 80 84 80T80 62Q68 60 70 50ZM108 48Q124 40 136 50Q142 62 132 66Q132 88 124 90T118 68Q104 64 108 48Z"
          fill={tone.leather}
        />
        <Strokes d="M76 52Q80 48 86 50M114 54Q120 48 128 52" of={tone.gloss} width={3} />
        <path d="M92 56Q100 62 108 56" stroke={tone.leather} strokeWidth="1.6" />
      </Crust>
    </Close>
  ),
}

/** The outline of a pin that lay here, its head to the left. */
const pinPrint = 'M70 71L142 60M69 70.5L71 70.8'
