import { Block } from '../kit/block.tsx'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { cracked } from '../kit/lines.ts'
import { Bead, Flat, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'
import { Crusted, Fading, Worn } from './films.tsx'

/** How a white skin ends, and what a break of it shows. */
export const whiteSkins: Drawings = {
  'skin-edge/drips-or-wipes': (id) => (
    <Close id={id}>
      <Crusted>
        <Flat
          d="M50 36H92Q108 38 102 44Q94 48 112 50Q132 52 126 59Q116 64 100 61Q92 64 108 68Q122 74 110 80H50Z"
          of={tone.silver}
        />
        <Flat d="M50 80H110Q112 84 106 84H50Z" of={tone.silver} />
        <Bead at={[138, 56]} r={5} of={tone.silver} />
        <Bead at={[124, 74]} r={4} of={tone.silver} />
        <Strokes d="M58 44Q76 46 94 42M56 56Q84 60 116 55M58 70Q78 68 98 72" of={tone.soft} width={1.4} />
        <Arrow at={[127, 53]} from={[142, 28]} />
      </Crusted>
    </Close>
  ),
  'skin-edge/along-a-joint': (id) => (
    <Close id={id}>
      <Block seed="skin-joint" metal={tone.bronze} rough={0.3}>
        <Flat d="M50 36H164V58H50Z" of={tone.bronze} />
        <Flat d="M50 58H164V63H50Z" of={tone.rustDeep} />
        <Flat d="M50 63H164V69Q150 72 138 69Q124 67 112 70Q96 73 84 69Q70 67 50 71Z" of={tone.silver} />
        <Shine
          at={[
            [70, 70],
            [104, 71],
            [140, 70],
          ]}
        />
        <Arrow at={[106, 66]} from={[92, 24]} />
      </Block>
    </Close>
  ),
  'skin-edge/lifting-edge': (id) => (
    <Close id={id}>
      <Crusted>
        <Flat d="M50 36H104L98 58L104 80H50Z" of={tone.silver} />
        <Shadow d="M98 40L138 46L142 70L104 80L98 58Z" />
        <Flat
          d="M90 40Q106 30 122 28Q134 32 138 42Q126 38 112 44L104 74Q94 78 84 80Q92 58 90 40Z"
          of={tone.silver}
        />
        <Flat d="M122 28Q134 32 138 42L136 46Q130 34 118 32Z" of={tone.lead} />
        <Shine
          at={[
            [60, 60],
            [70, 72],
            [98, 52],
          ]}
        />
        <Arrow at={[114, 52]} from={[142, 76]} />
      </Crusted>
    </Close>
  ),
  'skin-edge/thins-out': (id) => (
    <Close id={id}>
      <Worn of={tone.silver} />
    </Close>
  ),
  'skin-edge/fades-into-the-metal': (id) => (
    <Close id={id}>
      <Fading of={tone.silver} />
    </Close>
  ),
  'skin-break/white-through': (id) => (
    <Close id={id}>
      <path d="M46 34H168V56L150 60L136 54L120 61L104 55L88 62L72 56L46 60Z" fill={tone.silver} />
      <path d="M46 60L72 56L88 62L104 55L120 61L136 54L150 60L168 56V114H46Z" fill={tone.silver} />
      <path
        d="M46 60V114H62L74 98L60 84ZM72 56L60 84L74 98L92 82L88 62ZM104 55L92 82L110 96L124 80L120 61ZM136 54L124 80L140 94L154 78L150 60ZM74 98L62 114H104L110 96L92 82ZM140 94L128 112H166V86L154 78Z"
        fill={tone.lead}
      />
      <path d="M72 56L60 84L74 98L92 82L88 62ZM136 54L124 80L140 94L154 78L150 60Z" fill={tone.white} />
      <Shine
        at={[
          [72, 50],
          [100, 48],
          [128, 50],
        ]}
      />
      <Arrow at={[108, 76]} from={[107, 112]} />
    </Close>
  ),
  'skin-break/yellow-or-red': (id) => (
    <Close id={id}>
      <Block
        seed="break"
        layers={[{ of: tone.silver, deep: 5, rough: 0.6 }]}
        metal={tone.bronze}
        edge={56}
        rough={1.6}
      >
        <Shine
          at={[
            [76, 52],
            [104, 50],
            [132, 52],
          ]}
        />
        <Arrow at={[107, 60]} from={[92, 88]} />
      </Block>
    </Close>
  ),
  'skin-break/crust-only': (id) => (
    <Close id={id}>
      <Block
        seed="break"
        layers={[
          { of: tone.green, deep: 16, rough: 3 },
          { of: tone.red, deep: 12, rough: 3 },
          { of: tone.greenDeep, deep: 40 },
        ]}
        edge={56}
        rough={1.6}
      >
        <Strokes
          d={`${cracked('crust-through', [98, 56], [112, 110], 4)}${cracked('crust-b', [104, 80], [140, 92], 3)}`}
        />
        <Stipple seed="crumbly" box={[54, 60, 104, 50]} count={40} />
      </Block>
    </Close>
  ),
}
