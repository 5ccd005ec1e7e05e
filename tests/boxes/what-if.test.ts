import { describe, expect, test } from 'vitest'
import type { ClosedBox, Range, Surroundings } from '../../lib/boxes/box.ts'
import { everyCase, together, whatIf, type Change } from '../../lib/boxes/what-if.ts'

const range = (low: number, nominal: number, high: number): Range => ({ low, nominal, high })
const exactly = (value: number) => range(value, value, value)

const box: ClosedBox = {
  name: 'TW 12',
  model: null,
  room: 'Dry store',
  volumeL: 10,
  gelKg: 0.5,
  reservoirGPerKgPercent: range(4.5, 5, 6),
  airChangesPerDay: null,
  temperatureC: 20,
  startedOn: 20_000,
  startRhPercent: range(4, 5, 6),
  limitRhPercent: 15,
}
const room: Surroundings = {
  meanRhPercent: range(50, 55, 60),
  swingRhPercent: 0,
  highestOn: 0,
  from: 'written',
}
const leak = range(0.8, 1, 1.25)

const buys = (change: Change | readonly Change[], of = box, surroundings = room, airChanges = leak) =>
  whatIf(of, surroundings, airChanges, [change].flat())!

describe('what a change buys', () => {
  test('a box in a constant room is renewed as often as its time to the limit has it', () => {
    const { before } = buys([])
    expect(before.renewalsPerYear.nominal).toBeCloseTo(365.25 / 322.93, 2)
    expect(before.kgPerYear.nominal).toBeCloseTo(0.5 * (365.25 / 322.93), 2)
    const { p10, p50, p90 } = before.renewalsPerYear
    expect(p10 < p50 && p50 < p90).toBe(true)
  })

  test('nothing changed saves nothing, in no case', () => {
    expect(buys([]).saved).toEqual({
      renewalsPerYear: { p10: 0, p50: 0, p90: 0, nominal: 0 },
      kgPerYear: { p10: 0, p50: 0, p90: 0, nominal: 0 },
    })
  })

  test('a lid twice as tight halves renewals and gel', () => {
    const { before, after, saved } = buys({ kind: 'tighter-box', airChangesPerDay: range(0.4, 0.5, 0.625) })
    expect(after.renewalsPerYear.nominal / before.renewalsPerYear.nominal).toBeCloseTo(0.5, 6)
    expect(after.kgPerYear.p90 / before.kgPerYear.p90).toBeCloseTo(0.5, 6)
    expect(saved.kgPerYear.nominal).toBeCloseTo(before.kgPerYear.nominal / 2, 6)
    expect(saved.kgPerYear.p10).toBeGreaterThan(0)
  })

  test('half of the gaps closed is a lid twice as tight', () => {
    const half = buys({ kind: 'leaks-less', times: 0.5 })
    expect(half).toEqual(buys({ kind: 'tighter-box', airChangesPerDay: range(0.4, 0.5, 0.625) }))
  })

  test('twice the gel halves renewals, and saves hardly a gram', () => {
    const { before, after, saved } = buys({ kind: 'more-gel', gelKg: 1 })
    expect(after.renewalsPerYear.nominal / before.renewalsPerYear.nominal).toBeCloseTo(0.5, 2)
    expect(Math.abs(saved.kgPerYear.nominal)).toBeLessThan(0.001)
  })

  test('a drier room saves both; one below the limit needs no gel at all', () => {
    const { before, after, saved } = buys({ kind: 'drier-room', meanRhPercent: 30 })
    expect(after.renewalsPerYear.nominal).toBeLessThan(before.renewalsPerYear.nominal / 2)
    expect(saved.renewalsPerYear.p10).toBeGreaterThan(0)
    expect(buys({ kind: 'drier-room', meanRhPercent: 8 }).after.renewalsPerYear).toEqual({
      p10: 0,
      p50: 0,
      p90: 0,
      nominal: 0,
    })
  })

  test('a better film takes its own share off, never more than nearly all', () => {
    const film: Change = { kind: 'better-film', wallAirChangesPerDay: { before: 0.75, after: 0.25 } }
    const { after } = buys(film)
    const as = buys({ kind: 'tighter-box', airChangesPerDay: range(0.3, 0.5, 0.75) })
    expect(after.renewalsPerYear.nominal).toBeCloseTo(as.after.renewalsPerYear.nominal, 9)
    const all: Change = { kind: 'better-film', wallAirChangesPerDay: { before: 9, after: 0 } }
    expect(buys(all).after.renewalsPerYear.nominal).toBeCloseTo(
      buys([]).before.renewalsPerYear.nominal / 100,
      6,
    )
  })

  test('changes add up, and a worse one shows as a loss', () => {
    const tighter: Change = { kind: 'tighter-box', airChangesPerDay: exactly(0.5) }
    const drier: Change = { kind: 'drier-room', meanRhPercent: 40 }
    const both = buys([tighter, drier]).after.renewalsPerYear.nominal
    expect(both).toBeLessThan(buys(tighter).after.renewalsPerYear.nominal)
    expect(both).toBeLessThan(buys(drier).after.renewalsPerYear.nominal)
    expect(buys({ kind: 'drier-room', meanRhPercent: 70 }).saved.kgPerYear.p90).toBeLessThan(0)
  })

  test('a box without a limit asks for nothing; one that begins over it, for what no renewal gives', () => {
    expect(whatIf({ ...box, limitRhPercent: null }, room, leak, [])).toBeNull()
    const over = { ...box, startRhPercent: range(15, 16, 18) }
    expect(buys([], over).before.renewalsPerYear.nominal).toBe(Infinity)
    expect(buys({ kind: 'drier-room', meanRhPercent: 30 }, over).saved.renewalsPerYear.nominal).toBe(0)
  })
})

describe('gel that may come too damp', () => {
  const doubtful = { ...box, startRhPercent: range(0, 5, 15), limitRhPercent: 12 }
  test('is counted apart, and the spreads tell of the cases in which a renewal helps', () => {
    const { beyondHelp, before } = buys([], doubtful)
    // A start of 12 lies (12 − 5)/(15 − 5) of the way to the end that one case in ten passes: 0.897 deviations.
    expect(beyondHelp).toBeCloseTo(0.185, 2)
    expect(before.renewalsPerYear.p90).toBeLessThan(Infinity)
  })
  test('is beyond help where it is so by its own figures, and no case of gel that is dry', () => {
    expect(buys([], { ...box, startRhPercent: range(15, 16, 18) }).beyondHelp).toBe(1)
    expect(buys([]).beyondHelp).toBe(0)
  })
})

test('every seventh case tells what all of them tell, nearly', () => {
  for (const of of [box, { ...box, startRhPercent: range(0, 5, 9) }, { ...box, gelKg: 0.05 }]) {
    const drier: readonly Change[] = [{ kind: 'drier-room', meanRhPercent: 45 }]
    const wide = range(0.3, 0.8, 2)
    const [all, some] = [everyCase.box, everyCase.store].map((every) =>
      whatIf(of, room, wide, drier, every)!,
    ) as [NonNullable<ReturnType<typeof whatIf>>, NonNullable<ReturnType<typeof whatIf>>]
    for (const share of ['p10', 'p50', 'p90'] as const) {
      const off = some.before.renewalsPerYear[share] / all.before.renewalsPerYear[share] - 1
      expect(Math.abs(off)).toBeLessThan(0.05)
    }
    expect(some.saved.kgPerYear.nominal).toBe(all.saved.kgPerYear.nominal)
  }
})

describe('over the seasons', () => {
  const seasonal: Surroundings = { ...room, meanRhPercent: exactly(55), swingRhPercent: 15 }
  const sure: ClosedBox = { ...box, reservoirGPerKgPercent: exactly(5), startRhPercent: exactly(5) }
  const rate = (gelKg: number, startedOn: number) =>
    whatIf({ ...sure, gelKg, startedOn }, seasonal, exactly(1), [])!.before.renewalsPerYear.nominal

  test('a box renewed every few days is renewed alike, whatever day it began', () => {
    expect(rate(0.01, 0) / rate(0.01, 180)).toBeCloseTo(1, 3)
  })

  test('renewals walked one after another and starts tried over the year agree where both may be used', () => {
    const [often, seldom] = [0.0455, 0.0475].map((gelKg) => rate(gelKg, 20_091) * gelKg)
    expect(often! / seldom!).toBeCloseTo(1, 1)
  })

  test('gel that lasts twice as long saves hardly a gram, whatever the season it is put in', () => {
    for (const gelKg of [0.03, 0.06, 0.12, 0.5]) {
      for (const startedOn of [20_000, 20_091, 20_182]) {
        const [one, two] = [rate(gelKg, startedOn) * gelKg, rate(2 * gelKg, startedOn) * 2 * gelKg]
        expect(Math.abs(two / one - 1)).toBeLessThan(0.03)
      }
    }
  })

  test('in the long run the mean of the room decides, not its swing', () => {
    const still = whatIf({ ...sure, gelKg: 0.3 }, { ...seasonal, swingRhPercent: 0 }, exactly(1), [])!
    expect(rate(0.3, 20_000) / still.before.renewalsPerYear.nominal).toBeCloseTo(1, 1)
  })
})

test('several boxes together are the sum of each', () => {
  const one = buys({ kind: 'drier-room', meanRhPercent: 40 })
  const two = together([one, one])
  expect(two.saved.kgPerYear.p90).toBeCloseTo(2 * one.saved.kgPerYear.p90, 12)
  expect(two.before.renewalsPerYear.nominal).toBeCloseTo(2 * one.before.renewalsPerYear.nominal, 12)
  expect(together([]).after.kgPerYear).toEqual({ p10: 0, p50: 0, p90: 0, nominal: 0 })
})
