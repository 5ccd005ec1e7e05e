import { describe, expect, test } from 'vitest'
import { knowledge } from '../knowledge-at-hand.ts'
import { base, skin } from '../evidence/small-base.ts'
import { calibration, manyStated, shareHeld, type Decile, type Stated } from '../simulated/evidence-finds.ts'

/**
 * Finds drawn from a small evidence base, the true meaning of its words with them: a range that claims eight of ten holds
 * in eight of ten, and what is called likely to some degree is so to that degree. The large run is one of the bench.
 */
const finds = 3000
const all = manyStated(skin, base, finds)

/** Four standard deviations of a share over so many finds, and what sixty-four mappings cannot resolve. */
const chanceOf = (share: number, cases: number) => 4 * Math.sqrt((share * (1 - share)) / cases)
const unresolved = 0.025
const faults = (deciles: readonly Decile[]) =>
  deciles.filter(
    ({ stated, came, cases }) => cases >= 50 && Math.abs(came - stated) > chanceOf(stated, cases) + 0.01,
  )

const changed = (
  of: (rival: Stated['rivals'][number]) => Partial<Stated['rivals'][number]>,
): readonly Stated[] =>
  all.map(({ rivals }) => ({ rivals: rivals.map((rival) => ({ ...rival, ...of(rival) })) }))

describe('ranges that claim eight of ten', () => {
  test('hold what would be stated by somebody who knew what the words mean', () => {
    const { share, cases } = shareHeld(all)
    expect(cases).toBeGreaterThan(finds)
    expect(Math.abs(share - 0.8)).toBeLessThan(chanceOf(0.8, finds) + unresolved)
  })

  test('would be found out, were they a third narrower or wider', () => {
    const by = (factor: number) =>
      shareHeld(
        changed(({ probability, range: [low, high] }) => ({
          range: [probability - (probability - low) * factor, probability + (high - probability) * factor],
        })),
      ).share
    expect(by(0.67)).toBeLessThan(0.8 - chanceOf(0.8, finds) - unresolved)
    expect(by(1.5)).toBeGreaterThan(0.8 + chanceOf(0.8, finds) + unresolved)
  })
})

describe('what is called likely', () => {
  test('is so as often as it is called', () => {
    expect(calibration(all).filter(({ cases }) => cases >= 50).length).toBeGreaterThan(6)
    expect(faults(calibration(all))).toEqual([])
  })

  test('would be found out, were it called a little surer', () => {
    const surer = all.map(({ rivals }) => {
      const sum = rivals.reduce((total, { probability }) => total + probability ** 1.5, 0)
      return { rivals: rivals.map((rival) => ({ ...rival, probability: rival.probability ** 1.5 / sum })) }
    })
    expect(faults(calibration(surer))).not.toEqual([])
  })
})

describe('over the whole evidence base', () => {
  const every = Object.values(knowledge.matters).flatMap((matter, at) =>
    manyStated(matter, knowledge, 40, at + 1),
  )

  test('ranges hold in eight of ten, and what is called likely is so as often', () => {
    const { share, cases } = shareHeld(every)
    expect(cases).toBeGreaterThan(every.length)
    expect(Math.abs(share - 0.8)).toBeLessThan(chanceOf(0.8, every.length) + unresolved)
    expect(faults(calibration(every))).toEqual([])
  })
})
