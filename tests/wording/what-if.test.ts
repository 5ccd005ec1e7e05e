import { describe, expect, test } from 'vitest'
import { boughtWords, lastsThenWords, upkeepWords } from '../../lib/wording/what-if.ts'
import { drierMeans, gelMeans, leakMeans, triedWords } from '../../lib/wording/what-if-asked.ts'
import { endsWords, lastsWords, roundWords, spreadMark } from '../../lib/wording/what-if-figures.ts'
import { keepCareLines, keepWords } from '../../lib/wording/what-if-keep.ts'
import { careLines, leftOutLine, whatIfRestsLines } from '../../lib/wording/what-if-rests.ts'

const q = (p10: number, p50: number, p90: number) => ({ p10, p50, p90 })
const upkeep = (renewalsPerYear = q(25, 38, 60), kgPerYear = q(12, 19, 30)) => ({
  renewalsPerYear,
  kgPerYear,
})
const bought = (renewals: ReturnType<typeof q>, kg: ReturnType<typeof q>) => ({
  before: upkeep(),
  after: upkeep(),
  saved: upkeep(renewals, kg),
})

describe('figures as far as they count', () => {
  test.each([
    [137.4, '140'],
    [38.2, '38'],
    [2.36, '2.4'],
    [0.34, '0.34'],
    [0.01, '0'],
    [1400, '1,400'],
  ])('%d is told as %s', (value, words) => expect(roundWords(value)).toBe(words))

  test('a range names its unit once, and both where they differ', () => {
    expect(endsWords(4.1, 12.3, 'gel')).toBe('4.1 and 12 kg')
    expect(endsWords(0.3, 1.2, 'gel')).toBe('300 g and 1.2 kg')
    expect(spreadMark(q(9, 14, 20), 'renewals')).toBe('14 (9 to 20)')
    expect(spreadMark(q(2, 2, 2), 'renewals')).toBe('2')
  })

  test.each([
    [365.25, 'a day or less'],
    [16, '23 days'],
    [2.4, '5 months'],
    [0.25, '4 years'],
    [0.001, 'more than a hundred years'],
  ])('%d renewals a year are %s each', (perYear, words) => expect(lastsWords(perYear)).toBe(words))
})

describe('what a change buys', () => {
  test('is told in renewals and in kilograms, each with its range', () => {
    expect(boughtWords(bought(q(9, 14, 20), q(4, 7, 12)))).toBe(
      'About 14 renewals a year fewer, likely between 9 and 20. About 7 kg of dry gel a year less, likely between 4 and 12 kg.',
    )
  })
  test('of more gel: walks, but hardly a gram', () => {
    const words = boughtWords(bought(q(12, 19, 30), q(-0.05, 0, 0.05)))
    expect(words).toMatch(/^About 19 renewals a year fewer.* Hardly a gram of gel is saved/)
  })
  test('may be a loss, or either', () => {
    expect(boughtWords(bought(q(-12, -5, -1), q(-3, -2, -1)))).toContain(
      'About 5 renewals a year more, likely between 1 and 12',
    )
    expect(boughtWords(bought(q(-12, 1, 5), q(-3, 1, 4)))).toContain(
      'Anything from 12 renewals a year more to 5 renewals a year fewer',
    )
  })
  test('is nothing where nothing changes', () => {
    expect(boughtWords(bought(q(0, 0, 0), q(0, 0, 0)))).toBe(
      'Nothing changes in how often gel is renewed. The gel that is used stays the same.',
    )
  })
  test('one renewal is one', () => {
    expect(boughtWords(bought(q(1, 1, 1), q(1, 1, 1)))).toContain('About 1 renewal a year fewer.')
  })
  test('of one box is told by how long a filling lasts', () => {
    expect(upkeepWords(upkeep(q(1, 2.4, 5), q(0.3, 0.6, 1.2)), 1)).toContain(
      'A filling lasts about 5 months, likely between 2 and 12 months.',
    )
    const one = { before: upkeep(q(1, 2.4, 5)), after: upkeep(q(0, 0, 0)), saved: upkeep() }
    expect(lastsThenWords(one)).toBe('It would never come to its limit.')
  })
  test('boxes that never come to their limit need no gel', () => {
    expect(upkeepWords(upkeep(q(0, 0, 0), q(0, 0, 0)), 7)).toContain('no gel needs renewal')
  })
})

describe('beside the answer', () => {
  test('boxes are left out aloud, with why', () => {
    expect(leftOutLine({ because: 'no-volume', boxes: ['B3'] })).toBe(
      'B3: nobody has written how large it is.',
    )
    const many = Array.from({ length: 12 }, (_, at) => `B${at}`)
    expect(leftOutLine({ because: 'tub', boxes: many })).toBe(
      '12 boxes, B0, B1, B2, B3, B4, B5, B6, B7 and 4 more: tubs of water, which hold no gel.',
    )
  })
  test('what to take with care is said of the box, or of the boxes by name', () => {
    const none = { mayComeDamp: [], noRoomForGel: [], doubtful: [], doubtfulRenewalsPerYear: 0 }
    expect(careLines({ counted: 1, ...none, noRoomForGel: ['B1'] })).toEqual([
      'So much gel has no room in the box.',
    ])
    expect(careLines({ counted: 9, ...none, mayComeDamp: ['B1', 'B2'] })[0]).toMatch(/^B1 and B2: their gel/)
    expect(careLines({ counted: 9, ...none })).toEqual([])
    const strays = { doubtful: ['B1', 'B2'], doubtfulRenewalsPerYear: 520 }
    expect(careLines({ counted: 9, ...none, ...strays })[0]).toMatch(
      /^B1 and B2:.*about 520 are reckoned for them/,
    )
  })
  test('what it rests on counts the ways and names the rooms that are supposed', () => {
    const lines = whatIfRestsLines({ airChanges: { logger: 2, assumed: 5 }, roomsSupposed: ['Hall'] })
    expect(lines[0]).toContain('by their own logger for 2 and only as lidded boxes are supposed to be for 5')
    expect(lines[1]).toContain('The air of Hall is only supposed')
    expect(whatIfRestsLines({ airChanges: { rounds: 1 }, roomsSupposed: [] })[0]).toContain(
      'strips read in it',
    )
  })
  test('what was tried, and what each number comes to', () => {
    expect(triedWords({ drierByPercent: -5, leakLessPercent: 50, gelTimes: 1, film: null })).toBe(
      'Tried: air 5 points damper all year and 50 % less air let in.',
    )
    expect(drierMeans(10, 55)).toContain('About 45 % instead of 55 %')
    expect(leakMeans(80)).toBe('20 % of what leaks in now.')
    expect(gelMeans(2, 0.5)).toBe('1 kg instead of 500 g.')
  })
})

describe('how much gel keeps a box', () => {
  const keep = {
    box: 'B14',
    limitRhPercent: 15,
    days: 365,
    gelKg: { nominal: 0.6, nineInTen: 0.9 as number | null },
    holdsKg: 0.5,
    bearsRhPercent: 12,
    startRhPercent: 5,
    airChangesPerDay: { low: 0.3, nominal: 0.5, high: 0.9 },
    airChangesFrom: 'logger',
    surroundings: { meanRhPercent: { low: 45, nominal: 50, high: 55 }, from: 'written' },
    cautions: [],
  } as const
  test('is told with what is surer, and what it holds', () => {
    expect(keepWords(keep)).toEqual([
      'About 600 g of dry gel; 900 g to hold in nine cases of ten.',
      'It holds 500 g now.',
    ])
    expect(keepCareLines(keep)[0]).toContain('12 % at most')
  })
  test('may be none, or never enough', () => {
    expect(keepWords({ ...keep, gelKg: { nominal: null, nineInTen: null }, limitRhPercent: 4 })[0]).toMatch(
      /No amount of gel does it: dried gel begins at about 5 %/,
    )
    expect(keepWords({ ...keep, gelKg: { nominal: 0.6, nineInTen: null } })[0]).toContain('none is sure')
    expect(keepWords({ ...keep, gelKg: { nominal: 0, nineInTen: 0 } })[0]).toContain('No gel is needed')
  })
})
