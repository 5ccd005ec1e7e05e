import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { Shine, Strokes } from './kit/marks.tsx'
import { Strap } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'

const spot = [23, 58] as const
const step = 'M52 88L72 48L92 88L112 48L132 88L152 48L172 88'
/** Bundles of scratches: within a bundle all one way, no pattern, the ends uneven. */
const bundle =
  'M62 24l48 12M58 28l56 14M66 34l42 11M56 36l44 11M116 20l26 14M110 26l30 16M114 32l34 18' +
  'M54 72l74-14M60 77l84-16M56 82l70-13M66 86l76-14M58 90l60-11' +
  'M70 102l32-14M80 106l36-16M92 108l42-18'

/** How it was made and decorated: one strap-end, one light from the left. */
export const making: Drawings = {
  'evidence/cut-lines': (id) => (
    <>
      <Strap of={tone.bronze}>
        <Strokes d="M9 46L16 34L23 46L30 34L37 46M9 76L16 64L23 76L30 64L37 76M9 52H37M9 58H37" width={1.4} />
      </Strap>
      <Lens id={id} spot={spot} ground={tone.bronze}>
        <Strokes d={`${step}M50 34H164M50 102H164`} width={3.4} />
        <path
          d={`${step}M50 34H164M50 102H164`}
          transform="translate(1.2 1.8)"
          stroke={tone.gloss}
          strokeWidth="1.1"
        />
        <Shine
          at={[
            [66, 26],
            [128, 26],
          ]}
        />
      </Lens>
    </>
  ),
  'evidence/tool-marks': (id) => (
    <>
      <Strap of={tone.bronze}>
        <Strokes d="M9 44L36 38M8 50L38 43M9 56L30 51M10 62L37 55M8 69L34 62M10 75L36 69" />
      </Strap>
      <Lens id={id} spot={spot} ground={tone.bronze}>
        <path d="M50 10H164V38L50 62Z" fill={tone.gold} opacity="0.45" stroke="none" />
        <path d="M50 112V96L164 74V112Z" fill={tone.rustDeep} opacity="0.35" stroke="none" />
        <Strokes d={bundle} />
        <path d={bundle} transform="translate(0.6 1.5)" stroke={tone.gloss} strokeWidth="0.8" />
      </Lens>
    </>
  ),
  'evidence/cast-relief': (id) => (
    <>
      <Strap of={tone.bronze}>
        <path d="M23 30L36 46L23 62L10 46ZM23 62L36 78L23 94L10 78Z" fill={tone.gold} />
        <path d="M10 46H36L23 62ZM10 78H36L23 94Z" fill={tone.rustDeep} />
        <Strokes d="M23 30V62M23 62V94" />
      </Strap>
      <Lens id={id} spot={spot} ground={tone.leather}>
        <g>
          <path
            d="M76 12L104 40L76 70L50 40ZM138 12L164 40L138 70L112 40ZM107 50L138 84L107 116L76 84Z"
            fill={tone.bronze}
          />
          <path d="M76 12L104 40H76ZM138 12L164 40H138ZM107 50L138 84H107Z" fill={tone.gold} />
          <path d="M76 70L104 40H76ZM138 70L164 40H138ZM107 116L138 84H107Z" fill={tone.rustDeep} />
          <path d="M76 70L50 40H76ZM138 70L112 40H138ZM107 116L76 84H107Z" fill={tone.rust} />
        </g>
        <Strokes d="M60 38L74 22M122 38L136 22M90 82L105 62" of={tone.gloss} width={2} />
      </Lens>
    </>
  ),
  'evidence/punched-dots': (id) => (
    <>
      <Strap of={tone.bronze}>
        {[36, 48, 60, 72, 84].map((y) => (
          <path key={y} d={`M13 ${y}a3 3 0 1 0 .1 0M31 ${y}a3 3 0 1 0 .1 0`} fill={tone.rustDeep} />
        ))}
      </Strap>
      <Lens id={id} spot={[31, 62]} ground={tone.bronze}>
        {punches.map(([x, y]) => (
          <g key={`${x}-${y}`}>
            <circle cx={x} cy={y} r="8.4" fill={tone.rustDeep} />
            <path d={`M${x - 5.5} ${y + 5}a7.6 7.6 0 0 0 12.6 -5`} stroke={tone.gloss} strokeWidth="1.8" />
            <circle cx={x} cy={y} r="3" fill={tone.bronze} />
          </g>
        ))}
        <Arrow at={[107, 60]} from={[118, 84]} />
      </Lens>
    </>
  ),
}

const punches = [
  [67, 34],
  [87, 34],
  [107, 34],
  [127, 34],
  [147, 34],
  [67, 60],
  [87, 60],
  [107, 60],
  [127, 60],
  [147, 60],
  [67, 98],
  [87, 98],
  [107, 98],
  [127, 98],
] as const
