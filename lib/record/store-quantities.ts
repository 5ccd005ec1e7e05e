import type { Quantity } from './quantity.ts'

const percent = { '%': 1, percent: 1, rh: 1, '%rh': 1, '% rh': 1, 'percent rh': 1 }
const celsius = { c: 1, '°c': 1, 'deg c': 1, celsius: 1 }
const litres = { l: 1, litre: 1, litres: 1, liter: 1, liters: 1, ltr: 1, ml: 0.001, 'm³': 1000 }
const kilograms = { kg: 1, g: 0.001, kilogram: 1, kilograms: 1, gram: 0.001, grams: 0.001 }
const milligrams = { mg: 1, g: 1000, µg: 0.001 }
const millimetres = { mm: 1, cm: 10, m: 1000 }
const perDay = { '/d': 1, '/day': 1, 'per day': 1, 'a day': 1, '/h': 24, 'per hour': 24, 'an hour': 24 }

const humidity: Quantity = { units: percent, range: [0, 100], percent: true }
const temperature: Quantity = { units: celsius, range: [-40, 80] }
const size: Quantity = { units: millimetres, range: [1, 20_000] }
const weight: Quantity = { units: kilograms, range: [0, 10_000] }

/** What the numbers of the store's tables may be, by column; every column of numbers stands here. */
export const storeQuantities: Readonly<Record<string, Quantity>> = {
  rh_low: humidity,
  rh_high: humidity,
  t_low: temperature,
  t_high: temperature,
  volume_l: { units: litres, range: [0.01, 1_000_000] },
  air_changes_per_day: { units: perDay, range: [0, 1000] },
  gel_kg: weight,
  gel_rh_percent: humidity,
  target_min: humidity,
  target_max: humidity,
  length_mm: size,
  width_mm: size,
  height_mm: size,
  max_kg: weight,
  strip_low: humidity,
  strip_high: humidity,
  floor_rh_percent: humidity,
  error_rh_percent: { units: percent, range: [0, 50] },
  removed_kg: weight,
  minutes: { units: { min: 1, minute: 1, minutes: 1, h: 60, hour: 60, hours: 60 }, range: [0, 1_000_000] },
  area_cm2: { units: { 'cm²': 1, 'mm²': 0.01 }, range: [0.01, 10_000] },
  days: { units: { d: 1, day: 1, days: 1, week: 7, weeks: 7 }, range: [1, 10_000] },
  mass_change_mg: { units: milligrams, range: [-100_000, 100_000] },
  weighing_error_mg: { units: milligrams, range: [0, 1000] },
}

/** Columns of which the first may not lie above, or after, the second. */
export const storeEnds: readonly (readonly [string, string])[] = [
  ['rh_low', 'rh_high'],
  ['t_low', 't_high'],
  ['target_min', 'target_max'],
  ['strip_low', 'strip_high'],
  ['from', 'to'],
]
