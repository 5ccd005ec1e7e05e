import type { ReactNode } from 'react'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { blot, cracked } from '../kit/lines.ts'
import { Flat, Shadow, Shine, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** One white peg, so near that its substance shows. */
function Peg({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <Shadow d="M110 98Q140 96 148 66L158 80L132 110Z" />
      <circle cx="107" cy="60" r="38" fill={tone.bone} strokeWidth="1.8" />
      {children}
    </>
  )
}

/** A peg cut through where it sits in the metal. */
function PegCut({
  peg = 'M86 88V52Q88 32 107 32T128 52V88Z',
  children,
}: {
  readonly peg?: string
  readonly children: ReactNode
}) {
  return (
    <>
      <path d="M50 56H80V88H134V56H164V112H50Z" fill={tone.bronze} />
      <Strokes
        d="M54 108l18-18M56 84l18-18M78 110l18-18M102 110l18-18M126 110l18-18M142 86l16-16"
        width={0.8}
      />
      <path d={peg} fill={tone.bone} />
      {children}
    </>
  )
}

/** An empty cell, into which one looks. */
function Cell({ floor, children }: { readonly floor: string; readonly children: ReactNode }) {
  return (
    <>
      <path d="M68 22H146V98H68Z" fill={tone.rustDeep} />
      <path d="M78 34H136V88H78Z" fill={floor} />
      <Strokes d="M68 22L78 34M146 22L136 34M68 98L78 88M146 98L136 88" />
      <Shadow d="M68 22H146L136 34H78V88L68 98Z" />
      {children}
    </>
  )
}

/** White pegs near by and cut through, and the floors of empty cells. */
export const pegsAndCells: Drawings = {
  'peg-surface/fine-lines': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Peg>
        <path
          d="M80 36V84M86 30V90M92 26V94M98 24V96M104 22V98M110 22V98M116 24V96M122 26V94M128 30V90M134 36V84"
          strokeWidth="0.9"
        />
        <path d="M83 50V70M95 40V60M107 56V80M119 36V58M131 48V72" stroke={tone.soft} />
      </Peg>
    </Close>
  ),
  'peg-surface/pores-and-streaks': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Peg>
        <path
          d="M88 40h6m10-6h9m10 12h8m-50 6h8m16 4h9m16 2h6m-58 10h7m20 2h10m8 4h7m-44 8h8m14 4h9"
          stroke={tone.rustDeep}
          strokeWidth="2.2"
          strokeLinecap="round"
        />
        <g fill={tone.rustDeep}>
          {strewn('bone-pores', 12, [84, 36, 44, 46], 14).map(([x, y]) => (
            <ellipse key={x} cx={Math.round(x)} cy={Math.round(y)} rx="2.4" ry="1.6" />
          ))}
        </g>
      </Peg>
    </Close>
  ),
  'peg-surface/layers-with-sheen': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Peg>
        <path d="M70 66Q106 30 144 56M72 76Q108 44 144 68M78 86Q110 60 140 78M90 94Q112 78 132 88M72 50Q100 20 136 38" />
        <path d="M84 52Q106 36 128 46M88 66Q110 52 132 60" stroke={tone.lavender} strokeWidth="4" />
        <Shine
          at={[
            [92, 50],
            [112, 64],
          ]}
        />
      </Peg>
    </Close>
  ),
  'peg-surface/shiny-chip': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Peg>
        <path d="M118 96Q98 74 116 54Q132 50 144 54A38 38 0 0 1 118 96Z" fill={tone.white} />
        <path d="M124 90Q110 74 126 62M132 84Q124 74 136 66" />
        <Shine
          at={[
            [82, 56],
            [94, 44],
          ]}
        />
        <Arrow at={[114, 70]} from={[84, 82]} />
      </Peg>
    </Close>
  ),
  'peg-surface/even-chalk': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Peg>
        <Stipple seed="chalk-a" box={[84, 32, 46, 56]} count={64} size={1.5} />
        <Stipple seed="chalk-b" box={[73, 46, 12, 28]} count={12} size={1.5} />
        <Stipple seed="chalk-c" box={[130, 46, 12, 28]} count={12} size={1.5} />
      </Peg>
    </Close>
  ),
  'peg-fixing/pin-through': (id) => (
    <Close id={id}>
      <PegCut>
        <Flat d="M103 26H111V112H103Z" of={tone.greenDeep} />
        <Flat d="M97 26Q107 18 117 26Z" of={tone.greenDeep} />
        <Arrow at={[113, 62]} from={[148, 40]} />
      </PegCut>
    </Close>
  ),
  'peg-fixing/cut-piece-set': (id) => (
    <Close id={id}>
      <PegCut peg="M84 86V46L90 40H124L130 46V86Z">
        <Flat d="M80 56H84V86H130V56H134V88H80Z" of={tone.black} />
        <Strokes d="M84 46H130" />
        <Arrow at={[82, 60]} from={[66, 34]} />
      </PegCut>
    </Close>
  ),
  'peg-fixing/pressed-in': (id) => (
    <Close id={id}>
      <PegCut peg="M80 88V60Q68 58 70 50Q84 40 107 40T144 50Q146 58 134 60V88Z">
        <Stipple seed="paste-cut" box={[82, 48, 50, 38]} count={30} size={1.5} />
        <Arrow at={[142, 58]} from={[150, 84]} />
      </PegCut>
    </Close>
  ),
  'peg-fixing/grown-over': (id) => (
    <Close id={id}>
      <path d="M50 56H164V112H50Z" fill={tone.bronze} />
      <Strokes d="M54 108l18-18M78 110l18-18M102 110l18-18M126 110l18-18" width={0.8} />
      <Flat
        d="M64 58Q72 36 92 40Q104 26 122 36Q142 38 148 56Q136 72 120 66Q104 76 90 66Q76 70 64 58Z"
        of={tone.bone}
      />
      <Strokes d={cracked('grown', [82, 58], [132, 52], 4)} />
      <Stipple seed="grown-grain" box={[78, 44, 58, 16]} count={16} size={1.5} />
    </Close>
  ),
  'cell-floor/scored-or-pitted': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Cell floor={tone.bronze}>
        <Strokes d="M80 46l12-12M80 60l26-26M80 74l40-40M82 86l50-50M96 86l38-38M110 86l24-24M124 86l10-10M84 36l50 48M78 50l36 36M104 36l30 30" />
      </Cell>
    </Close>
  ),
  'cell-floor/glass-left': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Cell floor={tone.bronze}>
        <Flat
          d="M78 34H98L90 46L84 44L78 56ZM136 88H116L120 78L130 76L136 66ZM110 50l8-4 5 7-9 4z"
          of={tone.blue}
        />
        <Strokes d="M81 40l8-3M126 84l6-5" of={tone.gloss} width={2} />
        <Arrow at={[93, 43]} from={[112, 70]} />
      </Cell>
    </Close>
  ),
  'cell-floor/paste-or-foil': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Cell floor={tone.bone}>
        <Stipple seed="paste-floor" box={[81, 37, 52, 48]} count={34} size={1.6} />
        <Flat d="M96 48L128 42L134 66L118 80L100 72L104 60Z" of={tone.gold} />
        <Strokes d="M102 52l12 10 10-8M110 74l6-14 14 4" />
        <Shine at={[[112, 56]]} />
      </Cell>
    </Close>
  ),
  'cell-floor/open-through': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Cell floor={tone.air}>
        <Strokes d="M78 34H136V88H78Z" width={1.8} />
      </Cell>
    </Close>
  ),
  'cell-floor/black-left': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Cell floor={tone.silver}>
        <Flat
          d="M78 34H102Q88 38 84 58L78 62ZM136 34V54Q130 42 118 34ZM136 88H108Q126 84 136 70ZM78 88V76Q84 84 92 88Z"
          of={tone.black}
        />
        <Strokes d="M80 42l6-4M128 84l5-5" of={tone.gloss} width={1.6} />
        <Arrow at={[90, 44]} from={[110, 66]} />
      </Cell>
    </Close>
  ),
  'cell-floor/smooth-as-cast': (id) => (
    <Close id={id} ground={tone.bronze}>
      <Cell floor={tone.bronze}>
        <path d={blot('as-cast', [107, 61], 27, 24, 0.06)} stroke={tone.soft} />
        <Strokes d="M86 44Q94 40 106 41M84 52Q86 48 90 46" of={tone.gloss} width={2.4} />
      </Cell>
    </Close>
  ),
}
