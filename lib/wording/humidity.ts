import type { HumidityAccount } from '../climate/humidity-account.ts'
import type { OutOfValidity } from '../climate/out-of-validity.ts'
import { wrap } from './wrap.ts'

/** `12.6`, `-6.6`, `1,455`: as many digits as a reading deserves. */
const shown = (value: number, digits: number) =>
  value.toLocaleString('en-GB', { minimumFractionDigits: digits, maximumFractionDigits: digits })

const degrees = (value: number) => `${shown(value, Number.isInteger(value) ? 0 : 1)} °C`
/** Near nothing and near saturation the tenths matter. */
const percent = (value: number) => `${shown(value, value < 10 || Math.abs(value - 100) < 1 ? 1 : 0)} %`
/** A limit is never rounded up. */
const percentAtMost = (value: number) =>
  value < 10 ? `${shown(Math.floor(value * 10) / 10, 1)} %` : `${shown(Math.floor(value), 0)} %`

const row = (name: string, text: string) => wrap(`  ${name.padEnd(26)}`, text)

const conventions = {
  water:
    'Below 0 °C the relative humidity counts against liquid water, as loggers and weather stations report it.',
  'ice-below-zero': 'Below 0 °C the relative humidity counts against ice, as tables for engineers do.',
} as const

const dewPointWords = (dewPointC: number | null) =>
  dewPointC === null ? 'none: the air is too dry to have one' : `${degrees(dewPointC)}, over water`

function reading(account: HumidityAccount): readonly string[] {
  const { asked, frostPointC } = account
  return [
    `At ${degrees(asked.temperatureC)} and ${percent(asked.rhPercent)} relative humidity`,
    row('Dew point', dewPointWords(account.dewPointC)),
    ...(frostPointC === null
      ? []
      : [row('Frost point', `${degrees(frostPointC)}, over ice: frost forms before dew`)]),
    row(
      'Water in the air',
      `${shown(account.absoluteHumidityGPerM3, 2)} g/m³ of ${shown(account.saturationAbsoluteHumidityGPerM3, 2)} g/m³ that it could hold`,
    ),
    row('Mixing ratio', `${shown(account.mixingRatioGPerKg, 2)} g for each kilogram of dry air`),
    row(
      'Vapour pressure',
      `${shown(account.vapourPressurePa, 0)} Pa of ${shown(account.saturationVapourPressurePa, 0)} Pa`,
    ),
  ]
}

/** What a change of temperature does, or that water comes out. */
const changed = (rhPercent: number) =>
  rhPercent > 100 ? 'water comes out of the air: everything there gets wet' : percent(rhPercent)

function change({ asked, after }: HumidityAccount): readonly string[] {
  if (after === null || asked.toTemperatureC === null) return []
  return [
    `Taken to ${degrees(asked.toTemperatureC)}`,
    row('Air that comes and goes', changed(after.ventedPercent)),
    row('A sealed, empty box', changed(after.sealedPercent)),
    after.withGelPercent === null
      ? row('A box with much gel', 'stays near the humidity of its gel')
      : row('A box with much dry gel', `stays near ${percent(after.withGelPercent)}`),
  ]
}

function onSurface({ asked, surface }: HumidityAccount): readonly string[] {
  if (surface === null || asked.surfaceTemperatureC === null) return []
  const { gathers, rhPercent, highestRoomRhPercent } = surface
  const what =
    gathers === 'none'
      ? `${percent(rhPercent)}: it stays dry`
      : `${gathers === 'dew' ? 'dew' : 'frost'} gathers on it (${percent(rhPercent)})`
  const bears =
    highestRoomRhPercent > 100
      ? 'it stays dry in any air of that temperature'
      : `it stays dry while the room is below ${percentAtMost(highestRoomRhPercent)}`
  return [
    `On something at ${degrees(asked.surfaceTemperatureC)}`,
    row('The air at its surface', what),
    row('How damp the room may be', bears),
    ...(gathers === 'none'
      ? []
      : [row('What to do', 'Leave its pack closed until it is as warm as the room, then open it.')]),
    row(
      'Mind',
      'Metal with salts on it gets damp long before dew does: hold the air at its surface against the limit of the find.',
    ),
  ]
}

const freezing = ({ asked, dewPointC }: HumidityAccount) =>
  [asked.temperatureC, asked.toTemperatureC, asked.surfaceTemperatureC, dewPointC].some(
    (value) => value !== null && value < 0,
  )

/** What a reading says, in plain words. */
export function humidityText(account: HumidityAccount): string {
  const parts = [
    reading(account),
    change(account),
    onSurface(account),
    freezing(account) ? [wrap('', conventions[account.asked.convention])] : [],
  ]
  return parts
    .filter((part) => part.length > 0)
    .map((part) => part.join('\n'))
    .join('\n\n')
}

const quantities: Readonly<Record<string, string>> = {
  temperatureC: 'The temperature',
  toTemperatureC: 'The temperature afterwards',
  surfaceTemperatureC: 'The temperature of the surface',
  rhPercent: 'The relative humidity',
  vapourPressurePa: 'The vapour pressure, which must be less than the air pressure,',
}

/** Why a formula has no answer: what lies outside, and where it holds. */
export function outOfValidityWords({ quantity, value, from, to }: OutOfValidity): string {
  const name = quantities[quantity] ?? quantity
  return `${name} is ${value}; this is known from ${from} to ${to} only.`
}
