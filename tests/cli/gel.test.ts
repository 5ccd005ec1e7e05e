import { afterAll, describe, expect, test } from 'vitest'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

/** A box of the worked table: 10 l, half an air change a day, a room at 55 %, from 5 to 15 %. */
const box = {
  'volume-l': 10,
  'air-changes-per-day': 0.5,
  'outside-rh-percent': 55,
  'start-rh-percent': 5,
  'limit-rh-percent': 15,
}
type Given = Readonly<Record<string, number | string>>

const call = (given: Given) =>
  place.call(
    'gel',
    ...Object.entries({ ...box, ...given }).flatMap(([name, value]) => [`--${name}`, String(value)]),
  )

interface Spread {
  readonly p10: number | null
  readonly p50: number | null
  readonly p90: number | null
  readonly nominal: number | null
}

interface Told {
  readonly daysToLimit: Spread
  readonly gelKg: Spread
  readonly timeConstantDays: number
  readonly limit: string
  readonly isotherm: {
    readonly reservoirGPerKgPercent: { readonly nominal: number }
    readonly source: { readonly work: string } | 'given'
  }
  readonly byBentIsotherm?: { readonly daysToLimit: number; readonly source: { readonly work: string } }
  readonly wallAirChangesPerDay?: number
  readonly cautions: readonly string[]
}

async function told(given: Given): Promise<Told> {
  const { code, out, err } = await call({ ...given, format: 'json' })
  expect([code, err]).toEqual([0, ''])
  return JSON.parse(out) as Told
}

/**
 * Whether a value is the printed one: the table was reckoned with another equation for saturation, 0.03 % away at most, and is
 * rounded in its third decimal.
 */
const asTabled = (value: number | null, printed: number) =>
  Math.abs(value! - printed) <= Math.max(3e-4 * printed, 5e-4) ? printed : value

describe('with so much gel', () => {
  test.each([
    [{ 'gel-kg': 0.5, 'limit-rh-percent': 10 }, 2893.925, 304.9],
    [{ 'gel-kg': 0.5 }, 2893.925, 645.761],
    [{ 'gel-kg': 0.5, 'limit-rh-percent': 20 }, 2893.925, 1032.191],
    [{ 'gel-kg': 0.5, 'air-changes-per-day': 1 }, 1446.963, 322.88],
    [{ 'gel-kg': 0.1 }, 580.385, 129.509],
    [{ 'volume-l': 50, 'gel-kg': 0.5, 'air-changes-per-day': 1, 'outside-rh-percent': 60 }, 290.193, 58.233],
    [
      {
        'volume-l': 3.5,
        'gel-kg': 0.05,
        'air-changes-per-day': 2,
        'outside-rh-percent': 50,
        'limit-rh-percent': 12,
      },
      207.066,
      35.01,
    ],
    [
      {
        'volume-l': 24,
        'gel-kg': 0.5,
        'air-changes-per-day': 1,
        'outside-rh-percent': 65,
        'limit-rh-percent': 30,
        'temperature-c': 18,
      },
      678.955,
      365.954,
    ],
    [{ 'volume-l': 1000, 'gel-kg': 20, 'air-changes-per-day': 1, 'limit-rh-percent': 20 }, 579.385, 206.652],
    [{ 'volume-l': 1000, 'gel-kg': 0 }, 2, 0.446],
  ])('%j: time constant and days of the worked table', async (given, tau, days) => {
    const { daysToLimit, timeConstantDays, isotherm } = await told(given)
    expect(asTabled(timeConstantDays, tau)).toBe(tau)
    expect(asTabled(daysToLimit.nominal, days)).toBe(days)
    expect(isotherm.reservoirGPerKgPercent.nominal).toBe(5)
    expect(isotherm.source).toMatchObject({ work: 'thu-2013' })
    expect(daysToLimit.p10!).toBeLessThan(daysToLimit.p50!)
    expect(daysToLimit.p50!).toBeLessThan(daysToLimit.p90!)
  })

  test('the bent isotherm stands beside it, with its work', async () => {
    const { byBentIsotherm } = await told({ 'gel-kg': 0.5 })
    expect(byBentIsotherm!.source.work).toBe('wang-levan-2009')
    expect(Math.round(byBentIsotherm!.daysToLimit)).toBe(766)
  })

  test('a tighter range of the leak tightens the days, and the reservoir may be given', async () => {
    const loose = (await told({ 'gel-kg': 0.5 })).daysToLimit
    const tight = await told({
      'gel-kg': 0.5,
      'air-changes-low-per-day': 0.48,
      'air-changes-high-per-day': 0.52,
      'reservoir-g-per-kg-percent': 5,
      'reservoir-low-g-per-kg-percent': 5,
      'reservoir-high-g-per-kg-percent': 5,
    })
    expect(tight.isotherm.source).toBe('given')
    expect(tight.daysToLimit.p10!).toBeGreaterThan(loose.p10!)
    expect(tight.daysToLimit.p90!).toBeLessThan(loose.p90!)
    expect(tight.daysToLimit.nominal).toBe(loose.nominal)
  })

  test('a room that is dampest soon is worse than one that is dampest in half a year', async () => {
    const season = { 'gel-kg': 0.1, 'outside-swing-rh-percent': 15 }
    expect(
      asTabled((await told({ ...season, 'dampest-in-days': 91.3125 })).daysToLimit.nominal, 104.916),
    ).toBe(104.916)
    expect(
      asTabled((await told({ ...season, 'dampest-in-days': 273.9375 })).daysToLimit.nominal, 168.394),
    ).toBe(168.394)
  })

  test('film lets water in as a leak does', async () => {
    const bag = { 'gel-kg': 0.5, 'air-changes-per-day': 0, 'film-g-per-m2-day': 15, 'film-area-m2': 0.27 }
    const { wallAirChangesPerDay, cautions } = await told(bag)
    expect(asTabled(wallAirChangesPerDay!, 9.18)).toBe(9.18)
    expect(cautions).toContain('leaky')
    expect((await told({ ...bag, 'film-g-per-m2-day': 0.03 })).cautions).not.toContain('leaky')
  })

  test('a limit that is never reached, and one that is passed already, are said plainly', async () => {
    const dryRoom = { 'gel-kg': 0.5, 'outside-rh-percent': 12, 'outside-rh-high-percent': 13 }
    const never = await told(dryRoom)
    expect([never.limit, never.daysToLimit.nominal, never.daysToLimit.p10]).toEqual([
      'never-reached',
      null,
      null,
    ])
    expect((await call(dryRoom)).out).toMatch(
      /the box never gets there: the room is no damper than the limit/,
    )

    const over = await told({ 'gel-kg': 0.5, 'start-rh-percent': 20, 'reservoir-g-per-kg-percent': 5 })
    expect([over.limit, over.daysToLimit.nominal]).toEqual(['already-over', 0])
    expect((await call({ 'gel-kg': 0.5, 'start-rh-percent': 20 })).out).toMatch(
      /it is over the limit already/,
    )

    const tight = await told({ 'gel-kg': 0.5, 'air-changes-per-day': 0 })
    expect([tight.limit, tight.daysToLimit.p90, tight.timeConstantDays]).toEqual([
      'never-reached',
      null,
      null,
    ])
  })

  test('in text it is between two spans, in plain words', async () => {
    const { out } = await call({ 'gel-kg': 0.5 })
    expect(out).toMatch(/likely between \d+ days and [\d,]+ days/)
    expect(out).toContain('Thu and others 2013')
    expect(out).not.toMatch(/p10|p90|percentile|posterior|NaN|Infinity|undefined/i)
  })
})

describe('for so many days', () => {
  test('the gel that holds by the figures given, and in nine cases of ten', async () => {
    const { gelKg } = await told({ days: 365 })
    expect(asTabled(gelKg.nominal, 0.282462)).toBe(0.282462)
    expect(gelKg.p90!).toBeGreaterThan(gelKg.nominal!)
    expect((await call({ days: 365 })).out).toMatch(
      /282 g by the figures given, \d+ g to hold in nine cases of ten/,
    )
  })

  test('and that much gel lasts as many days', async () => {
    const { gelKg } = await told({ days: 400 })
    expect(asTabled((await told({ 'gel-kg': String(gelKg.nominal) })).daysToLimit.nominal, 400)).toBe(400)
  })

  test('no gel, and no amount of gel, are answers', async () => {
    expect(
      (await told({ days: 365, 'outside-rh-percent': 10, 'outside-rh-high-percent': 12 })).gelKg.nominal,
    ).toBe(0)
    expect((await told({ days: 365, 'start-rh-percent': 30 })).gelKg.nominal).toBeNull()
    expect((await call({ days: 365, 'start-rh-percent': 30 })).out).toMatch(/no amount of gel does it/)
  })

  test('beware where the reckoning is rough, and where the box cannot hold it', async () => {
    expect((await told({ days: 365, 'limit-rh-percent': 35 })).cautions).toEqual(['hysteresis'])
    expect((await told({ days: 365, 'limit-rh-percent': 45 })).cautions).toEqual([
      'hysteresis',
      'beyond-straight',
    ])
    expect((await told({ days: 3650, 'air-changes-per-day': 24 })).cautions).toEqual(['leaky', 'no-room'])
    expect((await told({ days: 365 })).cautions).toEqual([])
  })
})

describe('a wrong call', () => {
  test('names every wrong value at once', async () => {
    const words =
      'gel --volume-l 0 --air-changes-per-day much --outside-rh-percent 155 --limit-rh-percent 15 --format xml --film-area-m2 2 more'
    const { code, out, err } = await place.call(...words.split(' '))
    expect([code, out]).toEqual([2, ''])
    for (const told of [
      /--volume-l is a number from 0\.01/,
      /--air-changes-per-day is a number .* not "much"/,
      /--outside-rh-percent .* not "155"/,
      /--start-rh-percent is missing/,
      /--film-g-per-m2-day is missing/,
      /Give --gel-kg .* or --days/,
      /--format is one of text, json, not "xml"/,
      /"more" belongs to no option/,
    ])
      expect(err).toMatch(told)
  })

  test('a range whose ends are exchanged, or without its middle', async () => {
    const { code, err } = await call({
      'gel-kg': 1,
      'air-changes-low-per-day': 0.6,
      'outside-rh-high-percent': 40,
      'reservoir-low-g-per-kg-percent': 4,
    })
    expect(code).toBe(2)
    expect(err).toMatch(/--air-changes-low-per-day lies above/)
    expect(err).toMatch(/--outside-rh-high-percent lies below/)
    expect(err).toMatch(/--reservoir-g-per-kg-percent is missing: a range needs its middle/)
  })
})
