import type { FieldName } from './fields.ts'
import { fields } from './fields.ts'
import { readQuantity, type NumberRead } from './quantity.ts'

export type { NumberRead } from './quantity.ts'

/** What a unit is worth in the unit that the field's name ends in. */
const mass = { g: 1, gr: 1, gm: 1, gram: 1, grams: 1, gramme: 1, grammes: 1, kg: 1000, mg: 0.001 }
const length = { mm: 1, cm: 10, m: 1000 }
const days = { d: 1, day: 1, days: 1, week: 7, weeks: 7 }
const count = {
  x: 1,
  pc: 1,
  pcs: 1,
  piece: 1,
  pieces: 1,
  bits: 1,
  frag: 1,
  frags: 1,
  fragment: 1,
  fragments: 1,
}

const units: Readonly<Partial<Record<FieldName, Readonly<Record<string, number>>>>> = {
  mass_g: mass,
  length_mm: length,
  width_mm: length,
  thickness_mm: length,
  days_since_lifting: days,
  watched_days: days,
  quantity: count,
  fragments: count,
  soil_ph: { ph: 1 },
  soil_chloride_mg_kg: { 'mg/kg': 1, ppm: 1, 'g/kg': 1000 },
  stored_rh_percent: { '%': 1, percent: 1, rh: 1, '%rh': 1, '% rh': 1, 'percent rh': 1 },
  stored_temperature_c: { c: 1, '°c': 1, 'deg c': 1, celsius: 1 },
  date_from: { ad: 1, ce: 1, bc: -1, bce: -1 },
  date_to: { ad: 1, ce: 1, bc: -1, bce: -1 },
}

/** A number with or without its unit, with decimal point or comma; never a guess where it could be either of two. */
export function readNumber(field: FieldName, text: string): NumberRead {
  const entry = fields[field]
  return readQuantity(
    {
      units: units[field] ?? {},
      whole: entry.kind === 'whole',
      range: 'range' in entry ? entry.range : null,
      percent: field === 'stored_rh_percent',
    },
    text,
  )
}
