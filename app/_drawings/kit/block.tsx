import type { ReactNode } from 'react'
import { between, short, softLine, uneven } from './lines.ts'
import { tone } from './tones.ts'

export interface Layer {
  readonly of: string
  readonly deep: number
  /** How uneven its underside is. */
  readonly rough?: number
}

interface BlockProps {
  /** A word from which its unevenness follows. */
  readonly seed: string
  /** From the surface down; the metal follows. */
  readonly layers?: readonly Layer[]
  readonly surface?: string
  readonly metal?: string
  readonly rough?: number
  /** Where the cut begins: the smaller, the more of the cut is seen. */
  readonly edge?: number
  readonly children?: ReactNode
}

const back = 36

/** A piece cut out of a surface: one looks over the surface from the back edge to the cut, and at the layers in the cut. */
export function Block({
  seed,
  layers = [],
  surface,
  metal = tone.iron,
  rough = 1.2,
  edge = 80,
  children,
}: BlockProps) {
  const far = uneven(`${seed}-far`, back, rough * 0.7)
  let top = uneven(`${seed}-near`, edge, rough)
  const near = top
  let level = edge
  const cut = layers.map((layer, index) => {
    level += layer.deep
    const below = uneven(`${seed}-${index}`, level, layer.rough ?? 1)
    const d = between(top, below)
    top = below
    return <path key={`${layer.of}${level}`} d={d} fill={layer.of} />
  })
  return (
    <>
      <path d={between(far, near)} fill={surface ?? layers[0]?.of ?? metal} stroke="none" />
      <path d={`${softLine(top)}V112H52Z`} fill={metal} stroke="none" />
      <path d={hatch(level + 4)} strokeWidth="0.8" opacity="0.55" />
      {cut}
      <path d={softLine(far) + softLine(near)} />
      {children}
    </>
  )
}

/** Cut metal is hatched. */
function hatch(from: number): string {
  let d = ''
  // A minus parts the two numbers; where the second has none, a space does.
  const slant = `${short(112 - from)}${from > 112 ? ' ' : ''}${short(from - 112)}`
  for (let x = 50; x < 165; x += 9) d += `M${x} 112l${slant}`
  return d
}
