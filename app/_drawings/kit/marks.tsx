import { heaped, strewn, type Box, type Point } from './chance.ts'
import { dots, short } from './lines.ts'
import { tone } from './tones.ts'

interface GrainsProps {
  readonly points: readonly Point[]
  readonly of: string
  readonly size?: number
}

/** Loose grains: each with a rim, so that pale ones show on pale paper. */
export function Grains({ points, of, size = 2.2 }: GrainsProps) {
  const d = dots(points)
  return (
    <g strokeLinecap="round">
      <path d={d} strokeWidth={short(size + 1.1)} />
      <path d={d} stroke={of} strokeWidth={size} />
    </g>
  )
}

interface PowderProps {
  readonly seed: string
  readonly at: Point
  readonly across: number
  readonly up?: number
  readonly count?: number
  readonly of: string
  readonly size?: number
}

/** A heap of loose powder: thick in the middle, single grains beyond its edge. */
export function Powder({ seed, at, across, up = across * 0.5, count = 50, of, size = 2.2 }: PowderProps) {
  return <Grains points={heaped(seed, count, at, across, up)} of={of} size={size} />
}

interface StippleProps {
  readonly seed: string
  readonly box: Box
  readonly count: number
  readonly of?: string
  readonly size?: number
}

/** Even small dots: the grain of a surface. */
export function Stipple({ seed, box, count, of, size = 1.2 }: StippleProps) {
  return (
    <path
      d={dots(strewn(seed, count, box, 6))}
      stroke={of}
      strokeWidth={size}
      strokeLinecap="round"
      opacity="0.6"
    />
  )
}

interface RoundProps {
  readonly at: Point
  readonly r: number
  readonly of: string
}

/** A drop that stands on the surface: full, with a light in it. */
export function Bead({ at: [x, y], r, of }: RoundProps) {
  const light = short(r * 0.6)
  return (
    <>
      <ellipse
        cx={short(x + r * 0.3)}
        cy={short(y + r * 0.8)}
        rx={r}
        ry={short(r * 0.4)}
        fill={tone.line}
        stroke="none"
        opacity="0.35"
      />
      <circle cx={x} cy={y} r={r} fill={of} />
      <path
        d={`M${short(x - r * 0.62)} ${y}a${light} ${light} 0 0 1 ${light} -${light}`}
        stroke={tone.gloss}
        strokeWidth={short(r * 0.32)}
        strokeLinecap="round"
      />
    </>
  )
}

/** A bump with a broad foot, dull: its shadow falls to the right. */
export function Mound({ at: [x, y], r, of, up = r }: RoundProps & { readonly up?: number }) {
  const d = `M${x - r} ${y}c${short(r * 0.3)} ${short(up * -1.3)} ${short(r * 1.7)} ${short(up * -1.3)} ${r * 2} 0q${-r} ${short(r * 0.45)} ${-2 * r} 0z`
  return (
    <>
      <Shadow d={`M${x} ${y + 2}h${short(r * 1.5)}l${short(r * -0.8)} ${short(-up * 0.6)}z`} />
      <path d={d} fill={of} />
    </>
  )
}

/** A soft swelling as of wax: no edge to catch on, a long dull light. */
export function Wax({ d, gloss, of }: { readonly d: string; readonly gloss: string; readonly of: string }) {
  return (
    <>
      <path d={d} fill={of} />
      <path d={gloss} stroke={tone.gloss} strokeWidth="2.6" strokeLinecap="round" opacity="0.85" />
    </>
  )
}

/** A flash of metal. */
export function Glint({ at: [x, y], r = 6 }: { readonly at: Point; readonly r?: number }) {
  const near = short(r * 0.22)
  const far = short(r - r * 0.22)
  const d = `M${x} ${y - r}l${near} ${far} ${far} ${near} -${far} ${near} -${near} ${far} -${near} -${far} -${far} -${near} ${far} -${near}z`
  return <path d={d} fill={tone.gloss} strokeWidth="0.8" />
}

/** Slanting strokes in pairs: a surface that shines. */
export function Shine({ at, of = tone.gloss }: { readonly at: readonly Point[]; readonly of?: string }) {
  const d = at.map(([x, y]) => `M${x} ${y}l9-9m-2 9l5-5`).join('')
  return <path d={d} stroke={of} strokeWidth="1.9" strokeLinecap="round" />
}

interface StrokesProps {
  readonly d: string
  readonly of?: string
  readonly width?: number
}

export function Strokes({ d, of, width }: StrokesProps) {
  return <path d={d} stroke={of} strokeWidth={width} />
}

/** A flat tone with its outline. */
export function Flat({
  d,
  of,
  bare = false,
}: {
  readonly d: string
  readonly of: string
  readonly bare?: boolean
}) {
  return bare ? <path d={d} fill={of} stroke="none" /> : <path d={d} fill={of} />
}

/** A shadow on what lies beneath. */
export function Shadow({ d }: { readonly d: string }) {
  return <path d={d} fill={tone.line} stroke="none" opacity="0.3" />
}
