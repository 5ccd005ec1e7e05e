import type { HumidityAccount } from '../climate/humidity-account.ts'
import { tellHumidity } from '../services/tell-humidity.ts'
import { humidityText, outOfValidityWords } from '../wording/humidity.ts'
import { exit, textOption, WrongCall, type Call, type Command } from './command.ts'
import { numberOptions } from './number-options.ts'

const conventions = ['water', 'ice-below-zero'] as const
const formats = ['text', 'json'] as const
const temperature = { from: -100, to: 200, unit: '°C' } as const

/** The keys of the contract; each says its unit. */
function asJson(account: HumidityAccount): object {
  const { asked, after, surface } = account
  return {
    temperatureC: asked.temperatureC,
    rhPercent: asked.rhPercent,
    convention: asked.convention,
    airPressurePa: asked.airPressurePa,
    dewPointC: account.dewPointC,
    ...(account.frostPointC === null ? {} : { frostPointC: account.frostPointC }),
    absoluteHumidityGPerM3: account.absoluteHumidityGPerM3,
    saturationAbsoluteHumidityGPerM3: account.saturationAbsoluteHumidityGPerM3,
    mixingRatioGPerKg: account.mixingRatioGPerKg,
    vapourPressurePa: account.vapourPressurePa,
    saturationVapourPressurePa: account.saturationVapourPressurePa,
    ...(after && {
      toTemperatureC: asked.toTemperatureC,
      rhAfterPercent: {
        vented: after.ventedPercent,
        sealed: after.sealedPercent,
        ...(after.withGelPercent === null ? {} : { withDryGel: after.withGelPercent }),
      },
    }),
    ...(surface && {
      surfaceTemperatureC: asked.surfaceTemperatureC,
      surfaceRhPercent: surface.rhPercent,
      condenses: surface.gathers !== 'none',
      surfaceGathers: surface.gathers,
      maxRoomRhForSurfacePercent: surface.highestRoomRhPercent,
    }),
  }
}

function oneOf<Choice extends string>(
  call: Call,
  name: string,
  choices: readonly [Choice, ...Choice[]],
  wrong: string[],
): Choice {
  const given = textOption(call, name)
  const chosen = choices.find((choice) => choice === (given ?? choices[0]))
  if (chosen === undefined) wrong.push(`--${name} is one of ${choices.join(', ')}, not "${given}".`)
  return chosen ?? choices[0]
}

export const command: Command = {
  usage:
    'humidity --temperature-c NUMBER --rh-percent NUMBER [--to-temperature-c NUMBER] [--surface-temperature-c NUMBER] [--convention water|ice-below-zero] [--air-pressure-hpa NUMBER] [--format text|json]',
  says: 'Dew point, water in the air, what a change of temperature does, and whether a colder thing gets wet.',
  help: `
--temperature-c, --rh-percent  the reading of the room
--to-temperature-c             what becomes of its relative humidity when it is warmed or cooled to there
--surface-temperature-c        what happens on something that cold or warm in the room
--convention                   what relative humidity counts against below 0 °C: liquid water as loggers
                               do (where left out), or ice as tables for engineers do
--air-pressure-hpa             1013.25 where left out

dewPointC is over liquid water always; frostPointC is over ice, and there only where it lies below 0 °C.

Exit code 0: answered. 2: the call is wrong; every wrong value is named.`,
  options: {
    'temperature-c': { type: 'string' },
    'rh-percent': { type: 'string' },
    'to-temperature-c': { type: 'string' },
    'surface-temperature-c': { type: 'string' },
    'air-pressure-hpa': { type: 'string' },
    convention: { type: 'string' },
    format: { type: 'string' },
  },
  async run(call, { out }) {
    const { values, wrong: wrongNumbers } = numberOptions(call, {
      'temperature-c': { ...temperature, required: true },
      'rh-percent': { from: 0, to: 100, unit: '%', required: true },
      'to-temperature-c': temperature,
      'surface-temperature-c': temperature,
      'air-pressure-hpa': { from: 300, to: 1100, unit: 'hPa' },
    })
    const wrong = [...wrongNumbers]
    const convention = oneOf(call, 'convention', conventions, wrong)
    const format = oneOf(call, 'format', formats, wrong)
    if (call.words.length > 0) wrong.push(`"${call.words.join(' ')}" belongs to no option.`)
    const { 'temperature-c': temperatureC, 'rh-percent': rhPercent } = values
    if (wrong.length > 0 || temperatureC === null || rhPercent === null) throw new WrongCall(wrong.join('\n'))
    const hectopascal = values['air-pressure-hpa']
    const told = tellHumidity({
      temperatureC,
      rhPercent,
      convention,
      toTemperatureC: values['to-temperature-c'],
      surfaceTemperatureC: values['surface-temperature-c'],
      ...(hectopascal === null ? {} : { airPressurePa: hectopascal * 100 }),
    })
    if (!told.ok) throw new WrongCall(told.problems.map(outOfValidityWords).join('\n'))
    await out(format === 'json' ? `${JSON.stringify(asJson(told.value))}\n` : `${humidityText(told.value)}\n`)
    return exit.done
  },
}
