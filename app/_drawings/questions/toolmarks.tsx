import type { ReactNode } from 'react'
import { strewn } from '../kit/chance.ts'
import type { Drawings } from '../kit/drawn.ts'
import { Arrow } from '../kit/lens.tsx'
import { blot } from '../kit/lines.ts'
import { Flat, Shadow, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** A whole blade with its tang: back above, edge below, a raised rib, a seam at the tang. */
function Blade({ marks, children }: { readonly marks: string; readonly children?: ReactNode }) {
  return (
    <>
      <path d={blade} fill={tone.iron} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M36 56H124Q130 60 124 64H36Z" fill={tone.silver} />
      <Shadow d="M36 64H124L122 68H36Z" />
      <path d="M36 32V88" strokeWidth="2" />
      <path d={marks} strokeWidth="2.2" strokeLinecap="round" />
      {children}
    </>
  )
}
const blade = 'M4 48H30V32H112Q146 42 156 64Q140 86 96 88H30V74H4Z'

/** A plate with one old broken edge, whole to its other sides. */
function Broken({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path
        d="M10 14H128L122 32L134 44L126 62L136 78L124 92L130 106H10Z"
        fill={tone.bronze}
        stroke={tone.ink}
        strokeWidth="1.4"
      />
      {children}
    </>
  )
}

const boss = (x: number, y: number, r: number) =>
  `M${x - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0z`
const lit = (x: number, y: number, r: number) =>
  `M${x - r + 2} ${y}a${r - 2} ${r - 2} 0 0 1 ${r - 2} ${2 - r}`

/** Front and back of one thin sheet with a row of dots. */
function Sheet({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <path d="M8 20H68V100H8ZM92 20H152V100H92Z" fill={tone.bronze} stroke={tone.ink} strokeWidth="1.4" />
      <path
        d={rows(24)
          .map(([x, y]) => boss(x, y, 5))
          .join('')}
        fill={tone.rustDeep}
      />
      <path d="M68 12q12-8 24 0m-7-4l7 4-3-8" stroke={tone.ink} strokeWidth="1.8" />
      {children}
    </>
  )
}
const rows = (left: number) =>
  [38, 60, 82].flatMap((y) => [left, left + 14, left + 28].map((x) => [x, y] as const))

const strokes = (list: readonly (readonly [number, number])[]) =>
  list.map(([x, y]) => `M${Math.round(x)} ${Math.round(y)}l7-6`).join('')

/** Where marks of tools lie, how relief is ordered, what shows behind dots. */
export const toolmarks: Drawings = {
  'toolmark-place/working-edge': () => (
    <Blade marks="M46 86l6-7M56 86l6-7M66 86l6-7M76 86l6-7M86 86l6-7M96 86l6-7M106 85l6-8M116 82l5-8M126 80l4-8M136 75l1-9M145 70l-3-8">
      <Flat d="M60 89l4-7 4 7zM100 89l4-7 4 6z" of={tone.paper} bare />
      <Arrow at={[90, 90]} from={[90, 114]} />
    </Blade>
  ),
  'toolmark-place/backs-and-seams': () => (
    <Blade marks="M50 40l6-6M60 40l6-6M70 40l6-6M80 40l6-6M90 40l6-6M100 40l6-6M110 41l5-6M26 56l8-4M26 64l8-4M26 72l8-4M38 46l6-4M38 78l6-4M38 84l6-4">
      <Arrow at={[84, 31]} from={[84, 8]} />
      <Arrow at={[34, 86]} from={[26, 110]} />
    </Blade>
  ),
  'toolmark-place/high-places': () => (
    <Blade marks="M40 63l5-6M49 63l5-6M58 63l5-6M67 63l5-6M76 63l5-6M85 63l5-6M94 63l5-6M103 63l5-6M112 63l5-6">
      <Arrow at={[84, 56]} from={[84, 14]} />
    </Blade>
  ),
  'toolmark-place/one-gash': () => (
    <Blade marks="">
      <path d="M62 84L104 38L109 41L70 87Z" fill={tone.line} />
      <Strokes d="M60 80L101 36" of={tone.gloss} width={2} />
      <Arrow at={[94, 56]} from={[130, 22]} />
    </Blade>
  ),
  'toolmark-place/whole-surface': () => (
    <Blade
      marks={strokes([
        ...strewn('marks-up', 22, [42, 42, 84, 12], 9),
        ...strewn('marks-rib', 8, [40, 63, 76, 1], 8),
        ...strewn('marks-low', 26, [42, 74, 88, 10], 8),
      ])}
    />
  ),
  'relief-order/a-design': () => (
    <Broken>
      <path d="M16 20H122M16 100H124M16 26H120M16 94H122" />
      {[38, 98].map((x) => (
        <g key={x}>
          <path d={boss(x, 60, 17)} fill={tone.gold} />
          <path d={boss(x, 60, 7)} fill={tone.bronze} />
          <path d={lit(x, 60, 17)} stroke={tone.gloss} strokeWidth="2.2" />
        </g>
      ))}
      <path d="M68 38L78 60L68 82L58 60Z" fill={tone.gold} />
      <path
        d={[26, 44, 62, 80, 98, 114].map((x) => boss(x, 33, 3) + boss(x, 87, 3)).join('')}
        fill={tone.gold}
      />
    </Broken>
  ),
  'relief-order/anywhere': () => (
    <Broken>
      {[
        [34, 36, 16, 11],
        [78, 30, 9, 7],
        [58, 66, 19, 13],
        [104, 58, 11, 14],
        [28, 88, 12, 9],
        [128, 46, 12, 10],
        [96, 92, 16, 9],
      ].map(([x = 0, y = 0, across = 1, up = 1]) => (
        <g key={x}>
          <Shadow d={blot(`lump-${x}`, [x + 3, y + 3], across, up, 0.3, 9)} />
          <Flat d={blot(`lump-${x}`, [x, y], across, up, 0.3, 9)} of={tone.rust} />
        </g>
      ))}
      <Arrow at={[132, 50]} from={[150, 80]} />
    </Broken>
  ),
  'dots-back/bump-behind': () => (
    <Sheet>
      <path
        d={rows(108)
          .map(([x, y]) => boss(x + 2, y + 2, 5))
          .join('')}
        fill={tone.rustDeep}
        stroke="none"
      />
      <path
        d={rows(108)
          .map(([x, y]) => boss(x, y, 5))
          .join('')}
        fill={tone.gold}
      />
      <path
        d={rows(108)
          .map(([x, y]) => lit(x, y, 5))
          .join('')}
        stroke={tone.gloss}
        strokeWidth="1.8"
        strokeLinecap="round"
      />
    </Sheet>
  ),
  'dots-back/hole-through': () => (
    <Sheet>
      {[
        [122, 38],
        [108, 60],
        [136, 60],
        [122, 82],
      ].map(([x = 0, y = 0]) => (
        <g key={`${x}-${y}`}>
          <path d={boss(x, y, 5)} fill={tone.gloss} />
          <path
            d={`M${x - 10} ${y}h-3M${x + 10} ${y}h3M${x} ${y - 9}v-3M${x} ${y + 9}v3M${x - 7} ${y - 7}l-2-2M${x + 7} ${y + 7}l2 2M${x + 7} ${y - 7}l2-2M${x - 7} ${y + 7}l-2 2`}
            strokeWidth="1.6"
          />
        </g>
      ))}
    </Sheet>
  ),
}
