import { given, refused, type Outcome } from '../base/outcome.ts'
import { rhAfterSealedPercent, rhAfterVentedPercent } from './after-change.ts'
import { dewPointC, frostPointC } from './dew-point.ts'
import {
  absoluteHumidityGPerM3,
  mixingRatioGPerKg,
  saturationAbsoluteHumidityGPerM3,
  vapourPressurePa,
} from './humidity.ts'
import { samePotentialRhPercent } from './isotherm-equations.ts'
import { outside, type OutOfValidity } from './out-of-validity.ts'
import { saturationVapourPressurePa, waterValidC, type Convention } from './saturation.ts'
import { depositOn, highestRoomRhPercent, rhAtSurfacePercent, type Deposit } from './surface.ts'

export interface HumidityAsked {
  readonly temperatureC: number
  readonly rhPercent: number
  readonly convention: Convention
  readonly airPressurePa: number
  readonly toTemperatureC: number | null
  readonly surfaceTemperatureC: number | null
}

/** All that one reading of a room says, with what a change or a colder thing makes of it. */
export interface HumidityAccount {
  readonly asked: HumidityAsked
  readonly saturationVapourPressurePa: number
  readonly vapourPressurePa: number
  readonly saturationAbsoluteHumidityGPerM3: number
  readonly absoluteHumidityGPerM3: number
  readonly mixingRatioGPerKg: number
  /** Over liquid water, also below 0 °C; null where the air is too dry to have one in range. */
  readonly dewPointC: number | null
  /** Over ice; null where the air is damp enough to dew first, or too dry. */
  readonly frostPointC: number | null
  readonly after: {
    readonly ventedPercent: number
    readonly sealedPercent: number
    /** With plenty of dry gel; null above what the gel's line holds for, and outside of the temperatures of stores. */
    readonly withGelPercent: number | null
  } | null
  readonly surface: {
    readonly rhPercent: number
    readonly gathers: Deposit
    readonly highestRoomRhPercent: number
  } | null
}

/** Up to here water sits in the small pores of gel, where its line holds [%]. */
const gelLineToPercent = 40

const orNull = (value: number) => (Number.isNaN(value) ? null : value)
const source = 'ashrae-fundamentals-2017'

function beyond(asked: HumidityAsked): readonly OutOfValidity[] {
  const temperature = (quantity: string, value: number | null) =>
    value === null ? [] : [{ quantity, value, ...waterValidC, source }]
  return outside([
    ...temperature('temperatureC', asked.temperatureC),
    { quantity: 'rhPercent', value: asked.rhPercent, from: 0, to: 100, source },
    ...temperature('toTemperatureC', asked.toTemperatureC),
    ...temperature('surfaceTemperatureC', asked.surfaceTemperatureC),
  ])
}

/**
 * Everything a reading of temperature and relative humidity says [°C, %, Pa, g/m³, g/kg], or what lies out of range.
 * @param asked [°C, %, Pa] the reading, the convention it holds by, and a second temperature or a surface where there is one
 * @source the formulas it joins: saturation, dew point, humidity of air, after a change, at a surface
 * @valid -100 to 200 °C, 0 to 100 %, vapour pressure below the air pressure
 * @agrees exact with the formulas it joins
 */
export function humidityAccount(asked: HumidityAsked): Outcome<HumidityAccount, readonly OutOfValidity[]> {
  const { temperatureC, rhPercent, convention, airPressurePa, toTemperatureC, surfaceTemperatureC } = asked
  const problems = beyond(asked)
  if (problems.length > 0) return refused(problems)
  const vapourPa = vapourPressurePa(temperatureC, rhPercent, convention)
  if (!(vapourPa < airPressurePa))
    return refused([{ quantity: 'vapourPressurePa', value: vapourPa, from: 0, to: airPressurePa, source }])
  return given({
    asked,
    saturationVapourPressurePa: saturationVapourPressurePa(temperatureC, convention),
    vapourPressurePa: vapourPa,
    saturationAbsoluteHumidityGPerM3: saturationAbsoluteHumidityGPerM3(temperatureC, convention),
    absoluteHumidityGPerM3: absoluteHumidityGPerM3(temperatureC, vapourPa),
    mixingRatioGPerKg: mixingRatioGPerKg(vapourPa, airPressurePa),
    dewPointC: orNull(dewPointC(vapourPa)),
    frostPointC: frostPointBelowZero(vapourPa),
    after: toTemperatureC === null ? null : afterChange(asked, toTemperatureC),
    surface:
      surfaceTemperatureC === null
        ? null
        : {
            rhPercent: rhAtSurfacePercent(rhPercent, temperatureC, surfaceTemperatureC, convention),
            gathers: depositOn(vapourPa, surfaceTemperatureC) ?? 'dew',
            highestRoomRhPercent: highestRoomRhPercent(temperatureC, surfaceTemperatureC, 100, convention),
          },
  })
}

function frostPointBelowZero(vapourPa: number): number | null {
  const point = orNull(frostPointC(vapourPa))
  return point !== null && point < 0 ? point : null
}

function afterChange({ temperatureC, rhPercent, convention }: HumidityAsked, toC: number) {
  return {
    ventedPercent: rhAfterVentedPercent(rhPercent, temperatureC, toC, convention),
    sealedPercent: rhAfterSealedPercent(rhPercent, temperatureC, toC, convention),
    withGelPercent:
      rhPercent <= gelLineToPercent ? orNull(samePotentialRhPercent(rhPercent, temperatureC, toC)) : null,
  }
}
