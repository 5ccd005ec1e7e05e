import { describe, expect, it } from 'vitest'
import { heedLines, nowhereWords, packingLines } from '../../lib/wording/packing-plan.ts'

describe('what a packing comes to', () => {
  const proposal = { used: 50, atLeast: 49, gelKg: 5.26, moves: [], nowhere: [] }

  it('says how few boxes there could be, and whether that is proved', () => {
    expect(packingLines({ proposal, usedNow: 60, provedFewest: false })[0]).toBe(
      '50 boxes in use instead of 60. No packing of these finds needs fewer than 49.',
    )
    expect(packingLines({ proposal, usedNow: 50, provedFewest: true })[0]).toBe(
      '50 boxes in use, as many as now. No packing of these finds needs fewer.',
    )
  })

  it('names what is left over only where something is', () => {
    expect(packingLines({ proposal, usedNow: 60, provedFewest: true })).toHaveLength(3)
    const left = [{ findId: 'a', still: null, why: [{ code: 'no-tub' }] }] as const
    expect(
      packingLines({ proposal: { ...proposal, nowhere: left }, usedNow: 60, provedFewest: true }).at(-1),
    ).toMatch(/^1 find /)
  })
})

describe('why there is no box', () => {
  it('says by how much, and what would mend it', () => {
    expect(nowhereWords({ code: 'too-long', byMm: 12, sideMm: 312 })).toBe(
      'In its bag a side of it measures 312 mm, 12 mm more than the box that comes nearest has inside. It wants a longer box.',
    )
    expect(nowhereWords({ code: 'no-one-band', holdingRhPercent: { min: 30, max: 40 } })).toMatch(
      /conservator decides.*held at 30 to 40 %/,
    )
    expect(nowhereWords({ code: 'no-room-for-temperature', min: null, max: 5 })).toBe(
      'It is kept at 5 °C or below, and no box that suits it stands in such a room.',
    )
  })
})

describe('what to see to', () => {
  it('is said once, drying first', () => {
    expect(heedLines(['ask-first', 'size-supposed', 'dry-first', 'try-size'])).toEqual([
      'Dry it in the open first; nothing goes into a box wet.',
      'Ask the conservator before it is moved.',
      'Try whether it fits.',
    ])
  })
})
