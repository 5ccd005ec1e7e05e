import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, shard } from '../kit/lines.ts'
import { Flat, Glint, Grains, Mound, Powder, Shine, Stipple, Strokes, Wax } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

const marks = 'M50 50H164M50 54H164M90 58L84 80M94 58L89 80'

function Lead({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="lead-answers" metal={tone.lead} rough={0.5}>
      {children}
    </Block>
  )
}

/** A wart broken open, so near that one sees what it is made of. */
function Wart({ whole = false, children }: { readonly whole?: boolean; readonly children?: ReactNode }) {
  return (
    <Block seed="wart-answers" metal={tone.silver} rough={0.5}>
      <Mound at={[76, 50]} r={8} up={10} of={tone.lead} />
      {whole ? (
        <Mound at={[110, 74]} r={28} up={34} of={tone.lead} />
      ) : (
        <Flat d="M80 72C82 32 118 26 122 40L112 50L124 54L114 62L126 70L120 76Q98 82 80 72Z" of={tone.lead} />
      )}
      {children}
    </Block>
  )
}

/** White, grey and warts on lead and tin. */
export const leadAnswers: Drawings = {
  'white-look/loose-fur': (id) => (
    <Close id={id}>
      <Lead>
        <Powder seed="fur-white" at={[106, 60]} across={44} up={20} count={96} of={tone.white} size={2.4} />
        <Powder seed="fur-below" at={[104, 92]} across={22} up={12} count={14} of={tone.white} size={2.4} />
      </Lead>
    </Close>
  ),
  'white-look/firm-grains': (id) => (
    <Close id={id}>
      <Block seed="firm-white" layers={[{ of: tone.white, deep: 12, rough: 2 }]} metal={tone.lead} rough={2}>
        <path
          d={strewn('firm-grains', 26, [62, 42, 90, 34], 10)
            .map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l3-3 3 2-1 4-4 1z`)
            .join('')}
        />
      </Block>
    </Close>
  ),
  'white-look/earthy-lumps': (id) => (
    <Close id={id}>
      <Lead>
        <Flat d={blot('earthy-a', [86, 54], 18, 9, 0.35)} of={tone.bone} />
        <Flat d={blot('earthy-b', [130, 62], 15, 8, 0.35)} of={tone.bone} />
        <path d="M62 74Q90 64 118 76L114 80Q90 70 64 79Z" fill={tone.bone} stroke="none" />
        <Grains points={strewn('earth-grit', 12, [70, 46, 76, 30], 12)} of={tone.soil} size={3.4} />
        <Stipple seed="earthy-dots" box={[74, 48, 26, 12]} count={9} />
      </Lead>
    </Close>
  ),
  'beneath-white/eaten': (id) => (
    <Close id={id}>
      <Block seed="eaten-lead" layers={[{ of: tone.white, deep: 14, rough: 7 }]} metal={tone.lead} rough={2}>
        <Flat d={shard('gap-in-white', [107, 58], 32, 15, 0.18, 11)} of={tone.lead} />
        {strewn('eaten-pits', 6, [88, 50, 38, 16], 13).map(([x, y], index) => (
          <path key={x} d={blot(`eaten-${index}`, [x, y], 5, 3, 0.35)} fill={tone.ironDeep} />
        ))}
      </Block>
    </Close>
  ),
  'beneath-white/detail-kept': (id) => (
    <Close id={id}>
      <Block seed="kept-lead" layers={[{ of: tone.white, deep: 10, rough: 0.6 }]} metal={tone.lead} rough={1}>
        <Flat d={shard('gap-in-white', [107, 58], 32, 15, 0.18, 11)} of={tone.lead} />
        <Strokes d="M80 56H134M78 60H137M96 47L90 70M100 47L95 70M120 46L124 70" />
      </Block>
    </Close>
  ),
  'white-crust-break/layers-over-metal': (id) => (
    <Close id={id}>
      <Block
        seed="white-layers"
        layers={[
          { of: tone.white, deep: 8 },
          { of: tone.bone, deep: 7 },
          { of: tone.white, deep: 8 },
        ]}
        metal={tone.lead}
        edge={54}
        rough={1.4}
      />
    </Close>
  ),
  'white-crust-break/pale-right-through': (id) => (
    <Close id={id}>
      <Block seed="white-layers" layers={[{ of: tone.white, deep: 62 }]} edge={54} rough={1.4}>
        <Stipple seed="pale-through" box={[56, 60, 100, 48]} count={56} size={1.6} />
      </Block>
    </Close>
  ),
  'grey-look/even-keeps-marks': (id) => (
    <Close id={id}>
      <Lead>
        <Strokes d={`${marks}M124 58L128 80M128 58L133 80`} width={1.5} />
      </Lead>
    </Close>
  ),
  'grey-look/shine-in-scratches': (id) => (
    <Close id={id}>
      <Lead>
        <Strokes d="M66 72L108 44M78 76L128 46M100 76L142 52" width={4} />
        <Strokes d="M66 72L108 44M78 76L128 46M100 76L142 52" of={tone.gloss} width={2.4} />
        <Glint at={[106, 60]} r={8} />
      </Lead>
    </Close>
  ),
  'grey-look/blue-black-tint': (id) => (
    <Close id={id}>
      <Block
        seed="tinted"
        layers={[{ of: tone.ironDeep, deep: 3, rough: 0.3 }]}
        metal={tone.lead}
        rough={0.5}
      >
        <path d="M50 36H164V42Q120 58 50 54Z" fill={tone.blue} stroke="none" opacity="0.5" />
        <path d="M50 66Q110 70 164 56V80H50Z" fill={tone.gold} stroke="none" opacity="0.35" />
        <Shine
          at={[
            [70, 60],
            [100, 66],
            [132, 56],
            [84, 76],
          ]}
        />
      </Block>
    </Close>
  ),
  'grey-look/waxy': (id) => (
    <Close id={id}>
      <Lead>
        <Strokes d={marks} />
        <Wax
          of={tone.silver}
          d="M100 70C96 56 112 50 122 56C134 50 150 60 146 70C138 78 108 80 100 70Z"
          gloss="M108 63Q116 56 126 61"
        />
        <Strokes d="M62 46Q80 40 98 46M60 70Q70 64 80 70" of={tone.gloss} width={2.6} />
      </Lead>
    </Close>
  ),
  'wart-look/firm-domes': (id) => (
    <Close id={id}>
      <Wart whole />
    </Close>
  ),
  'wart-look/crumbling-grey': (id) => (
    <Close id={id}>
      <Wart>
        <Powder
          seed="wart-grey"
          at={[132, 70]}
          across={18}
          up={11}
          count={46}
          of={tone.ironDeep}
          size={2.4}
        />
      </Wart>
    </Close>
  ),
  'wart-look/white-and-black-inside': (id) => (
    <Close id={id}>
      <Wart whole>
        <path d="M92 72Q92 46 112 44T130 72Q110 80 92 72Z" fill={tone.white} />
        <path d="M98 71Q98 52 112 51T124 71Q110 77 98 71Z" fill={tone.black} />
        <path d="M104 71Q104 59 112 58T119 71Q111 74 104 71Z" fill={tone.white} />
        <Arrow at={[120, 62]} from={[146, 36]} />
      </Wart>
    </Close>
  ),
  'wart-look/pale-powder': (id) => (
    <Close id={id}>
      <Wart whole>
        <path d="M94 60L102 46L112 52L122 45L130 62Q112 74 94 60Z" fill={tone.white} />
        <Powder seed="wart-white" at={[112, 66]} across={30} up={18} count={64} of={tone.white} size={2.2} />
      </Wart>
    </Close>
  ),
  'wart-look/metal-inside': (id) => (
    <Close id={id}>
      <Wart whole>
        <path d="M92 72L96 52L106 44L118 46L128 58L130 72Q110 80 92 72Z" fill={tone.silver} />
        <Strokes d="M96 70l20-24M104 74l20-24M114 74l13-15" />
        <Glint at={[106, 58]} r={10} />
      </Wart>
    </Close>
  ),
}
