import type { ReactNode } from 'react'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Flat, Grains, Mound, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

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
      <Strokes
        d="M54 108l16-16M56 86l16-16M56 66l16-16M76 110l18-18M100 110l18-18M124 110l18-18M142 92l16-16M142 70l16-16"
        width={0.8}
      />
      {children}
    </>
  )
}

/** What fills a field, and how it meets the walls. */
export const fields: Drawings = {
  'fill-surface/smooth-chips': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.blue}>
        <path d="M107 100Q96 78 116 62Q130 62 139 64Z" fill={tone.bluePale} />
        <Strokes d="M110 94Q104 78 122 68M116 88Q112 80 128 72" />
        <Shine
          at={[
            [92, 58],
            [104, 42],
          ]}
        />
        <Arrow at={[112, 76]} from={[84, 92]} />
      </Field>
    </Close>
  ),
  'fill-surface/bubbles': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Field of={tone.blue}>
        {[
          [96, 50, 4],
          [112, 42, 2.6],
          [118, 62, 5],
          [100, 72, 3],
          [88, 62, 2],
          [110, 82, 3],
          [126, 56, 2],
          [106, 58, 2.4],
        ].map(([x, y, r = 2]) => (
          <path
            key={x}
            d={`M${(x ?? 0) - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0`}
            fill={tone.black}
            stroke={tone.gloss}
          />
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
        <Shine
          at={[
            [96, 70],
            [114, 62],
          ]}
        />
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
        <Shine
          at={[
            [92, 62],
            [106, 54],
          ]}
        />
        <Arrow at={[79, 42]} from={[92, 20]} />
      </CellCut>
    </Close>
  ),
  'fill-edge/no-edge': (id) => (
    <Close id={id}>
      <path d="M50 40H164V112H50Z" fill={tone.bronze} />
      <path
        d={blot('no-edge-fill', [107, 54], 44, 32, 0.12, 14)}
        fill={tone.green}
        stroke="none"
        opacity="0.5"
      />
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
}
