import { salts } from '../../../lib/climate/fixed-points.ts'
import type { Quantity } from '../../../lib/record/quantity.ts'
import type { AskedQuantity } from '../../../lib/wording/climate-asked.ts'

export interface NumberField extends AskedQuantity {
  readonly units: Quantity['units']
  readonly start: string
}

const celsius = { c: 1, '°c': 1, 'deg c': 1, celsius: 1 }
const percent = { '%': 1, percent: 1, rh: 1, '%rh': 1, '% rh': 1 }
const centimetres = { cm: 1, mm: 0.1, m: 100 }
const kilograms = { kg: 1, g: 0.001 }

const temperature = (label: string, start: string): NumberField => ({
  label,
  unit: '°C',
  units: celsius,
  from: -100,
  to: 200,
  start,
})
const humidity = (label: string, start: string, to = 100): NumberField => ({
  label,
  unit: '%',
  units: percent,
  from: 0,
  to,
  start,
})
const side = (label: string, start: string): NumberField => ({
  label,
  unit: 'cm',
  units: centimetres,
  from: 1,
  to: 1000,
  start,
})
const mass = (label: string, start: string): NumberField => ({
  label,
  unit: 'kg',
  units: kilograms,
  from: 0,
  to: 10_000,
  start,
})

/** Every number that is asked for; `start` is what stands there until somebody writes over it. */
export const numberFields = {
  roomC: temperature('Temperature of the room', '20'),
  roomRh: humidity('Relative humidity of the room', '50'),
  pressureHpa: {
    label: 'Air pressure',
    unit: 'hPa',
    units: { hpa: 1, mbar: 1, pa: 0.01 },
    from: 300,
    to: 1100,
    start: '1013.25',
  },
  toC: temperature('Temperature afterwards', '15'),
  gelRh: humidity('Humidity in the box of gel', '12'),
  surfaceC: temperature('Temperature of the wall, the pipe or the find', '5'),
  startC: temperature('Temperature it is brought in with', '5'),
  thicknessMm: {
    label: 'Thickness',
    unit: 'mm',
    units: { mm: 1, cm: 10 },
    from: 0.1,
    to: 10_000,
    start: '5',
  },
  lengthCm: side('Length of the pack', '40'),
  widthCm: side('Width of the pack', '30'),
  heightCm: side('Height of the pack', '20'),
  paddingMm: {
    label: 'Padding on every side',
    unit: 'mm',
    units: { mm: 1, cm: 10 },
    from: 0,
    to: 1000,
    start: '20',
  },
  metalKg: mass('Metal in the pack', '2'),
  packingKg: mass('Packing and gel in the pack', '1'),
  saltC: temperature('Temperature of the salts', '20'),
  firstRead: humidity('Reading over the first salt', '13.8'),
  secondRead: humidity('Reading over the second salt', '34.6'),
  nowRead: humidity('Reading in the box', '15'),
} as const satisfies Readonly<Record<string, NumberField>>

export type NumberName = keyof typeof numberFields
export const numberNames = Object.keys(numberFields) as readonly NumberName[]

export const metals = ['iron', 'copper-alloy', 'silver', 'lead'] as const
export type WarmMetal = (typeof metals)[number]

/** Every choice that is asked for, the first until somebody chooses another. */
export const choiceFields = {
  convention: ['water', 'ice-below-zero'],
  brought: ['pack', 'plate'],
  metal: metals,
  firstSalt: salts,
  secondSalt: ['magnesium-chloride', 'none', ...salts.filter((salt) => salt !== 'magnesium-chloride')],
} as const satisfies Readonly<Record<string, readonly string[]>>

export type ChoiceName = keyof typeof choiceFields
export type Typed = Readonly<Record<NumberName | ChoiceName, string>>

export const startTyped: Typed = {
  ...(Object.fromEntries(numberNames.map((name) => [name, numberFields[name].start])) as Readonly<
    Record<NumberName, string>
  >),
  ...(Object.fromEntries(Object.entries(choiceFields).map(([name, [first]]) => [name, first])) as Readonly<
    Record<ChoiceName, string>
  >),
}
