import type { ReactNode } from 'react'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { cracked, shard } from './kit/lines.ts'
import { Flat, Shadow, Shine, Stipple, Strokes } from './kit/marks.tsx'
import { Brooch, Strap } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const onStrap = [23, 42] as const
const cell = 'M106 22L138 60L106 98L74 60Z'
const neighbours = 'M62 22L70 34L54 54ZM150 22L142 34L160 54ZM62 98L70 86L54 66ZM150 98L142 86L160 66Z'
const motif = 'M52 84C80 84 74 44 100 44S120 76 138 66S146 40 160 38'

/** Three cells side by side, on the strap-end. */
function Cells({ fill, children }: { readonly fill: string; readonly children?: ReactNode }) {
  return (
    <Strap of={tone.bronze}>
      <path d="M23 28L34 42L23 56L12 42ZM23 58L34 72L23 86L12 72Z" fill={fill} />
      {children}
    </Strap>
  )
}

/** The field itself, seen from above. */
function Field({ fill, around = fill }: { readonly fill: string; readonly around?: string }) {
  return (
    <>
      <path d={neighbours} fill={around} />
      <path d={cell} fill={fill} strokeWidth="1.8" />
    </>
  )
}

/** A face in relief: brow, eye and nose are hollows nobody cut for a fill. */
const hollows =
  'M68 50Q86 34 102 48M112 48Q128 34 146 50M72 60Q84 50 96 60Q84 68 72 60ZM118 60Q130 50 142 60Q130 68 118 60ZM106 52L100 82Q107 88 114 82'

/** What fills lines, hollows and fields. */
export const fills: Drawings = {
  'evidence/black-in-cut-lines': (id) => (
    <>
      <Strap of={tone.silver}>
        <Strokes d="M10 86C22 84 14 66 24 62S34 46 24 40S14 32 26 26" of={tone.black} width={3.4} />
        <Strokes d="M10 94H36" of={tone.black} width={2.6} />
      </Strap>
      <Lens id={id} spot={[24, 60]} ground={tone.silver}>
        <Strokes d={motif} of={tone.black} width={11} />
        <Strokes d="M50 104H164M50 18H164" of={tone.black} width={7} />
        <Strokes
          d="M66 80C76 74 78 52 92 47M121 66Q130 70 138 62M70 17H96M84 103H116"
          of={tone.gloss}
          width={1.8}
        />
        <Strokes d="M70 58l6 -8M118 48l6 -6M92 86l6 -6M138 88l6 -6" of={tone.soft} />
        <Arrow at={[104, 50]} from={[112, 72]} />
      </Lens>
    </>
  ),
  'evidence/black-in-recesses': (id) => (
    <>
      <Strap of={tone.silver}>
        <path
          d="M12 52Q17 44 22 52M25 52Q30 44 35 52M13 58q5 -4 9 0M25 58q5 -4 9 0M23 56v12q3 2 5 0"
          strokeWidth="2.2"
        />
        <Stipple seed="face-small" box={[10, 48, 26, 26]} count={20} />
      </Strap>
      <Lens id={id} spot={[18, 54]} ground={tone.silver}>
        <Stipple seed="fade-brow-a" box={[62, 34, 42, 38]} count={42} size={2} />
        <Stipple seed="fade-brow-b" box={[112, 34, 40, 38]} count={40} size={2} />
        <Stipple seed="fade-nose" box={[92, 64, 32, 28]} count={26} size={2} />
        <Strokes d={hollows} of={tone.black} width={4.4} />
        <path d="M76 60Q84 56 92 60Q84 64 76 60ZM122 60Q130 56 138 60Q130 64 122 60Z" fill={tone.silver} />
        <Strokes d="M84 98Q107 108 130 98" width={2.6} />
        <Strokes d="M104 18H114M100 24H116M66 84l8 6M140 90l8 -6" of={tone.soft} />
        <Arrow at={[116, 86]} from={[140, 98]} />
      </Lens>
    </>
  ),
  'evidence/glassy-fill': (id) => (
    <>
      <Cells fill={tone.blue}>
        <Strokes d="M17 42l7 -9M17 72l7 -9" of={tone.gloss} width={1.8} />
      </Cells>
      <Lens id={id} spot={onStrap} ground={tone.bronze}>
        <Field fill={tone.blue} />
        <Strokes
          d={`${cracked('craze-a', [90, 42], [122, 80], 3)}${cracked('craze-b', [84, 70], [124, 46], 3)}${cracked('craze-c', [106, 60], [104, 96], 3)}`}
        />
        <Strokes d="M84 58L104 33M90 60L104 43M62 28l4 6M148 30l4 6" of={tone.gloss} width={2.4} />
        {[
          [112, 72, 2.6],
          [118, 60, 1.8],
          [100, 80, 2],
        ].map(([x, y, r]) => (
          <circle key={x} cx={x} cy={y} r={r} fill={tone.bluePale} />
        ))}
      </Lens>
    </>
  ),
  'evidence/red-fill': (id) => (
    <>
      <Cells fill={tone.greenDeep}>
        <path d="M20 38l8 3l-3 8l-7 -4zM19 70l7 -3l2 8l-6 4z" fill={tone.red} />
      </Cells>
      <Lens id={id} spot={onStrap} ground={tone.bronze}>
        <Field fill={tone.greenDeep} />
        <Stipple seed="over-red" box={[86, 38, 40, 48]} count={24} />
        <Flat d={shard('red-chip', [105, 62], 17, 18, 0.25, 9)} of={tone.red} />
        <Strokes d="M93 62h24M95 70h18M95 54h20M100 48h12M98 50v22M106 46v30M114 52v18" />
        <Shadow d="M90 58L96 48L106 44L116 48L114 51L104 48L97 54L93 64Z" />
        <Arrow at={[114, 66]} from={[140, 84]} />
      </Lens>
    </>
  ),
  'evidence/white-pegs': (id) => (
    <>
      <Brooch of={tone.bronze} fill={tone.bronze}>
        {[
          [23, 44],
          [37, 52],
          [37, 68],
          [23, 76],
          [9, 68],
          [9, 52],
        ].map(([x, y]) => (
          <circle key={`${x}-${y}`} cx={x} cy={y} r="4" fill={tone.bone} />
        ))}
      </Brooch>
      <Lens id={id} spot={[10, 53]} ground={tone.bronze}>
        {[
          [86, 44],
          [130, 50],
          [104, 88],
        ].map(([x = 0, y = 0]) => (
          <g key={x}>
            <Shadow d={`M${x + 4} ${y + 16}l18 -6l-2 -16z`} />
            <circle cx={x} cy={y} r="17" fill={tone.bone} />
            <path d={`M${x - 11} ${y + 5}q3 7 9 8M${x - 13} ${y - 2}q1 -9 9 -11`} stroke={tone.soft} />
            <circle cx={x} cy={y} r="3.6" fill={tone.greenDeep} />
            <path d={`M${x + 6} ${y - 6}h0m4 7h0m-3 6h0m-7 4h0`} strokeWidth="1.8" strokeLinecap="round" />
          </g>
        ))}
        <Arrow at={[130, 50]} from={[142, 28]} />
      </Lens>
    </>
  ),
  'evidence/empty-cells': (id) => (
    <>
      <Cells fill={tone.black}>
        <Strokes d="M13 42L23 29L33 42M13 72L23 59L33 72" of={tone.gloss} />
      </Cells>
      <Lens id={id} spot={onStrap} ground={tone.bronze}>
        <Field fill={tone.rustDeep} />
        <Shadow d="M106 22L138 60L130 60L106 32L82 60L74 60Z" />
        <path d="M74 60L82 60L106 89L130 60L138 60L106 98Z" fill={tone.gold} opacity="0.5" stroke="none" />
        <Strokes d="M82 60L106 32L130 60L106 89ZM74 60H82M106 22V32M138 60H130M106 98V89" />
        <Stipple seed="paste" box={[94, 62, 24, 18]} count={16} of={tone.bone} size={2.2} />
        <Shine
          at={[
            [60, 66],
            [146, 66],
          ]}
        />
      </Lens>
    </>
  ),
  'evidence/openwork': (id) => (
    <>
      <Strap of={tone.bronze}>
        <path d="M23 28L34 42L23 56L12 42ZM23 58L34 72L23 86L12 72Z" fill={tone.paper} />
        <path d="M12 72L20 74L25 70L34 72L23 86ZM12 42L18 44L30 47L23 56Z" fill={tone.leather} />
      </Strap>
      <Lens id={id} spot={onStrap} ground={tone.bronze}>
        <Field fill={tone.air} around={tone.air} />
        <Flat d="M74 60L92 64L98 56L108 68L118 60L138 60L106 98Z" of={tone.leather} />
        <Strokes d="M92 64q10 12 34 8M86 72q20 2 30 12M98 56q-2 16 4 30M118 60q-2 12-8 26" of={tone.bone} />
        <path
          d="M106 22L138 60L106 98L74 60ZM106 28L79 60L106 92L133 60Z"
          fill={tone.rustDeep}
          fillRule="evenodd"
        />
        <Arrow at={[114, 74]} from={[142, 92]} />
      </Lens>
    </>
  ),
}
