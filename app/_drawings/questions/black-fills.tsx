import type { ReactNode } from 'react'
import { Block } from '../kit/block.tsx'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { Flat, Powder, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

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

/** How black sits, how far it goes and what it looks like. */
export const blackFills: Drawings = {
  'black-sits/flush-body': (id) => (
    <Close id={id}>
      <CutLine floor={tone.black}>
        <Flat d="M88 80H126L120 98H94Z" of={tone.black} />
        <Shine
          at={[
            [102, 56],
            [100, 74],
          ]}
        />
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
        <Shine
          at={[
            [104, 44],
            [102, 56],
          ]}
        />
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
        <path
          d="M50 60Q80 52 104 62T164 56V112H118Q112 98 96 104T50 98Z"
          fill={tone.black}
          stroke="none"
          opacity="0.75"
        />
        <Stipple seed="runs-on" box={[60, 52, 90, 10]} count={20} size={2} />
      </Plate>
    </Close>
  ),
  'black-look/grey-blue-shine': (id) => (
    <Close id={id} ground={tone.silver}>
      <Black>
        <path d="M50 78L96 30H118L70 92H50Z" fill={tone.lead} stroke="none" />
        <Shine
          at={[
            [70, 74],
            [82, 62],
            [96, 46],
            [128, 64],
          ]}
        />
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
}
