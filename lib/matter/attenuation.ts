/** Mass attenuation of one element as printed: energy [keV] and coefficient [cm²/g], rising; an edge stands twice. */
export type AttenuationTable = readonly (readonly [energyKev: number, cm2PerG: number])[]

/** A substance as mass fractions, each with the table of its element. */
export type Mixture = readonly { readonly massFraction: number; readonly table: AttenuationTable }[]

/** The first point above the energy: at an edge itself the side above it counts, where the line would be excited. */
function pointAbove(table: AttenuationTable, energyKev: number): number {
  let low = 0
  let high = table.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (table[middle]![0] <= energyKev) low = middle + 1
    else high = middle
  }
  return low
}

/**
 * Mass attenuation coefficient of one element [cm²/g], between two printed points on a straight line of both logarithms.
 * @param table [keV, cm²/g] the printed points of the element; no line is drawn across an edge
 * @param energyKev [keV] of the photon
 * @source Hubbell & Seltzer 1995, table 3; log-log interpolation as its authors advise
 * @valid between the first and the last printed energy; NaN outside
 * @agrees exact at the printed points
 */
export function massAttenuationCm2PerG(table: AttenuationTable, energyKev: number): number {
  const first = table[0]
  const last = table.at(-1)
  if (!first || !last || !(energyKev >= first[0] && energyKev <= last[0])) return Number.NaN
  const above = pointAbove(table, energyKev)
  const left = table[above - 1]!
  const right = table[above]
  if (right === undefined || left[0] === energyKev) return left[1]
  const share = Math.log(energyKev / left[0]) / Math.log(right[0] / left[0])
  return left[1] * (right[1] / left[1]) ** share
}

/**
 * Mass attenuation coefficient of a mixture or compound [cm²/g]: its elements by their shares of the mass.
 * @param mixture [1, cm²/g] mass fractions, which sum to one, with the table of each element
 * @param energyKev [keV] of the photon
 * @source Hubbell & Seltzer 1995, additivity of coefficients by mass
 * @valid where every table of it holds; NaN outside. Binding and texture are left out.
 * @agrees exact with the sum
 */
export function mixedAttenuationCm2PerG(mixture: Mixture, energyKev: number): number {
  return mixture.reduce(
    (sum, { massFraction, table }) => sum + massFraction * massAttenuationCm2PerG(table, energyKev),
    0,
  )
}
