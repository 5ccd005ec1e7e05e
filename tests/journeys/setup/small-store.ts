import type { ChosenFile } from './files.ts'

/** A room with ten boxes and three loggers, as a store manager would have them in tables and files. All of it invented. */
const dayMs = 86_400_000
const today = Math.floor(Date.now() / dayMs)
const isoDay = (day: number) => new Date(day * dayMs).toISOString().slice(0, 10)

const renewed = today - 250
/** Since then the lid of the fourth box lies askew. */
export const loose = today - 90
export const leaky = 'TW-B04'

const file = (name: string, lines: readonly string[]): ChosenFile => ({
  name,
  mimeType: 'text/plain',
  buffer: Buffer.from(lines.join('\r\n')),
})

export const tables: readonly ChosenFile[] = [
  file('rooms.csv', ['room,rh_low,rh_high,t_low,t_high', 'Metal store,42,50,17,20']),
  file('boxes.csv', [
    'box,room,shelf,kind,model,volume_l,gel_kg,gel_conditioned_on,gel_rh_percent,target_max',
    ...Array.from(
      { length: 10 },
      (_, at) =>
        `TW-B${String(at + 1).padStart(2, '0')},Metal store,A${1 + (at % 5)},box,clip-lid 10 l,10,0.5,${isoDay(renewed)},5,${at === 1 ? 30 : 12}`,
    ),
  ]),
  file('loggers.csv', [
    'serial,model,floor_rh_percent,box,from',
    ...[4, 2, 3].map(
      (box, at) => `TW-L${at + 1},small logger,${at === 1 ? 15 : 1},TW-B0${box},${isoDay(renewed)}`,
    ),
  ]),
]

const stepMs = 3 * 3_600_000
const first = (renewed + 10) * dayMs
const moments = Array.from({ length: ((today - 1) * dayMs - first) / stepMs }, (_, at) => first + at * stepMs)

/** Relative humidity in a box of half a kilogram of gel: slow while the lid sits, quick after. */
function inside(ms: number, looseSince: number | null): number {
  const airChangesPerDay = (day: number) => (looseSince !== null && day >= looseSince ? 12 : 0.4)
  let rh = 5
  for (let day = renewed; day < ms / dayMs; day++) {
    const pace = (airChangesPerDay(day) * 0.00173) / 2.5017
    rh += (46 - rh) * (1 - Math.exp(-pace * Math.min(1, ms / dayMs - day)))
  }
  return rh
}
/** A sensor's small unrest, the same every time. */
const unrest = (at: number) => 0.25 * Math.sin(at * 1.7) + 0.2 * Math.sin(at * 0.37)

const clock = new Intl.DateTimeFormat('de', {
  timeZone: 'Europe/Copenhagen',
  day: '2-digit',
  month: '2-digit',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
})
const comma = (value: number) => value.toFixed(1).replace('.', ',')

/** Decimal commas, and a clock that was changed between summer and winter. */
const withCommas = file('fourth box.txt', [
  'Serial;TW-L1',
  'Date;Temperature °C;Humidity %rh',
  ...moments.map((ms, at) => {
    const rh = inside(ms, loose) + unrest(at)
    return `${clock.format(ms).replace(',', '')};${comma(18 + unrest(at))};${comma(rh)}`
  }),
])

/** Drier than its logger can tell: the same least value for months. */
const flat = file('second box.csv', [
  'serial,TW-L2',
  'timestamp,relative humidity (%),temperature (°C)',
  ...moments.map((ms, at) => `${new Date(ms).toISOString()},15.0,${(18 + unrest(at)).toFixed(1)}`),
])

export const missingDay = today - 40
/** A day of it is not there. */
const gap = file('third box.tsv', [
  'Serial number\tTW-L3',
  'timestamp\trh %\ttemp °C',
  ...moments
    .map((ms, at) => ({ ms, at }))
    .filter(({ ms }) => Math.floor(ms / dayMs) !== missingDay)
    .map(
      ({ ms, at }) =>
        `${new Date(ms).toISOString()}\t${(inside(ms, null) + unrest(at)).toFixed(1)}\t${(18 + unrest(at)).toFixed(1)}`,
    ),
])

export const logs = { withCommas, flat, gap }
