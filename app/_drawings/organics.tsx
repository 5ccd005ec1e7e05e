import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { Arrow, Lens } from './kit/lens.tsx'
import { Flat, Grains, Shadow, Stipple, Strokes } from './kit/marks.tsx'
import { Knife, Nail, Strap } from './kit/objects.tsx'
import { tone } from './kit/tones.ts'
import { threads } from './weave.ts'

const rust = <Stipple seed="plan-crust" box={[58, 12, 96, 96]} count={34} />

const grain =
  'M60 10Q64 60 58 112M70 8Q74 50 69 112M80 8Q85 60 80 112M91 8Q94 40 92 112M101 8Q105 60 101 112M112 8Q114 50 112 112M122 8Q126 60 122 112M133 8Q135 50 133 112M144 8Q148 60 143 112'

/** What once lay against the metal. */
export const organics: Drawings = {
  'evidence/weave-pattern': (id) => (
    <>
      <Knife of={tone.rust}>
        <path d="M11 42h20M11 47h21M11 52h21M11 57h21M11 62h21M13 40v25M18 40v25M23 40v25M28 40v25" />
      </Knife>
      <Lens id={id} spot={[22, 52]} ground={tone.rust}>
        {rust}
        <g strokeLinecap="butt">
          <path d={threads.under} strokeWidth="8.6" />
          <path d={threads.under} stroke={tone.wood} strokeWidth="6.4" />
          <path d={threads.over} strokeWidth="8.6" />
          <path d={threads.over} stroke={tone.bone} strokeWidth="6.4" />
        </g>
      </Lens>
    </>
  ),
  'evidence/wood-grain': (id) => (
    <>
      <Nail of={tone.rust}>
        <Flat d="M14 40H33L31 84H15Z" of={tone.wood} />
        <Strokes d="M18 40V84M22 40V84M26 40V84M29 40V84" />
      </Nail>
      <Lens id={id} spot={[23, 60]} ground={tone.wood}>
        <Strokes d={grain} width={1.4} />
        <g fill={tone.rustDeep}>
          {strewn('pores', 14, [66, 20, 80, 80], 22).map(([x, y]) => (
            <ellipse key={x} cx={Math.round(x)} cy={Math.round(y)} rx="1.7" ry="4.2" />
          ))}
        </g>
      </Lens>
    </>
  ),
  'evidence/leather-like-layer': (id) => (
    <>
      <Strap of={tone.green}>
        <Flat d="M2 46H44L42 78H4Z" of={tone.leather} />
        <path d="M6 51h34M7 73h32" stroke={tone.bone} strokeWidth="1.6" strokeDasharray="3 3" />
      </Strap>
      <Lens id={id} spot={[23, 60]} ground={tone.green}>
        <Shadow d="M50 40Q90 34 126 46L132 92L120 112H50Z" />
        <Flat d="M50 30Q90 26 122 36L126 84L116 104L50 108Z" of={tone.leather} />
        <Flat d="M126 84L116 104L112 92Q116 84 126 84Z" of={tone.wood} />
        <g fill={tone.black}>
          {[62, 74, 86, 98, 110].map((x) => (
            <ellipse key={x} cx={x} cy={38 + (x - 62) * 0.06} rx="2.6" ry="1.8" />
          ))}
        </g>
        <Stipple seed="follicles" box={[58, 46, 58, 52]} count={38} size={1.6} />
        <Strokes d="M60 70q12 -6 22 0M78 90q10 -6 20 -2" width={1.3} />
        <Arrow at={[112, 40]} from={[138, 26]} />
      </Lens>
    </>
  ),
  'evidence/fibres': (id) => (
    <>
      <Knife of={tone.rust}>
        <path
          d="M8 44Q20 40 36 48M10 58Q24 66 36 56M14 70Q18 52 30 38"
          stroke={tone.bone}
          strokeWidth="1.4"
        />
      </Knife>
      <Lens id={id} spot={[22, 52]} ground={tone.rust}>
        {rust}
        <g strokeLinecap="round">
          <path d={hairs} strokeWidth="3.6" />
          <path d={hairs} stroke={tone.bone} strokeWidth="1.8" />
          <path d={root} strokeWidth="5.4" />
          <path d={root} stroke={tone.wood} strokeWidth="3.4" />
        </g>
        <Grains
          points={[
            [88, 28],
            [142, 80],
            [70, 98],
          ]}
          of={tone.soil}
          size={3}
        />
      </Lens>
    </>
  ),
}

const hairs = 'M56 40Q86 26 100 44T150 40M60 52Q90 58 116 30M72 22Q84 60 62 84'
const root =
  'M158 66Q132 64 118 76Q100 86 84 104M118 76Q104 72 92 76M136 66Q130 84 118 104M104 84Q104 94 100 106'
