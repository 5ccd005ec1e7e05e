import { Block } from '../kit/block.tsx'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Flat, Powder, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** Black on iron. */
export const ironBlack: Drawings = {
  'iron-black-look/dense-under-brown': (id) => (
    <Close id={id}>
      <Block seed="asked-black" layers={[{ of: tone.black, deep: 11 }]} surface={tone.black}>
        <Shine
          at={[
            [64, 74],
            [72, 56],
            [84, 50],
          ]}
        />
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
        <Shine
          at={[
            [62, 60],
            [112, 56],
          ]}
        />
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
      <Block
        seed="asked-black"
        layers={[{ of: tone.black, deep: 3, rough: 0.3 }]}
        metal={tone.iron}
        rough={0.4}
      >
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
        <Flat
          d="M50 36H140L132 44L142 52L128 60L136 70L118 74Q116 90 110 90T106 78L94 80H50Z"
          of={tone.black}
        />
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
      <path
        d="M70 92l18-6-14 10 22-8-16 12 24-10-14 12 24-10-12 10 20-8"
        stroke={tone.ironDeep}
        strokeWidth="2.4"
      />
      <Arrow at={[106, 92]} from={[128, 66]} />
    </Close>
  ),
}
