import {
  iceValidC,
  saturationOverIcePa,
  saturationOverWaterPa,
  waterValidC,
  zeroCelsiusK,
} from './saturation.ts'

/**
 * Where saturation reaches a pressure. The logarithm of the pressure is nearly a straight line over 1/T, so the line through
 * the two ends of what is still possible hits it in a few steps; halving the end that will not move keeps it from stalling.
 */
function temperatureAt(
  vapourPa: number,
  saturationPa: (temperatureC: number) => number,
  { from, to }: { readonly from: number; readonly to: number },
): number {
  const inverse = (temperatureC: number) => 1 / (temperatureC + zeroCelsiusK)
  const miss = (x: number) => Math.log(saturationPa(1 / x - zeroCelsiusK) / vapourPa)
  let [cold, warm] = [inverse(from), inverse(to)]
  let coldMiss = Math.log(saturationPa(from) / vapourPa)
  let warmMiss = Math.log(saturationPa(to) / vapourPa)
  if (!(coldMiss <= 0 && warmMiss >= 0)) return Number.NaN
  if (coldMiss === 0) return from
  if (warmMiss === 0) return to
  let kept: 'cold' | 'warm' | null = null
  for (let step = 0; step < 60; step += 1) {
    const x = (cold * warmMiss - warm * coldMiss) / (warmMiss - coldMiss)
    const off = miss(x)
    if (Math.abs(off) < 1e-13 || x === cold || x === warm) return 1 / x - zeroCelsiusK
    if (off < 0) {
      ;[cold, coldMiss] = [x, off]
      if (kept === 'warm') warmMiss /= 2
      kept = 'warm'
    } else {
      ;[warm, warmMiss] = [x, off]
      if (kept === 'cold') coldMiss /= 2
      kept = 'cold'
    }
  }
  return 1 / ((cold + warm) / 2) - zeroCelsiusK
}

/**
 * Dew point: where air of this vapour pressure would be saturated over liquid water, supercooled below 0 °C [°C].
 * @param vapourPa [Pa] pressure of the water vapour
 * @source Hyland & Wexler 1983 and Sonntag 1990 as in saturationOverWaterPa, inverted by interval halving along straight lines
 * @valid dew points from -100 to 200 °C; NaN outside, so also for air without any vapour
 * @agrees 0.00000001 °C with saturationOverWaterPa read backwards; 0.00001 °C with psychrolib 1.1.1 from 0.01 °C up
 */
export function dewPointC(vapourPa: number): number {
  return temperatureAt(vapourPa, saturationOverWaterPa, waterValidC)
}

/**
 * Frost point: where air of this vapour pressure would be saturated over ice [°C]. There is one only below the triple point.
 * @param vapourPa [Pa] pressure of the water vapour
 * @source Hyland & Wexler 1983 as in saturationOverIcePa, inverted by interval halving along straight lines
 * @valid frost points from -100 to 0.01 °C; NaN outside: air damper than that has a dew point and no frost point
 * @agrees 0.00000001 °C with saturationOverIcePa read backwards; 0.00001 °C with psychrolib 1.1.1
 */
export function frostPointC(vapourPa: number): number {
  return temperatureAt(vapourPa, saturationOverIcePa, iceValidC)
}
