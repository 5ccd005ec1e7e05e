import type { ReactNode } from 'react'
import { tone } from './tones.ts'

/** The objects stand at the left, upright, each always the same: what differs is what is seen on it. */
interface ObjectProps {
  readonly of: string
  readonly children?: ReactNode
}

export const knifeOutline = 'M14 113V84H9V34Q10 16 28 6Q34 34 33 84H24V113Z'
export const strapOutline = 'M6 10H40V76Q40 100 23 113Q6 100 6 76Z'
export const weightOutline = 'M10 44Q23 36 36 44L42 98Q23 110 4 98Z'

function Outlined({ d, of, children }: ObjectProps & { readonly d: string }) {
  return (
    <>
      <path d={d} fill={of} stroke={tone.ink} strokeWidth="1.4" />
      {children}
    </>
  )
}

export function Knife(props: ObjectProps) {
  return <Outlined d={knifeOutline} {...props} />
}

/** A strap-end of copper alloy with two rivets. */
export function Strap({ of, children }: ObjectProps) {
  return (
    <Outlined d={strapOutline} of={of}>
      {children}
      <g fill={tone.paper}>
        <circle cx="14" cy="18" r="2.6" />
        <circle cx="32" cy="18" r="2.6" />
      </g>
    </Outlined>
  )
}

/** A weight of lead or tin, with its eye. */
export function Weight({ of, children }: ObjectProps) {
  return (
    <>
      <circle cx="23" cy="34" r="7" stroke={tone.ink} strokeWidth="6.4" />
      <circle cx="23" cy="34" r="7" stroke={of} strokeWidth="3.8" />
      <Outlined d={weightOutline} of={of}>
        {children}
      </Outlined>
    </>
  )
}

/** A coin with a plain cross and a beaded edge. */
export function Coin({ of, children }: ObjectProps) {
  return (
    <>
      <circle cx="23" cy="60" r="20" fill={of} stroke={tone.ink} strokeWidth="1.4" />
      <circle cx="23" cy="60" r="16.5" strokeWidth="1.4" strokeDasharray="0.1 3.6" strokeLinecap="round" />
      <path d="M20 49h6v8h8v6h-8v8h-6v-8h-8v-6h8z" />
      {children}
    </>
  )
}

/** A disc brooch with one field for glass or enamel. */
export function Brooch({ of, fill, children }: ObjectProps & { readonly fill: string }) {
  return (
    <>
      <circle cx="23" cy="60" r="20" fill={of} stroke={tone.ink} strokeWidth="1.4" />
      <circle cx="23" cy="60" r="13" fill={fill} strokeWidth="1.4" />
      {children}
    </>
  )
}

export function Nail({ of, children }: ObjectProps) {
  return (
    <Outlined d="M8 12Q23 2 38 12L36 20H28L25 108L22 113L19 108L18 20H10Z" of={of}>
      {children}
    </Outlined>
  )
}

/** A clear bag with its strip, and what lies in it. */
export function Bag() {
  return (
    <g stroke={tone.ink} strokeWidth="1.4">
      <path d="M16 14H144V112Q80 116 16 112Z" fill={tone.wash} />
      <path d="M16 14H144V24H16Z" fill={tone.silver} />
      <path d="M16 19H144" />
      <path d="M22 34L30 100M136 36L132 60" stroke={tone.soft} />
    </g>
  )
}
