import { describe, expect, test } from 'vitest'
import { humidityAccount } from '../../lib/climate/humidity-account.ts'
import { standardPressurePa } from '../../lib/climate/humidity.ts'
import { warmUpAccount, type WarmUpAsked } from '../../lib/climate/warm-up-account.ts'
import { correctionBySources } from '../../lib/climate/fixed-points-sources.ts'
import {
  ironHeadline,
  ironHereWords,
  ironRoomWords,
  type IronCeiling,
} from '../../lib/wording/climate-iron.ts'
import { changeAnswer, roomHeadline } from '../../lib/wording/climate-room.ts'
import { saltsAnswer } from '../../lib/wording/climate-salts.ts'
import { warmAnswer, warmRefusalWords } from '../../lib/wording/climate-warm.ts'
import { waitRangeWords, waitWords } from '../../lib/wording/span-of-time.ts'

const account = (temperatureC: number, rhPercent: number, toTemperatureC: number | null = null) => {
  const made = humidityAccount({
    temperatureC,
    rhPercent,
    convention: 'water',
    airPressurePa: standardPressurePa,
    toTemperatureC,
    surfaceTemperatureC: null,
  })
  if (!made.ok) throw new Error('refused')
  return made.value
}

describe('times to wait', () => {
  test.each([
    [0, '1 minute'],
    [61, '2 minutes'],
    [90 * 60, '90 minutes'],
    [90 * 60 + 1, '2 hours'],
    [3 * 3600 + 1, '4 hours'],
    [48 * 3600, '48 hours'],
    [48 * 3600 + 1, '3 days'],
  ])('%d s is %s: never less than it takes', (seconds, words) => {
    expect(waitWords(seconds)).toBe(words)
  })

  test('a range names its unit once, and a range within one step is one time', () => {
    expect(waitRangeWords({ low: 290, high: 770 })).toBe('5 to 13 minutes')
    expect(waitRangeWords({ low: 50, high: 290 })).toBe('1 to 5 minutes')
    expect(waitRangeWords({ low: 3000, high: 7000 })).toBe('50 minutes to 2 hours')
    expect(waitRangeWords({ low: 3.1 * 3600, high: 3.9 * 3600 })).toBe('4 hours')
  })
})

describe('the room and what becomes of it', () => {
  test('dew above freezing, frost below, nothing where it is too dry', () => {
    expect(roomHeadline(account(20, 50))).toBe('Anything at 9.3 °C or colder gets wet in this air.')
    expect(roomHeadline(account(20, 15))).toBe('Anything at -6.6 °C or colder gathers frost in this air.')
    expect(roomHeadline(account(20, 0))).toMatch(/too dry to wet anything/)
  })

  test('a room that cannot hold its water is said to be full, not 134 %', () => {
    const cold = changeAnswer(account(20, 50, 5), 12, null)!
    expect(cold.headline).toMatch(/the room is at more than it can hold/)
    expect(cold.rows.map(({ text }) => text)).toContain(
      'water comes out of the air: everything there gets wet',
    )
    expect(cold.rows.at(-1)!.text).toMatch(/not known/)
  })

  test('both laws of gel are told where they disagree, one number where they do not', () => {
    const gel = (lowPercent: number, highPercent: number, laws: number) =>
      changeAnswer(account(20, 50, 15), 12, { lowPercent, highPercent, laws })!.rows.at(-1)!.text
    expect(gel(14, 16, 2)).toBe('between 14 % and 16 %: two published laws disagree about the way it goes')
    expect(gel(12.1, 12.2, 2)).toBe('12 %, by two published laws')
    expect(gel(12, 12, 1)).toMatch(/one published law/)
  })
})

describe('iron at a surface', () => {
  const at = (ceilingPercent: number, surfacePercent: number): IronCeiling => ({
    figure: 'any',
    ceilingPercent,
    surfacePercent,
    roomAtMostPercent: 7.89,
  })

  test('how many of the published humidities it is over', () => {
    expect(ironHeadline([at(12, 20), at(25, 20)])).toMatch(/over 1 of these 2/)
    expect(ironHeadline([at(12, 30), at(25, 30)])).toMatch(/over every one/)
    expect(ironHeadline([at(12, 8), at(25, 8)])).toMatch(/under every one/)
  })

  test('at a ceiling is not over it; what the room may be is never rounded up', () => {
    expect(ironHereWords(at(12, 12))).toBe('under, by 0 points')
    expect(ironHereWords(at(12, 12.4))).toBe('over, by 0.4 points')
    expect(ironRoomWords(at(12, 20))).toBe('up to 7.8 %')
  })
})

describe('warming up', () => {
  const warmed = (change: Partial<WarmUpAsked>) => {
    const made = warmUpAccount({
      brought: { kind: 'pack', heatJPerK: 3360, outsideM2: 0.52, wallResistanceM2KPerW: 0.5 },
      startC: 5,
      roomC: 20,
      wetAtC: 9.27,
      airResistanceM2KPerW: { low: 0.1, high: 0.25 },
      ...change,
    })
    if (!made.ok) throw new Error('refused')
    return made.value
  }
  const into = { rhPercent: 50, ironCeilingPercent: 12 }

  test('a pack stays closed for the slowest time, a bare find is told how long it is wet', () => {
    expect(warmAnswer(warmed({}), into).headline).toBe('Leave the pack closed for at least 4 hours.')
    const plate = {
      kind: 'plate',
      plate: { thicknessM: 0.005, densityKgPerM3: 7860, heatCapacityJPerKgK: 530, conductivityWPerMK: 56 },
    } as const
    expect(warmAnswer(warmed({ brought: plate }), into).headline).toMatch(
      /^Bare, it stays wet for up to 15 minutes/,
    )
    expect(warmAnswer(warmed({ brought: plate, wetAtC: null }), into).headline).toMatch(/^Nothing gathers/)
  })

  test('full air, and what comes in warm', () => {
    expect(warmAnswer(warmed({ wetAtC: 20 }), into).headline).toMatch(/never comes clear/)
    expect(warmAnswer(warmed({ startC: 25 }), into).headline).toMatch(/as warm as the room or warmer/)
  })

  test('iron that may hold chloride does not come out in a room over its ceiling', () => {
    const told = (rhPercent: number) =>
      warmAnswer(warmed({}), { ...into, rhPercent }).rows.find(({ name }) => name.startsWith('Iron'))!.text
    expect(told(50)).toMatch(/stays in its dry pack/)
    expect(told(10)).toMatch(/under 12 %/)
  })

  test('too thick says up to where, and to wait all the same', () => {
    const refusal = { quantity: 'thicknessM', value: 5, from: 0, to: 1.12, source: 'any' }
    expect(warmRefusalWords(refusal)).toMatch(/Thicker than 1,120 mm.*overnight/)
    expect(warmRefusalWords({ ...refusal, quantity: 'startC', value: -200, from: -100, to: 200 })).toMatch(
      /^The temperature is -200/,
    )
  })
})

describe('a logger over salts', () => {
  const left = { hysteresisPercent: 0.8, driftAYearPercent: 0.25 }
  const answer = (readRhPercent: number, first = 13.8) => {
    const made = correctionBySources([
      { salt: 'lithium-chloride', temperatureC: 20, readRhPercent: first },
      { salt: 'magnesium-chloride', temperatureC: 20, readRhPercent: 34.6 },
    ])
    if (!made.ok) throw new Error('refused')
    return saltsAnswer(made.value, readRhPercent, left)
  }

  test('between the salts it says what the air is at, beyond them that it guesses', () => {
    expect(answer(15).headline).toBe('When it reads 15 %, the air is at about 12.6 %.')
    expect(answer(50).headline).toMatch(/as a guess/)
    expect(
      answer(50)
        .rows.map(({ text }) => text)
        .join(' '),
    ).toMatch(/15.4 points beyond/)
  })

  test('less than nothing is no humidity', () => {
    expect(answer(2).headline).toMatch(/does not reach there/)
  })

  test('both sources stand there, and what no salt takes away', () => {
    const text = answer(15)
      .rows.map(({ text }) => text)
      .join(' ')
    expect(text).toMatch(/by Greenspan/)
    expect(text).toMatch(/it would be 12\.\d %/)
    expect(text).toMatch(/0.8 points.*0.25 points of drift/)
  })
})
