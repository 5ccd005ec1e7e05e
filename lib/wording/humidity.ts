import type { HumidityAccount } from '../climate/humidity-account.ts'
import type { OutOfValidity } from '../climate/out-of-validity.ts'
import {
  changePart,
  conventionWords,
  freezes,
  readingPart,
  surfacePart,
  type ToldPart,
} from './humidity-parts.ts'
import { wrap } from './wrap.ts'

const partText = ({ title, rows }: ToldPart) =>
  [title, ...rows.map(({ name, text }) => wrap(`  ${name.padEnd(26)}`, text))].join('\n')

/** What a reading says, in plain words. */
export function humidityText(account: HumidityAccount): string {
  const parts = [readingPart(account), changePart(account), surfacePart(account)]
  return [
    ...parts.flatMap((part) => (part === null ? [] : [partText(part)])),
    ...(freezes(account) ? [wrap('', conventionWords[account.asked.convention])] : []),
  ].join('\n\n')
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
