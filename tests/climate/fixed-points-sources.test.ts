import { describe, expect, test } from 'vitest'
import { correctedRhPercent, type SaltReading } from '../../lib/climate/fixed-points-correction.ts'
import { correctionBySources } from '../../lib/climate/fixed-points-sources.ts'

const over = (salt: SaltReading['salt'], readRhPercent: number, temperatureC = 20): SaltReading => ({
  salt,
  temperatureC,
  readRhPercent,
})
const pair = (temperatureC: number) =>
  correctionBySources([
    over('lithium-chloride', 13.8, temperatureC),
    over('magnesium-chloride', 34.6, temperatureC),
  ])

describe('a correction by both sources', () => {
  test('computed by us: 15 read is 12.6 by Greenspan; the handbook lies a little off', () => {
    const made = pair(20)
    if (!made.ok || made.value.byHandbook === null) throw new Error('refused')
    const [ours, theirs] = [made.value.correction, made.value.byHandbook].map((line) =>
      correctedRhPercent(line, 15),
    )
    expect(ours).toBeCloseTo(12.565, 2)
    expect(theirs).not.toBeCloseTo(ours!, 3)
    expect(Math.abs(theirs! - ours!)).toBeLessThan(0.3)
    expect(made.value.points.map(({ salt }) => salt)).toEqual(['lithium-chloride', 'magnesium-chloride'])
  })

  test('where the handbook does not know a salt at that temperature it is silent', () => {
    // Lithium chloride is printed there from 20 °C.
    const made = pair(15)
    expect(made.ok && made.value.byHandbook).toBeNull()
  })

  test('a salt that the handbook alone knows is corrected by it twice alike', () => {
    const made = correctionBySources([over('sodium-bromide', 60)])
    if (!made.ok || made.value.byHandbook === null) throw new Error('refused')
    expect(made.value.byHandbook).toEqual(made.value.correction)
  })

  test('what is refused is refused with the same reasons', () => {
    const made = correctionBySources([over('lithium-chloride', 34), over('magnesium-chloride', 13)])
    expect(made.ok ? [] : made.problems.map(({ code }) => code)).toEqual(['wrong-order'])
  })
})
