import {
  beyondPointsPercent,
  type Correction,
  type CorrectionRefusal,
} from '../climate/fixed-points-correction.ts'
import type { FixedPoint } from '../climate/fixed-points.ts'

const shown = (value: number, digits: number) =>
  value.toLocaleString('en-GB', { minimumFractionDigits: digits, maximumFractionDigits: digits })

/** `magnesium-chloride` as a person says it. */
export const saltWords = (salt: string): string => salt.replaceAll('-', ' ')

/** What a salt holds the air at, and the second source where it says something else. */
export function fixedPointWords({
  salt,
  temperatureC,
  rhPercent,
  from,
  handbookPercent,
  apartPercent,
}: FixedPoint): string {
  const held = `Over ${saltWords(salt)} at ${shown(temperatureC, 0)} °C the air stands at ${shown(rhPercent, 1)} %`
  if (from === 'crc-handbook') return `${held}, by the handbook of chemistry alone.`
  const memory = 'by Greenspan, whose numbers are from memory and held against a printed table'
  if (handbookPercent === null || apartPercent === null) return `${held}, ${memory}.`
  return apartPercent < 0.05
    ? `${held}, ${memory}; the handbook of chemistry agrees.`
    : `${held}, ${memory}; the handbook of chemistry has ${shown(handbookPercent, 1)} %.`
}

/** How a logger is out of true. */
export function correctionWords(correction: Correction): string {
  const { slope, offsetRhPercent, fromRhPercent, toRhPercent } = correction
  if (slope === 1 && fromRhPercent === toRhPercent) {
    const by = `${shown(Math.abs(offsetRhPercent), 1)} points`
    const way = offsetRhPercent >= 0 ? 'too dry' : 'too damp'
    return `Held against one salt it reads ${by} ${way} there; elsewhere that is a guess.`
  }
  const sign = offsetRhPercent < 0 ? '−' : '+'
  return `True humidity is ${shown(slope, 3)} times what it reads ${sign} ${shown(Math.abs(offsetRhPercent), 1)} points, between readings of ${shown(fromRhPercent, 1)} and ${shown(toRhPercent, 1)} %.`
}

/** That a reading lies where the logger was never held against a salt; null where it does not. */
export function beyondPointsWords(correction: Correction, readRhPercent: number): string | null {
  const beyond = beyondPointsPercent(correction, readRhPercent)
  return beyond === 0
    ? null
    : `This lies ${shown(beyond, 1)} points beyond what the logger was held against: the correction is a guess there.`
}

export function correctionRefusalWords(refusal: CorrectionRefusal): string {
  switch (refusal.code) {
    case 'no-readings':
      return 'No reading over a salt is given.'
    case 'too-many-readings':
      return `${refusal.count} readings over salts are given; a line goes through two. Give the two nearest to what the boxes are kept at.`
    case 'not-a-humidity':
      return `${refusal.rhPercent} % over ${saltWords(refusal.salt)} is no relative humidity: it lies between 0 and 100.`
    case 'salt-out-of-range':
      return `What ${saltWords(refusal.salt)} holds at ${refusal.temperatureC} °C is not known to us. Read the logger over it at room temperature.`
    case 'points-too-close':
      return `The two salts lie only ${shown(refusal.apartPercent, 1)} points apart; take two at least ${refusal.leastPercent} apart, as lithium chloride and magnesium chloride.`
    case 'wrong-order':
      return `Over ${saltWords(refusal.damper)}, the damper salt, it read no more than over ${saltWords(refusal.drier)}. Were the jars or the names swapped?`
    case 'slope-beyond-belief':
      return `The true humidity would change ${shown(refusal.slope, 2)} times as fast as it reads. A sensor that far out is broken, or a jar had not settled.`
  }
}
