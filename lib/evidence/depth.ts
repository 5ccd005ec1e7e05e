import type { Depth } from '../knowledge/evidence.ts'
import { mixedAttenuationCm2PerG } from '../matter/attenuation.ts'
import { escapeDepthUm } from '../matter/transmission.ts'
import type { EvidenceBase } from './base.ts'

/** A line of which less than a tenth comes out is as good as lost: a house rule. */
const lost = 0.1
/** The usual angle between surface and detector [°]. */
const takeOffDeg = 45

/** The thickness of a crust through which just a tenth of a line still comes out [µm]. */
export function lostBelowUm({ line, through }: Pick<Depth, 'line' | 'through'>, base: EvidenceBase): number {
  const [symbol, name] = line.split(' ')
  const bySymbol = (wanted: string) =>
    Object.values(base.elements).find((element) => element.symbol === wanted)
  const energyKev = bySymbol(symbol!)?.linesKev[name!]
  const matrix = base.matrices[through]
  if (energyKev === undefined || matrix === undefined) return Number.NaN
  const mixture = matrix.parts.map(([part, massFraction]) => ({
    massFraction,
    table: bySymbol(part)?.attenuation ?? [],
  }))
  const cm2PerG = mixedAttenuationCm2PerG(mixture, energyKev)
  return escapeDepthUm(1 - lost, cm2PerG, matrix.densityGPerCm3, takeOffDeg)
}

/**
 * How many crusts hide the line: the share of thicknesses between the two figures, each step of the same ratio as likely
 * as the next, through which too little comes out.
 */
export function hiddenShare(depth: Depth, base: EvidenceBase): number {
  const lostBelow = lostBelowUm(depth, base)
  const [from, to] = depth.crustUm
  if (!(lostBelow > 0)) throw new Error(`nothing is known of ${depth.line} through ${depth.through}`)
  if (to <= from) return from > lostBelow ? 1 : 0
  return Math.min(1, Math.max(0, Math.log(to / lostBelow) / Math.log(to / from)))
}
