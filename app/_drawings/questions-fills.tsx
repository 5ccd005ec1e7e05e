import type { ReactNode } from 'react'
import { Block } from './kit/block.tsx'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Close } from './kit/lens.tsx'
import { blot, cracked } from './kit/lines.ts'
import { Bead, Flat, Grains, Mound, Powder, Shadow, Shine, Stipple, Strokes } from './kit/marks.tsx'
import { tone } from './kit/tones.ts'

/** A cut line that runs to the cut edge, where one sees how full it is. */
function CutLine({ floor, children }: { readonly floor: string; readonly children: ReactNode }) {
  return (
    <Block seed="cut-line" metal={tone.silver} rough={0.3}>
      <Flat d="M97 36H117L126 80H88Z" of={floor} />
      <Strokes d="M64 50H80M62 62H76M134 48H150M138 62H152" of={tone.gloss} width={2} />
      {children}
    </Block>
  )
}

/** Silver with a cut motif, a relief ring and two chance scratches; where the black is, differs. */
function Plate({ black, children }: { readonly black: string; readonly children?: ReactNode }) {
  return (
    <>
      {children}
      <path d={black} stroke={tone.black} strokeWidth="7" />
      <path d="M66 44L88 26L110 44L132 26L154 44M66 50L88 32L110 50L132 32L154 50" strokeWidth="0.9" />
      <circle cx="92" cy="80" r="15" strokeWidth="1.4" />
      <circle cx="92" cy="80" r="7" strokeWidth="1.4" />
      <path d="M116 70L150 92M124 66L154 84" />
    </>
  )
}
const motif = 'M66 47L88 29L110 47L132 29L154 47'
const everyHollow = `${motif}M103 80a11 11 0 1 1-22 0a11 11 0 1 1 22 0`

/** A field of black with a chip that was there. */
function Black({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <Flat d="M50 30H164V92H50Z" of={tone.black} />
      <Strokes d="M60 20H84M120 100H148" of={tone.gloss} width={1.8} />
      {children}
    </>
  )
}

const lozenge = 'M107 20L142 60L107 100L72 60Z'
function Field({ of, children }: { readonly of: string; readonly children: ReactNode }) {
  return (
    <>
      <path d={lozenge} fill={of} strokeWidth="1.8" />
      {children}
    </>
  )
}

/** A cell cut through: its floor, its walls and its fill. */
function CellCut({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path d="M50 40H76V88H138V40H164V112H50Z" fill={tone.bronze} />
      <Strokes d="M54 108l16-16M56 86l16-16M56 66l16-16M76 110l18-18M100 110l18-18M124 110l18-18M142 92l16-16M142 70l16-16" width={0.8} />
      {children}
    </>
  )
}

export const fillAnswers: Drawings = {
  'black-sits/flush-body': (id) => (
    <Close id={id}>
      <CutLine floor={tone.black}>
        <Flat d="M88 80H126L120 98H94Z" of={tone.black} />
        <Shine at={[[102, 56], [100, 74]]} />
        <Arrow at={[120, 88]} from={[144, 98]} />
      </CutLine>
    </Close>
  ),
  'black-sits/skin-on-floor': (id) => (
    <Close id={id}>
      <CutLine floor={tone.lead}>
        <path d="M97 36L101 36L96 80L88 80ZM117 36L113 36L118 80L126 80Z" fill={tone.black} stroke="none" />
        <Flat d="M88 80H126L120 98H94Z" of={tone.air} />
        <path d="M88 80L94 98H120L126 80" stroke={tone.black} strokeWidth="3.6" />
        <Stipple seed="floor-black" box={[101, 40, 13, 38]} count={16} size={2} />
        <Arrow at={[118, 95]} from={[142, 100]} />
      </CutLine>
    </Close>
  ),
  'black-sits/proud-or-lifting': (id) => (
    <Close id={id}>
      <CutLine floor={tone.lead}>
        <Flat d="M88 80H126L120 98H94Z" of={tone.black} />
        <Shadow d="M117 36L134 42L146 80H126Z" />
        <Flat d="M97 22H117L126 62H88Z" of={tone.black} />
        <Flat d="M88 62H126V80H88Z" of={tone.black} />
        <path d="M97 22H117L126 62H88ZM88 62V80M126 62V80" stroke={tone.gloss} strokeWidth="0.9" />
        <Shine at={[[104, 44], [102, 56]]} />
        <Arrow at={[127, 72]} from={[148, 92]} />
      </CutLine>
    </Close>
  ),
  'black-spread/design-only': (id) => (
    <Close id={id} ground={tone.silver}>
      <Plate black={motif} />
    </Close>
  ),
  'black-spread/every-hollow': (id) => (
    <Close id={id} ground={tone.silver}>
      <Plate black={everyHollow}>
        <path d="M116 70L150 92M124 66L154 84" stroke={tone.black} strokeWidth="4" />
      </Plate>
    </Close>
  ),
  'black-spread/plain-faces': (id) => (
    <Close id={id} ground={tone.silver}>
      <Plate black={everyHollow}>
        <path d="M50 60Q80 52 104 62T164 56V112H118Q112 98 96 104T50 98Z" fill={tone.black} stroke="none" opacity="0.75" />
        <Stipple seed="runs-on" box={[60, 52, 90, 10]} count={20} size={2} />
      </Plate>
    </Close>
  ),
  'black-look/grey-blue-shine': (id) => (
    <Close id={id} ground={tone.silver}>
      <Black>
        <path d="M50 78L96 30H118L70 92H50Z" fill={tone.lead} stroke="none" />
        <Shine at={[[70, 74], [82, 62], [96, 46], [128, 64]]} />
      </Black>
    </Close>
  ),
  'black-look/glass-like': (id) => (
    <Close id={id} ground={tone.silver}>
      <Black>
        <path d="M112 92Q104 68 132 56Q146 60 164 58V92Z" fill={tone.ironDeep} stroke={tone.gloss} />
        <path d="M124 92Q118 74 140 66M136 92Q134 82 150 76" stroke={tone.gloss} strokeWidth="1.6" />
        <Strokes d="M62 44Q70 38 84 38M64 54Q68 50 74 49" of={tone.gloss} width={3.4} />
        <Arrow at={[122, 76]} from={[92, 80]} />
      </Black>
    </Close>
  ),
  'black-look/brown-at-thin-edges': (id) => (
    <Close id={id} ground={tone.silver}>
      <Flat d="M50 30H112Q128 50 116 66Q132 80 108 92H50Z" of={tone.bronze} />
      <Flat d="M50 30H104Q118 50 106 65Q120 80 98 92H50Z" of={tone.leather} bare />
      <Flat d="M50 30H92Q104 50 94 64Q106 80 84 92H50Z" of={tone.black} bare />
      <Strokes d="M60 46Q72 40 84 44" of={tone.gloss} width={2.4} />
      <Strokes d="M120 20H148M126 100H148" of={tone.gloss} width={1.8} />
      <Arrow at={[117, 64]} from={[146, 60]} />
    </Close>
  ),
  'black-look/soft-powder': (id) => (
    <Close id={id} ground={tone.silver}>
      <path d="M50 32Q100 40 128 36Q118 60 126 86Q90 94 50 90Z" fill={tone.black} stroke="none" />
      <Powder seed="soot-edge" at={[126, 60]} across={26} up={34} count={80} of={tone.black} size={1.6} />
      <Stipple seed="soot-in" box={[56, 40, 60, 44]} count={30} of={tone.soft} size={1.6} />
      <Arrow at={[140, 66]} from={[148, 92]} />
    </Close>
  ),
  'black-look/dull-hard': (id) => (
    <Close id={id} ground={tone.silver}>
      <Black>
        <path d="M116 92L122 74L138 66L164 70V92Z" fill={tone.ironDeep} stroke={tone.soft} />
        <Strokes d="M60 46H72M66 60H80M92 44H104M98 70H108M132 48H144M74 78H84" of={tone.soft} width={1.6} />
      </Black>
    </Close>
  ),
  'fill-surface/smooth-chips': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.blue}>
        <path d="M107 100Q96 78 116 62Q130 62 139 64Z" fill={tone.bluePale} />
        <Strokes d="M110 94Q104 78 122 68M116 88Q112 80 128 72" />
        <Shine at={[[92, 58], [104, 42]]} />
        <Arrow at={[112, 76]} from={[84, 92]} />
      </Field>
    </Close>
  ),
  'fill-surface/bubbles': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.blue}>
        {[[96, 50, 4], [112, 42, 2.6], [118, 62, 5], [100, 72, 3], [88, 62, 2], [110, 82, 3], [126, 56, 2], [106, 58, 2.4]].map(([x, y, r = 2]) => (
          <path key={x} d={`M${(x ?? 0) - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0`} fill={tone.black} stroke={tone.gloss} />
        ))}
        <Arrow at={[119, 67]} from={[140, 88]} />
      </Field>
    </Close>
  ),
  'fill-surface/flat-facets': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.red}>
        <path d="M92 52H122L130 62L107 88L84 62Z" fill={tone.red} />
        <Strokes d="M107 20L92 52L72 60L84 62M107 20L122 52L142 60L130 62M107 100V88" />
        <path d="M92 52H122L107 88Z" fill={tone.gloss} opacity="0.35" stroke="none" />
        <Shine at={[[96, 70], [114, 62]]} />
      </Field>
    </Close>
  ),
  'fill-surface/warts-or-crystals': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.green}>
        <Mound at={[96, 56]} r={9} of={tone.greenDeep} />
        <Mound at={[118, 62]} r={8} of={tone.greenDeep} />
        <Mound at={[108, 82]} r={9} of={tone.greenDeep} />
        <Flat d="M106 42l4-10 5 9-3 6zM84 68l3-8 4 8-3 4zM126 74l3-8 4 7-3 4z" of={tone.greenPale} />
      </Field>
    </Close>
  ),
  'fill-surface/grain-or-pores': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.bone}>
        <Strokes d="M82 60Q96 54 107 26M88 68Q106 58 114 30M94 76Q114 64 122 40M100 84Q122 70 130 50M106 92Q126 78 137 60" />
        <Grains points={strewn('peg-pores', 9, [90, 44, 34, 34], 10)} of={tone.rustDeep} size={1.2} />
      </Field>
    </Close>
  ),
  'fill-surface/waxy': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.wax}>
        <path d="M86 60Q92 46 107 46T128 60Q122 76 107 78T86 60Z" fill={tone.wax} />
        <Strokes d="M92 58Q98 50 108 51M98 68Q106 72 114 69" of={tone.gloss} width={2.8} />
        <Strokes d="M94 64Q104 68 116 62" of={tone.soft} width={1.4} />
      </Field>
    </Close>
  ),
  'fill-edge/clings-to-walls': (id) => (
    <Close id={id}>
      <CellCut>
        <Flat d="M76 42Q80 54 107 56T138 42V88H76Z" of={tone.blue} />
        <Strokes d="M84 60Q94 64 104 64" of={tone.gloss} width={2.4} />
        <Arrow at={[79, 47]} from={[92, 22]} />
      </CellCut>
    </Close>
  ),
  'fill-edge/set-with-a-seam': (id) => (
    <Close id={id}>
      <CellCut>
        <Flat d="M76 82H138V88H76Z" of={tone.bone} />
        <Stipple seed="bedding" box={[78, 83, 58, 4]} count={12} />
        <Flat d="M82 42H132V82H82Z" of={tone.red} />
        <Flat d="M76 40H82V82H76ZM132 40H138V82H132Z" of={tone.black} />
        <Shine at={[[92, 62], [106, 54]]} />
        <Arrow at={[79, 42]} from={[92, 20]} />
      </CellCut>
    </Close>
  ),
  'fill-edge/no-edge': (id) => (
    <Close id={id}>
      <path d="M50 40H164V112H50Z" fill={tone.bronze} />
      <path d={blot('no-edge-fill', [107, 54], 44, 32, 0.12, 14)} fill={tone.green} stroke="none" opacity="0.5" />
      <path d={blot('no-edge-core', [107, 54], 32, 22, 0.16, 14)} fill={tone.green} stroke="none" />
      <path d="M50 10H164V40H50Z" fill={tone.air} stroke="none" />
      <Strokes d="M50 40H164" />
      <Stipple seed="passes-over" box={[62, 44, 88, 40]} count={60} of={tone.greenDeep} size={2.2} />
    </Close>
  ),
  'fill-edge/pinned': (id) => (
    <Close id={id}>
      <CellCut>
        <Flat d="M80 88V58Q82 36 107 34T134 58V88Z" of={tone.bone} />
        <Flat d="M103 28H111V108H103Z" of={tone.iron} />
        <Flat d="M97 25Q107 18 117 25L114 31H100Z" of={tone.iron} />
        <Arrow at={[113, 62]} from={[144, 74]} />
      </CellCut>
    </Close>
  ),
  'glass-skin/rainbow-leaves': (id) => (
    <Close id={id}>
      <Glass>
        <Shadow d="M80 72L112 76L136 62L124 54Z" />
        <Flat d="M72 68L84 54Q102 56 124 40L138 50Q116 68 94 66L86 73Z" of={tone.silver} />
        <path d="M84 60Q106 60 128 44M88 64Q108 64 132 47" stroke={tone.purple} strokeWidth="2" />
        <path d="M86 62Q106 62 130 46" stroke={tone.gold} strokeWidth="1.6" />
        <Flat d="M62 50l9-6 8 5-8 6zM140 70l8-3 6 4-9 3zM104 78l9-4 6 4-8 3z" of={tone.silver} />
      </Glass>
    </Close>
  ),
  'glass-skin/net-of-cracks': (id) => (
    <Close id={id}>
      <Glass>
        <Strokes
          d={['a', 'b', 'c', 'd', 'e'].map((seed, index) => cracked(`net-${seed}`, [58 + index * 22, 37], [50 + index * 28, 80], 4)).join('') + ['f', 'g', 'h'].map((seed, index) => cracked(`net-${seed}`, [50, 48 + index * 11], [162, 46 + index * 12], 3, 11)).join('')}
        />
      </Glass>
    </Close>
  ),
  'glass-skin/thin-sheen-no-loss': (id) => (
    <Close id={id}>
      <Glass>
        <path d={blot('sheen-film', [104, 58], 38, 16, 0.15)} fill={tone.lavender} stroke="none" opacity="0.8" />
        <path d={blot('sheen-film', [104, 58], 26, 10, 0.15)} fill={tone.turquoise} stroke="none" opacity="0.8" />
        <Strokes d="M66 70Q76 50 96 44M118 72Q134 66 140 52" of={tone.gloss} width={3} />
      </Glass>
    </Close>
  ),
  'glass-skin/few-deep-cracks': (id) => (
    <Close id={id}>
      <Glass>
        <Strokes d={`${cracked('deep-a', [96, 36], [112, 102], 3)}${cracked('deep-b', [136, 36], [150, 98], 3)}`} width={2.4} />
        <Strokes d="M64 58Q72 48 84 46" of={tone.gloss} width={3} />
      </Glass>
    </Close>
  ),
  'glass-skin/coat-peeling': (id) => (
    <Close id={id}>
      <Glass>
        <Shadow d="M98 46L136 50L138 76L98 78Z" />
        <path d="M50 36H100L94 58L98 80H50Z" fill={tone.gloss} opacity="0.55" />
        <path d="M94 58L100 36Q120 26 138 34L130 52Q112 46 104 76L98 80Z" fill={tone.gloss} fillOpacity="0.85" />
        <Strokes d="M60 50H80M58 62H74" of={tone.soft} />
        <Arrow at={[126, 50]} from={[146, 74]} />
      </Glass>
    </Close>
  ),
  'drops-where/glass-only': (id) => <Drops id={id} on="glass" />,
  'drops-where/glass-and-metal': (id) => <Drops id={id} on="both" />,
}

function Glass({ children }: { readonly children: ReactNode }) {
  return (
    <Block seed="glass-body" layers={[{ of: tone.glass, deep: 22, rough: 0.4 }]} metal={tone.bronze} rough={0.3}>
      {children}
    </Block>
  )
}

function Drops({ id, on }: { readonly id: string; readonly on: 'glass' | 'both' }) {
  return (
    <Close id={id}>
      <Glass>
        <Flat d="M112 30H164V114H112Z" of={tone.bronze} />
        <Strokes d="M118 112l20-20M134 112l20-20" width={0.8} />
        <Strokes d="M112 80H160" />
        <Bead at={[74, 52]} r={8} of={tone.bluePale} />
        <Bead at={[98, 62]} r={9} of={tone.bluePale} />
        <Bead at={[76, 73]} r={5} of={tone.bluePale} />
        {on === 'both' && (
          <>
            <Bead at={[130, 52]} r={8} of={tone.bluePale} />
            <Bead at={[142, 70]} r={6} of={tone.bluePale} />
            <Bead at={[124, 73]} r={4} of={tone.bluePale} />
          </>
        )}
      </Glass>
    </Close>
  )
}

