import type { ReactNode } from 'react'
import { strewn } from './kit/chance.ts'
import type { Drawings } from './kit/drawn.ts'
import { cracked } from './kit/lines.ts'
import { Grains, Strokes } from './kit/marks.tsx'
import { tone } from './kit/tones.ts'

const knife = 'M4 46H44V38Q118 34 156 52Q130 82 44 80V70H4Z'

/** One knife lying, whole or in what state it is. */
function Whole({ children }: { readonly children?: ReactNode }) {
  return (
    <>
      <path d={knife} fill={tone.rust} stroke={tone.ink} strokeWidth="1.4" />
      {children}
    </>
  )
}

/** What is gone is only an outline. */
function Left({ d }: { readonly d: string }) {
  return (
    <>
      <path d={knife} stroke={tone.soft} strokeWidth="1.4" strokeDasharray="3 4" />
      <path d={d} fill={tone.rust} stroke={tone.ink} strokeWidth="1.4" />
    </>
  )
}

/** How easily it breaks, and how much of it is there. */
export const handling: Drawings = {
  'fragility/sound': () => (
    <Whole>
      <Strokes d="M52 46Q104 42 138 52M10 52H38" of={tone.gloss} width={2.4} />
      <Strokes d="M44 46V70" />
    </Whole>
  ),
  'fragility/fragile': () => (
    <Whole>
      <Strokes
        d={`${cracked('through', [70, 38], [78, 80], 3)}${cracked('across', [104, 38], [98, 78], 3)}${cracked('long', [76, 60], [132, 56], 2)}${cracked('tang', [26, 46], [30, 70], 2, 4)}`}
        width={1.9}
      />
    </Whole>
  ),
  'fragility/friable': () => (
    <>
      <path
        d="M6 48L20 46L30 50L44 46L52 40L60 44L74 37L82 42L98 38L108 45L120 42L132 52L150 54L136 64L122 66L112 76L98 72L86 80L72 74L60 80L46 76L40 68L24 72L8 66Z"
        fill={tone.rust}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      <Grains points={strewn('crumbling', 34, [14, 46, 122, 26], 9)} of={tone.rustDeep} size={2.4} />
      <Grains points={strewn('crumbs', 34, [14, 84, 132, 18], 6)} of={tone.rust} size={3.4} />
    </>
  ),
  'fragility/in-pieces': () => (
    <g fill={tone.rust} stroke={tone.ink} strokeWidth="1.4">
      <path d="M2 62H28L34 70L28 78L32 86H2Z" />
      <path d="M40 48H42V38Q58 36 70 37L64 50L74 60L66 78L40 79V72L36 62Z" />
      <path d="M84 30Q100 30 112 32L104 48L116 56L106 72L82 76L90 58L80 48Z" />
      <path d="M120 56Q144 56 158 68Q142 84 112 92L122 76L112 68Z" />
    </g>
  ),
  'completeness/complete': () => <Whole />,
  'completeness/most': () => <Left d="M4 46H44V38Q90 36 116 40L110 52L118 62L110 74Q80 81 44 80V70H4Z" />,
  'completeness/part': () => <Left d="M4 46H44V38H60L54 50L64 60L58 80H44V70H4Z" />,
  'completeness/fragment': () => (
    <path d="M70 48L92 44L98 58L88 72L72 68L66 58Z" fill={tone.rust} stroke={tone.ink} strokeWidth="1.4" />
  ),
}
