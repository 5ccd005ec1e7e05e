import type { Outcome } from '../base/outcome.ts'
import { standardPressurePa } from '../climate/humidity.ts'
import { humidityAccount, type HumidityAccount, type HumidityAsked } from '../climate/humidity-account.ts'
import type { OutOfValidity } from '../climate/out-of-validity.ts'

type Asked = Pick<HumidityAsked, 'temperatureC' | 'rhPercent'> & Partial<HumidityAsked>

/** What a reading says. Loggers count against liquid water also below zero, so that holds where nobody says otherwise. */
export function tellHumidity(asked: Asked): Outcome<HumidityAccount, readonly OutOfValidity[]> {
  return humidityAccount({
    convention: 'water',
    airPressurePa: standardPressurePa,
    toTemperatureC: null,
    surfaceTemperatureC: null,
    ...asked,
  })
}
