import type { ReactNode } from 'react'
import { Block } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Close } from './kit/lens.tsx'
import { blot, cracked, shard } from './kit/lines.ts'
import { Flat, Glint, Grains, Mound, Powder, Shine, Stipple, Strokes, Wax } from './kit/marks.tsx'
import { tone } from './kit/tones.ts'

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

export const leadSilverAnswers: Drawings = {
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
        <path d={strewn('firm-grains', 26, [62, 42, 90, 34], 10).map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l3-3 3 2-1 4-4 1z`).join('')} />
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
        layers={[{ of: tone.white, deep: 8 }, { of: tone.bone, deep: 7 }, { of: tone.white, deep: 8 }]}
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
      <Block seed="tinted" layers={[{ of: tone.ironDeep, deep: 3, rough: 0.3 }]} metal={tone.lead} rough={0.5}>
        <path d="M50 36H164V42Q120 58 50 54Z" fill={tone.blue} stroke="none" opacity="0.5" />
        <path d="M50 66Q110 70 164 56V80H50Z" fill={tone.gold} stroke="none" opacity="0.35" />
        <Shine at={[[70, 60], [100, 66], [132, 56], [84, 76]]} />
      </Block>
    </Close>
  ),
  'grey-look/waxy': (id) => (
    <Close id={id}>
      <Lead>
        <Strokes d={marks} />
        <Wax of={tone.silver} d="M100 70C96 56 112 50 122 56C134 50 150 60 146 70C138 78 108 80 100 70Z" gloss="M108 63Q116 56 126 61" />
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
        <Powder seed="wart-grey" at={[132, 70]} across={18} up={11} count={46} of={tone.ironDeep} size={2.4} />
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
  'silver-crack-run/crumbling-net': (id) => (
    <Close id={id} ground={tone.silver}>
      <Strokes
        d={['a', 'b', 'c', 'd', 'e'].map((word, index) => cracked(`sugar-${word}`, [60 + index * 22, 10], [56 + index * 24, 110], 5, 9)).join('') + ['f', 'g', 'h', 'i'].map((word, index) => cracked(`sugar-${word}`, [50, 26 + index * 22], [164, 24 + index * 23], 5, 10)).join('')}
        width={1.4}
      />
      <Flat d="M118 70L132 64L142 76L132 88L120 84Z" of={tone.air} />
      <Grains points={strewn('sugar', 14, [118, 72, 30, 26], 6)} of={tone.silver} size={2.6} />
    </Close>
  ),
  'silver-crack-run/at-bends': (id) => (
    <Close id={id}>
      <Flat d="M46 40L104 62L100 112H46Z" of={tone.silver} />
      <Flat d="M104 62L168 34V100L100 112Z" of={tone.lead} />
      <Strokes d={cracked('bend', [104, 62], [100, 112], 1.6, 9)} width={3} />
      <Strokes d={`${cracked('bend-b', [98, 60], [95, 108], 1.6, 8)}${cracked('bend-c', [110, 60], [107, 110], 1.6, 8)}`} />
      <Arrow at={[102, 84]} from={[136, 84]} />
    </Close>
  ),
  'silver-crack-run/beside-holes': (id) => (
    <Close id={id} ground={tone.silver}>
      {[[84, 44, 9], [122, 62, 11], [94, 84, 7]].map(([x, y, r]) => (
        <circle key={x} cx={x} cy={y} r={r} fill={tone.black} />
      ))}
      <Strokes d={`${cracked('hole-a', [93, 46], [112, 58], 2)}${cracked('hole-b', [100, 82], [116, 72], 2)}${cracked('hole-c', [132, 58], [156, 44], 2)}${cracked('hole-d', [76, 40], [58, 30], 2)}`} width={1.8} />
      <Strokes d="M64 60H78M130 90H146M104 26H118" of={tone.gloss} width={1.8} />
    </Close>
  ),
  'silver-break/bright-grainy': (id) => (
    <Close id={id}>
      <Block seed="silver-break" metal={tone.silver} edge={54} rough={2}>
        <path d={strewn('silver-grains', 26, [58, 60, 96, 44], 12).map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l4-4 5 2 1 5-5 3-4-2z`).join('')} fill={tone.gloss} />
        <Glint at={[88, 76]} r={8} />
        <Glint at={[126, 88]} r={7} />
      </Block>
    </Close>
  ),
  'silver-break/grey-waxy': (id) => (
    <Close id={id}>
      <Block seed="silver-break" layers={[{ of: tone.lavender, deep: 62 }]} edge={54} rough={2}>
        <path d="M50 80Q80 74 107 80T164 78V90Q130 94 107 90T50 92Z" fill={tone.silver} />
        <Strokes d="M64 66Q76 60 88 64M118 68Q130 62 142 66M96 102Q106 98 118 101" of={tone.gloss} width={2.6} />
      </Block>
    </Close>
  ),
  'silver-break/bright-smooth': (id) => (
    <Close id={id}>
      <Block seed="silver-break" metal={tone.silver} edge={54} rough={0.5}>
        <path d="M46 56Q107 54 168 56V112H46Z" fill={tone.silver} stroke="none" />
        <Strokes d="M50 66Q107 62 164 66M50 76Q107 72 164 76M50 88Q107 84 164 88M50 100Q107 96 164 100" of={tone.gloss} width={2.4} />
      </Block>
    </Close>
  ),
  'silver-look/thick-and-waxy': (id) => (
    <Close id={id}>
      <Block seed="horn" layers={[{ of: tone.lavender, deep: 16, rough: 3 }]} metal={tone.silver} rough={2.4}>
        <path d="M94 40Q108 36 120 40L128 72Q108 80 88 72Z" opacity="0.3" strokeDasharray="3 4" />
        <Strokes d="M62 48Q72 42 84 46M124 46Q138 40 150 47M66 70Q78 62 90 67M126 70Q138 64 148 69" of={tone.gloss} width={2.8} />
      </Block>
    </Close>
  ),
  'silver-look/thin-film': (id) => (
    <Close id={id}>
      <Block seed="thin-grey" layers={[{ of: tone.lavender, deep: 2, rough: 0.2 }]} metal={tone.silver} surface={tone.silver} rough={0.3}>
        <path d={blot('thin-grey', [106, 58], 48, 20, 0.15)} fill={tone.lavender} stroke="none" opacity="0.7" />
        <Strokes d="M92 36L84 80M122 36L132 80" />
        <Shine at={[[66, 56], [102, 54], [106, 70], [140, 60]]} />
      </Block>
    </Close>
  ),
  'silver-look/clear-and-greasy': (id) => (
    <Close id={id}>
      <Block seed="lacquer" metal={tone.silver} rough={0.3}>
        <Strokes d="M92 36L84 80M122 36L132 80" />
        <path d="M60 36Q64 60 70 74Q76 78 78 70L80 36ZM128 36Q134 52 142 62Q150 66 150 56L148 36Z" fill={tone.bone} fillOpacity="0.8" />
        <Strokes d="M68 42L73 68M136 40L144 56" of={tone.gloss} width={2.4} />
        <Arrow at={[74, 75]} from={[96, 92]} />
      </Block>
    </Close>
  ),
  'silver-look/hard-and-smooth': (id) => (
    <Close id={id}>
      <Block seed="hard-grey" layers={[{ of: tone.lead, deep: 5, rough: 0.3 }]} metal={tone.silver} rough={0.3}>
        <Strokes d="M92 36L84 80M98 36L91 80M122 36L132 80M116 36L125 80" width={1.5} />
        <Strokes d="M58 56H76M56 68H72M140 54H154M142 68H154" of={tone.gloss} width={1.8} />
      </Block>
    </Close>
  ),
}
