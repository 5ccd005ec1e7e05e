import type { ReactNode } from 'react'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow, Close } from '../kit/lens.tsx'
import { Flat, Shadow, Stipple, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** A brown layer that ends towards the right, on green metal. */
function Layer({ d, children }: { readonly d: string; readonly children?: ReactNode }) {
  return (
    <>
      <Shadow d={d} />
      <g transform="translate(-3 -3)">
        <path d={d} fill={tone.leather} />
        {children}
      </g>
    </>
  )
}

/** The grain of wood, the edge of leather, and what is taken for them. */
export const grainAndLeather: Drawings = {
  'grain-texture/lines-and-pores': (id) => (
    <Close id={id} ground={tone.wood}>
      <Strokes
        d="M62 10Q66 60 60 112M73 8Q77 50 72 112M84 8Q89 60 84 112M96 8Q99 40 97 112M107 8Q111 60 107 112M118 8Q120 50 118 112M129 8Q133 60 129 112M141 8Q143 50 140 112M152 8V112"
        width={1.3}
      />
      <g fill={tone.rustDeep}>
        {strewn('pores', 15, [66, 20, 80, 80], 20).map(([x, y]) => (
          <ellipse key={x} cx={Math.round(x)} cy={Math.round(y)} rx="1.8" ry="4.6" />
        ))}
      </g>
    </Close>
  ),
  'grain-texture/short-pits': (id) => (
    <Close id={id} ground={tone.wood}>
      <path
        d={strewn('short-pits', 46, [60, 16, 92, 88], 10)
          .map(([x, y], index) => `M${Math.round(x)} ${Math.round(y)}l${(index % 3) - 1} ${4 + (index % 3)}`)
          .join('')}
        strokeWidth="2.2"
        strokeLinecap="round"
      />
    </Close>
  ),
  'grain-texture/smooth-sheets': (id) => (
    <Close id={id}>
      <path d="M50 92Q100 84 164 92V114H50Z" fill={tone.wood} />
      <path d="M50 74Q96 68 150 76L164 90Q104 82 50 90Z" fill={tone.bone} />
      <path d="M50 56Q92 50 138 60L152 74Q100 66 50 72Z" fill={tone.wood} />
      <path d="M50 38Q86 32 122 44L140 58Q94 48 50 54Z" fill={tone.bone} />
      <Strokes d="M58 44Q80 40 104 44M60 62Q84 57 116 63M62 80Q90 75 130 81" of={tone.gloss} width={2.2} />
    </Close>
  ),
  'grain-texture/opens-like-pages': (id) => (
    <Close id={id}>
      <path
        d="M50 60Q104 24 150 26L152 34Q104 38 50 66ZM50 66Q104 46 158 48V56Q104 54 50 70ZM50 71Q104 66 160 70V78Q104 72 50 76ZM50 76Q104 84 158 92L154 100Q104 88 50 81Z"
        fill={tone.rust}
      />
      <path
        d="M152 34L158 48Q104 46 50 66Q104 38 152 34ZM158 56L160 70Q104 66 50 71Q104 54 158 56ZM160 78L158 92Q104 84 50 76Q104 72 160 78Z"
        fill={tone.black}
        stroke="none"
      />
      <path d="M50 81Q104 88 154 100V114H50Z" fill={tone.iron} />
    </Close>
  ),
  'grain-texture/felted-fibres': (id) => (
    <Close id={id} ground={tone.wood}>
      <path
        d={strewn('felt', 34, [56, 14, 90, 88], 10)
          .map(
            ([x, y], index) =>
              `M${Math.round(x)} ${Math.round(y)}q${[9, -6, 12, 4][index % 4]} ${[6, 10, -4, -9][index % 4]} ${[16, 4, 20, -8][index % 4]} ${[2, 18, 6, -14][index % 4]}`,
          )
          .join('')}
      />
    </Close>
  ),
  'leather-edge/cut-or-stitched': (id) => (
    <Close id={id} ground={tone.green}>
      <Layer d="M50 20H128V104H50Z">
        <g fill={tone.black}>
          {[30, 44, 58, 72, 86].map((y) => (
            <ellipse key={y} cx="116" cy={y} rx="2.4" ry="3.4" />
          ))}
        </g>
        <path d="M116 34v6m0 8v6m0 8v6m0 8v6" stroke={tone.bone} strokeWidth="2" />
        <Stipple seed="hide-edge" box={[60, 28, 46, 66]} count={26} size={1.5} />
        <Arrow at={[118, 58]} from={[146, 46]} />
      </Layer>
    </Close>
  ),
  'leather-edge/splits-in-sheets': (id) => (
    <Close id={id} ground={tone.green}>
      <Layer d="M50 20H138L130 50L142 76L134 104H50Z" />
      <path d="M50 24H124L116 52L128 78L120 100H50Z" fill={tone.wood} />
      <path d="M50 28H108L100 54L112 78L104 98H50Z" fill={tone.leather} />
      <path d="M50 34H90L84 56L94 78L88 94H50Z" fill={tone.wood} />
      <Strokes d="M58 48H76M58 62H74M58 78H78" of={tone.line} />
      <Arrow at={[124, 62]} from={[150, 60]} />
    </Close>
  ),
  'leather-edge/fades-into-crust': (id) => (
    <Close id={id} ground={tone.green}>
      <Flat d="M50 10H88V112H50Z" of={tone.leather} bare />
      <Stipple seed="fade-a" box={[86, 14, 18, 92]} count={50} of={tone.leather} size={5} />
      <Stipple seed="fade-b" box={[102, 16, 20, 88]} count={30} of={tone.leather} size={3.4} />
      <Stipple seed="fade-c" box={[118, 18, 24, 84]} count={18} of={tone.leather} size={2} />
      <Stipple seed="fade-hide" box={[58, 20, 30, 80]} count={18} size={1.5} />
    </Close>
  ),
  'leather-edge/torn-fresh': (id) => (
    <Close id={id} ground={tone.green}>
      <Layer d="M50 20H124L130 30L118 38L132 48L120 58L134 68L122 78L130 90L120 104H50Z">
        <path
          d="M124 20L130 30L118 38L132 48L120 58L134 68L122 78L130 90L120 104L112 104L120 90L112 78L122 68L110 58L120 48L108 38L120 30L114 20Z"
          fill={tone.bone}
        />
        <path d="M131 48l8-2M134 68l8 2M129 30l8-4M130 90l7 3" stroke={tone.bone} strokeWidth="1.6" />
        <Stipple seed="hide-torn" box={[58, 28, 44, 66]} count={24} size={1.5} />
      </Layer>
    </Close>
  ),
}
