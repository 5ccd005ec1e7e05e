import { afterAll, describe, expect, test } from 'vitest'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const humidity = (...words: readonly string[]) => place.call('humidity', ...words)
const json = async (...words: readonly string[]) => {
  const { code, out, err } = await humidity(...words, '--format', 'json')
  expect([code, err]).toEqual([0, ''])
  expect(out.trimEnd()).not.toContain('\n')
  return JSON.parse(out) as Record<string, unknown>
}
const near = (value: number, digits = 3): unknown => expect.closeTo(value, digits)

describe('humidity', () => {
  test('as JSON has the keys of the contract, each with its unit', async () => {
    expect(
      await json(
        '--temperature-c',
        '22',
        '--rh-percent',
        '55',
        '--to-temperature-c',
        '15',
        '--surface-temperature-c',
        '12',
      ),
    ).toEqual({
      temperatureC: 22,
      rhPercent: 55,
      convention: 'water',
      airPressurePa: 101_325,
      dewPointC: near(12.5535),
      absoluteHumidityGPerM3: near(10.6785),
      saturationAbsoluteHumidityGPerM3: near(19.4155),
      mixingRatioGPerKg: near(9.0586),
      vapourPressurePa: near(1454.614),
      saturationVapourPressurePa: near(2644.753),
      toTemperatureC: 15,
      rhAfterPercent: { vented: near(85.292), sealed: near(83.269) },
      surfaceTemperatureC: 12,
      surfaceRhPercent: near(103.709),
      condenses: true,
      surfaceGathers: 'dew',
      maxRoomRhForSurfacePercent: near(53.033),
    })
  })

  test('what was not asked for is not there; a frost point is, where it lies below 0 °C', async () => {
    const warm = await json('--temperature-c', '22', '--rh-percent', '55')
    for (const key of ['frostPointC', 'rhAfterPercent', 'surfaceRhPercent', 'condenses'])
      expect(warm).not.toHaveProperty(key)
    expect(await json('--temperature-c', '20', '--rh-percent', '15')).toMatchObject({
      frostPointC: near(-6.577),
      dewPointC: near(-7.409),
    })
  })

  test('takes a temperature below 0 °C, a decimal comma, another convention, a mountain', async () => {
    expect(await json('--temperature-c', '-5', '--rh-percent', '90')).toMatchObject({
      vapourPressurePa: near(379.624),
    })
    expect(
      await json('--temperature-c', '-5', '--rh-percent', '90', '--convention', 'ice-below-zero'),
    ).toMatchObject({ vapourPressurePa: near(361.588), convention: 'ice-below-zero' })
    expect(await json('--temperature-c=20,5', '--rh-percent', '50')).toMatchObject({ temperatureC: 20.5 })
    const high = await json('--temperature-c', '20', '--rh-percent', '50', '--air-pressure-hpa', '800')
    expect(high).toMatchObject({
      airPressurePa: 80_000,
      mixingRatioGPerKg: near(9.2258),
      dewPointC: near(9.2724),
    })
  })

  test('dry air says what gel would hold it at', async () => {
    const dry = await json('--temperature-c', '20', '--rh-percent', '15', '--to-temperature-c', '10')
    expect(dry['rhAfterPercent']).toEqual({
      vented: near(28.5686),
      sealed: near(27.594),
      withDryGel: near(14.028),
    })
  })

  test('in words it says what gathers and what to do', async () => {
    const { code, out } = await humidity(
      '--temperature-c',
      '20',
      '--rh-percent',
      '60',
      '--surface-temperature-c',
      '5',
    )
    expect(code).toBe(0)
    expect(out).toMatch(/Dew point +12.0 °C, over water/)
    expect(out).toMatch(/dew gathers on it/)
    expect(out).toMatch(/leave its pack\s+closed\s+until/)
  })

  test('every wrong value is told at once', async () => {
    const typed =
      '--temperature-c warm --rh-percent 120 --to-temperature-c -300 --air-pressure-hpa - --convention ice --format xml more'
    const { code, out, err } = await humidity(...typed.split(' '))
    expect([code, out]).toEqual([2, ''])
    const lines = err.split('\n')
    expect(lines.slice(0, 7)).toEqual([
      '--temperature-c is a number from -100 to 200 °C, not "warm".',
      '--rh-percent is a number from 0 to 100 %, not "120".',
      '--to-temperature-c is a number from -100 to 200 °C, not "-300".',
      '--air-pressure-hpa is a number from 300 to 1100 hPa, not "-".',
      '--convention is one of water, ice-below-zero, not "ice".',
      '--format is one of text, json, not "xml".',
      '"more" belongs to no option.',
    ])
  })

  test.each([
    [[], /--temperature-c is missing[^]*--rh-percent is missing/],
    [['--temperature-c', '20'], /--rh-percent is missing/],
    [['--temperature-c', '', '--rh-percent', '1e2'], /not ""[^]*not "1e2"/],
    [['--temperature-c', '0x10', '--rh-percent', 'Infinity'], /not "0x10"[^]*not "Infinity"/],
    [['--temperature-f', '70'], /--temperature-f/],
    [
      ['--temperature-c', '100', '--rh-percent', '100'],
      /vapour pressure, which must be less than the air pressure/,
    ],
  ])('%j is a wrong call', async (words, says) => {
    const { code, out, err } = await humidity(...words)
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(says)
  })
})
