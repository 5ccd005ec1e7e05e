/** A slanted way is longer than the layer is thick by one over the sine of its angle to the surface. */
const pathCm = (thicknessUm: number, angleDeg: number) =>
  (thicknessUm * 1e-4) / Math.sin((angleDeg * Math.PI) / 180)

const slanting = (angleDeg: number) => angleDeg > 0 && angleDeg <= 90

/**
 * Share of the photons that comes through a layer [1].
 * @param cm2PerG [cm²/g] mass attenuation coefficient of the layer at the energy of the photons
 * @param densityGPerCm3 [g/cm³] of the layer
 * @param thicknessUm [µm] of the layer
 * @param angleDeg [°] between the ray and the surface; 90 goes straight through
 * @source Beer's law; Hubbell & Seltzer 1995, equation 1
 * @valid narrow beam of one energy, an even layer without cracks; thickness 0 or more, angle above 0 to 90; NaN outside
 * @agrees exact with the law
 */
export function transmission(
  cm2PerG: number,
  densityGPerCm3: number,
  thicknessUm: number,
  angleDeg: number,
): number {
  if (!(thicknessUm >= 0) || !slanting(angleDeg)) return Number.NaN
  return Math.exp(-cm2PerG * densityGPerCm3 * pathCm(thicknessUm, angleDeg))
}

/**
 * Depth out of which a share of the signal comes, if only the way out weakens it [µm].
 * @param share [1] of the signal: 0.9 for the usual information depth
 * @param cm2PerG [cm²/g] mass attenuation coefficient of the matrix at the energy of the line
 * @param densityGPerCm3 [g/cm³] of the matrix
 * @param takeOffDeg [°] between surface and detector
 * @source Beer's law read for the depth: −ln(1 − share) · sin(take-off) / (µ/ρ · ρ)
 * @valid an even matrix without cracks, lines of one energy; share 0 to below 1, angle above 0 to 90; NaN outside
 * @agrees exact with transmission
 */
export function escapeDepthUm(
  share: number,
  cm2PerG: number,
  densityGPerCm3: number,
  takeOffDeg: number,
): number {
  return excitedDepthUm(
    share,
    { cm2PerG: 0, angleDeg: 90 },
    { cm2PerG, angleDeg: takeOffDeg },
    densityGPerCm3,
  )
}

/** One way through a matrix: how strongly it weakens the ray [cm²/g], and at which angle to the surface [°]. */
export interface Way {
  readonly cm2PerG: number
  readonly angleDeg: number
}

/**
 * Depth out of which a share of the signal comes, where the way in weakens what excites it as well [µm].
 * @param share [1] of the signal
 * @param wayIn [cm²/g, °] of the exciting ray, at its own energy
 * @param wayOut [cm²/g, °] of the line
 * @param densityGPerCm3 [g/cm³] of the matrix
 * @source −ln(1 − share) / (ρ · (µ_in/sin α + µ_out/sin ψ)), from Beer's law both ways
 * @valid as escapeDepthUm; excitation of one energy, no secondary fluorescence; NaN outside
 * @agrees exact with escapeDepthUm where nothing is lost on the way in
 */
export function excitedDepthUm(share: number, wayIn: Way, wayOut: Way, densityGPerCm3: number): number {
  if (!(share >= 0 && share < 1) || !slanting(wayIn.angleDeg) || !slanting(wayOut.angleDeg)) return Number.NaN
  const weakening = ({ cm2PerG, angleDeg }: Way) => cm2PerG * pathCm(1, angleDeg)
  return -Math.log1p(-share) / (densityGPerCm3 * (weakening(wayIn) + weakening(wayOut)))
}

/**
 * Thickness that lets half of the photons through [mm].
 * @param cm2PerG [cm²/g] mass attenuation coefficient at the energy
 * @param densityGPerCm3 [g/cm³] of the substance
 * @source Beer's law read for a half: ln 2 / (µ/ρ · ρ)
 * @valid narrow beam of one energy; a tube's mixed beam hardens and goes deeper
 * @agrees exact with transmission
 */
export function halfValueLayerMm(cm2PerG: number, densityGPerCm3: number): number {
  return (10 * Math.LN2) / (cm2PerG * densityGPerCm3)
}
