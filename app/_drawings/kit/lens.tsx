import type { ReactNode } from 'react'
import type { Point } from './chance.ts'
import { tone } from './tones.ts'

/** The close-up stands always in the same place, so that two drawings side by side can be compared. */
export const lens = { x: 107, y: 60, r: 50 } as const

interface LensProps {
  /** Begins every id inside, so that no two drawings of a page share one. */
  readonly id: string
  /** The place on the object that is looked at. */
  readonly spot?: Point
  readonly ground?: string
  readonly children: ReactNode
}

/** A place on the object, and what a lens shows there. */
export function Lens({ id, spot, ground = tone.air, children }: LensProps) {
  return (
    <>
      <clipPath id={`${id}-lens`}>
        <circle cx={lens.x} cy={lens.y} r={lens.r} />
      </clipPath>
      {spot !== undefined && (
        <g stroke={tone.ink}>
          <circle cx={spot[0]} cy={spot[1]} r="6.5" stroke={tone.paper} strokeWidth="3.5" />
          <circle cx={spot[0]} cy={spot[1]} r="6.5" strokeWidth="1.6" />
          <path d={`M${spot[0] + 4} ${spot[1] - 5}L80 18M${spot[0] + 4} ${spot[1] + 5}L80 102`} />
        </g>
      )}
      <g clipPath={`url(#${id}-lens)`}>
        <circle cx={lens.x} cy={lens.y} r={lens.r} fill={ground} stroke="none" />
        {children}
      </g>
      <circle cx={lens.x} cy={lens.y} r={lens.r} stroke={tone.ink} strokeWidth="2" />
    </>
  )
}

/** A close-up alone, larger, where the object is the same in all that are compared. What is in it is drawn as for the lens. */
export function Close({ id, ground, children }: Omit<LensProps, 'spot'>) {
  return (
    <g transform="translate(-39.8 -7.2) scale(1.12)">
      <Lens id={id} {...(ground === undefined ? {} : { ground })}>
        {children}
      </Lens>
    </g>
  )
}

/** A short arrow to the place to look at, ending at it, coming from `from`. */
export function Arrow({ at, from }: { readonly at: Point; readonly from: Point }) {
  const [dx, dy] = [at[0] - from[0], at[1] - from[1]]
  const length = Math.hypot(dx, dy)
  const [ux, uy] = [dx / length, dy / length]
  const wing = (side: number) =>
    `${Math.round((at[0] - ux * 5.5 + side * uy * 3.6) * 10) / 10} ${Math.round((at[1] - uy * 5.5 - side * ux * 3.6) * 10) / 10}`
  const d = `M${from[0]} ${from[1]}L${at[0]} ${at[1]}M${wing(1)}L${at[0]} ${at[1]}L${wing(-1)}`
  return (
    <>
      <path d={d} stroke={tone.paper} strokeWidth="5" />
      <path d={d} stroke={tone.ink} strokeWidth="1.9" />
    </>
  )
}
