import type { OutdoorAir } from '../../../lib/climate/corrosivity-outdoor.ts'
import type { FormReader } from '../_forms/read-form.ts'

/** Wide: what lies outside of what the standard was fitted to is refused by it, with its reasons. */
const ranges = {
  temperatureC: { from: -100, to: 100 },
  rhPercent: { from: 0, to: 100 },
  so2MgPerM2Day: { from: 0, to: 100_000 },
  chlorideMgPerM2Day: { from: 0, to: 100_000 },
} as const

export function outdoorRead(form: FormReader): {
  readonly air: OutdoorAir
  readonly place: 'outdoors' | 'indoors'
} {
  return {
    air: {
      temperatureC: form.neededNumber('temperatureC', ranges.temperatureC),
      rhPercent: form.neededNumber('rhPercent', ranges.rhPercent),
      so2MgPerM2Day: form.neededNumber('so2MgPerM2Day', ranges.so2MgPerM2Day),
      chlorideMgPerM2Day: form.neededNumber('chlorideMgPerM2Day', ranges.chlorideMgPerM2Day),
    },
    place: form.text('place') === 'outdoors' ? 'outdoors' : 'indoors',
  }
}
