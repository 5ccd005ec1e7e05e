import type { ReactNode } from 'react'
import type { Point } from '../kit/chance.ts'
import { Grains, Strokes } from '../kit/marks.tsx'
import { tone } from '../kit/tones.ts'

/** The whole knife lying, with its wooden grip riveted on. */
export function Lying({
  specks,
  children,
}: {
  readonly specks: readonly Point[]
  readonly children?: ReactNode
}) {
  return (
    <>
      <path d="M6 66Q24 38 104 36V84Q40 86 6 66Z" fill={tone.rust} stroke={tone.ink} strokeWidth="1.4" />
      <path d="M104 40H154V80H104Z" fill={tone.wood} stroke={tone.ink} strokeWidth="1.4" />
      <Strokes d="M108 48H150M108 56H150M108 64H150M108 72H150" of={tone.soft} />
      <g fill={tone.rust}>
        <circle cx="116" cy="60" r="4" />
        <circle cx="142" cy="60" r="4" />
      </g>
      <Grains points={specks} of={tone.gloss} size={3} />
      {children}
    </>
  )
}
