import { addDays, daysBetween, type IsoDate } from '../../lib/base/calendar.ts'
import type { Chance } from './chance.ts'
import { gels } from './store-gel.ts'
import type { Box } from './store.ts'

/**
 * What the humidity in the invented store really was, day by day: rooms by season and weather, boxes by a leak and what their
 * gel takes up. Loggers and strips read from it, each with an error of its own.
 */
export const firstDay = '2024-12-01' as IsoDate

const airHoldsGPerLPercent = 0.0001729
const gelTakesGPerKgPercent = 5

/** Since then the lid of this box has not been seated, and nobody has seen it. */
export const looseLid = { box: 'TW-B10', since: '2026-03-14' as IsoDate, times: 14 } as const

export type RoomName = 'Finds hut' | 'Metal store' | 'General store' | 'Cold room'

const rooms: Readonly<
  Record<
    RoomName,
    { readonly mean: number; readonly swing: number; readonly t: number; readonly tSwing: number }
  >
> = {
  'Finds hut': { mean: 65, swing: 9, t: 15, tSwing: 8 },
  'Metal store': { mean: 35, swing: 6, t: 19, tSwing: 1.6 },
  'General store': { mean: 52, swing: 6, t: 18, tSwing: 3 },
  'Cold room': { mean: 81, swing: 4, t: 5, tSwing: 1 },
}

export interface TrueStore {
  readonly days: number
  readonly room: (name: string, day: number) => { readonly rh: number; readonly t: number }
  /** Relative humidity [%] in a box on a day since `firstDay`. */
  readonly box: (name: string, day: number) => number
}

/** A draw about nought with a spread of one. */
export function spread({ next }: Chance): number {
  let sum = 0
  for (let i = 0; i < 12; i += 1) sum += next()
  return sum - 6
}

const season = (day: IsoDate, highest = '2024-08-05' as IsoDate) =>
  Math.cos((2 * Math.PI * daysBetween(highest, day)) / 365.25)

function weather(luck: Chance, days: number): Float64Array {
  const air = new Float64Array(days)
  for (let day = 1; day < days; day += 1) air[day] = air[day - 1]! * 0.8 + spread(luck) * 1.2
  return air
}

interface Filling {
  /** Day since `firstDay`; before it where the gel is older. */
  readonly day: number
  readonly kg: number
  readonly rh: number
}

/** Every gel the box is known to have held, oldest first: by the diary, and by the list of boxes. */
function fillings({ box, row }: Box): readonly Filling[] {
  const told = gels
    .filter((one) => one.box === box)
    .map(({ on, kg, rh }) => ({ day: daysBetween(firstDay, on), kg, rh }))
  const on = row['gel_conditioned_on']
  if (typeof on !== 'string' || on === '') return told
  const day = daysBetween(firstDay, on as IsoDate)
  if (told.some((one) => one.day === day)) return told
  return [...told, { day, kg: Number(row['gel_kg']), rh: Number(row['gel_rh_percent']) }]
}

function boxDays(luck: Chance, of: Box, rhOfRoom: (day: number) => number, days: number): Float64Array {
  const { row, box } = of
  const exchange = (Number(row['air_changes_per_day']) || 0.5) * Math.exp(spread(luck) * 0.3)
  const holds = Number(row['volume_l']) * airHoldsGPerLPercent
  const filled = fillings(of)
  const [first] = filled
  // What was in the box before the first gel that is known nobody wrote down.
  const unknown = {
    kg: Number(row['gel_kg']) || 0,
    rh: first === undefined ? rhOfRoom(0) : 14 + 16 * luck.next(),
  }
  let { kg, rh } = unknown
  const values = new Float64Array(days)
  for (let day = Math.min(0, first?.day ?? 0); day < days; day += 1) {
    const fresh = filled.find((one) => one.day === day)
    if (fresh) ({ kg, rh } = fresh)
    const isLoose = box === looseLid.box && day >= daysBetween(firstDay, looseLid.since)
    const leak = holds * exchange * (isLoose ? looseLid.times : 1)
    const outside = rhOfRoom(Math.max(0, day))
    rh = outside - (outside - rh) * Math.exp(-leak / (holds + kg * gelTakesGPerKgPercent))
    if (day >= 0) values[day] = rh
  }
  return values
}

export function trueStore(boxes: readonly Box[], luck: Chance, until: IsoDate): TrueStore {
  const days = daysBetween(firstDay, until) + 1
  const air = new Map(Object.keys(rooms).map((name) => [name, weather(luck, days)]))
  const room = (name: string, day: number) => {
    const { mean, swing, t, tSwing } = rooms[name as RoomName]
    const yearly = season(addDays(firstDay, Math.floor(day)))
    return { rh: mean + swing * yearly + air.get(name)![Math.floor(day)]!, t: t + tSwing * yearly }
  }
  const inside = new Map(
    boxes.map((box) => [box.box, boxDays(luck, box, (day) => room(String(box.row['room']), day).rh, days)]),
  )
  return { days, room, box: (name, day) => inside.get(name)![Math.floor(day)]! }
}
