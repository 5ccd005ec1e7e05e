import { daysBetween, type IsoDate } from '../../lib/base/calendar.ts'
import type { Chance } from './chance.ts'
import { firstDay, spread, type TrueStore } from './store-true.ts'

/** Files as four makes of logger write them, each in its own form, read from what the store really held. */
const hourMs = 3_600_000
const stepMs = 3 * hourMs

interface Reading {
  readonly at: Date
  readonly rh: number
  readonly t: number
}

interface Log {
  readonly from: string
  readonly to: string
  readonly truth: (day: number) => { readonly rh: number; readonly t: number }
  /** What this sensor always reads too high [%]. */
  readonly offset: number
  readonly floor?: number
}

function readings({ from, to, truth, offset, floor = 0 }: Log, luck: Chance): readonly Reading[] {
  const [first, last] = [Date.parse(`${from}T00:00Z`), Date.parse(`${to}T00:00Z`)]
  let drift = 0
  return Array.from({ length: Math.floor((last - first) / stepMs) }, (_, step) => {
    const at = new Date(first + step * stepMs)
    const day = daysBetween(firstDay, at.toISOString().slice(0, 10) as IsoDate)
    const hour = at.getUTCHours()
    drift = drift * 0.98 + spread(luck) * 0.06
    const here = truth(day)
    const t = here.t + 0.5 * Math.sin(((hour - 9) / 24) * 2 * Math.PI) + spread(luck) * 0.1
    return { at, rh: Math.max(floor, here.rh + offset + drift + spread(luck) * 0.15), t }
  })
}

const two = (number: number) => String(number).padStart(2, '0')

/** The parts of a moment on the clock of the store, which changes in spring and autumn. */
function local(at: Date) {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: 'Europe/London',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hour12: false,
  }).formatToParts(at)
  const part = (type: string) => parts.find((one) => one.type === type)!.value
  return {
    year: part('year'),
    month: part('month'),
    day: part('day'),
    hour: Number(part('hour')) % 24,
    minute: part('minute'),
  }
}

function roomLog(all: readonly Reading[]): string {
  const head = ['Serial number,TW-L01', 'Model,room logger', 'Place,Metal store (invented)', 'Clock,UTC', '']
  const lines = all.map(
    ({ at, rh, t }) => `${at.toISOString().slice(0, 19)}Z,${t.toFixed(2)},${rh.toFixed(1)}`,
  )
  return [...head, 'timestamp,temperature_c,relative_humidity_percent', ...lines, ''].join('\n')
}

function commaLog(all: readonly Reading[]): string {
  const comma = (value: number) => value.toFixed(1).replace('.', ',')
  const lines = all.map(({ at, rh, t }) => {
    const { year, month, day, hour, minute } = local(at)
    return `${day}.${month}.${year} ${two(hour)}:${minute};${comma(t)};${comma(rh)}`
  })
  return [
    'Serial;TW-L04',
    'Box;TW-B10 (invented)',
    'Date/Time;Temperature °C;Humidity %rh',
    ...lines,
    '',
  ].join('\r\n')
}

function twelveHourLog(all: readonly Reading[]): string {
  const lines = all.map(({ at, rh, t }, number) => {
    const [month, day, year] = [at.getUTCMonth() + 1, at.getUTCDate(), at.getUTCFullYear()]
    const hour = at.getUTCHours()
    const clock = `${two(hour % 12 === 0 ? 12 : hour % 12)}:00:00 ${hour < 12 ? 'AM' : 'PM'}`
    return `${number + 1}\t${two(month)}/${two(day)}/${year} ${clock}\t${((t * 9) / 5 + 32).toFixed(1)}\t${rh.toFixed(1)}`
  })
  return [
    'S/N: TW-L07',
    'Notes: invented; below 15 %RH out of range',
    'no.\ttaken at (UTC+00:00)\ttemperature °F\thumidity %',
    ...lines,
    '',
  ].join('\n')
}

/** A day was lost when the battery was changed, and the memory was read out twice. */
function offsetLog(all: readonly Reading[]): string {
  const kept = all.filter(({ at }) => at.toISOString().slice(0, 10) !== '2026-05-19')
  const twice = kept.slice(1200, 1212)
  const lines = [...kept.slice(0, 1212), ...twice, ...kept.slice(1212)].map(({ at, rh, t }) => {
    const { year, month, day, hour, minute } = local(at)
    const summer = Date.UTC(Number(year), Number(month) - 1, Number(day), hour) - at.getTime() > hourMs / 2
    const stamp = `${year}-${month}-${day} ${two(hour)}:${minute}:00${summer ? '+01:00' : '+00:00'}`
    return `${stamp}|${rh.toFixed(2)}|${t.toFixed(2)}`
  })
  return ['# logger TW-L05, invented', 'Time|Humidity (%)|Temperature (C)', ...lines, ''].join('\n')
}

export function logs(store: TrueStore, luck: Chance): ReadonlyMap<string, string> {
  const inBox = (box: string) => (day: number) => ({
    rh: store.box(box, day),
    t: store.room('Metal store', day).t,
  })
  const inRoom = (day: number) => store.room('Metal store', day)
  return new Map([
    [
      'logs/metal-store-room.csv',
      roomLog(readings({ from: '2024-12-11', to: '2026-11-20', truth: inRoom, offset: 0.6 }, luck)),
    ],
    [
      'logs/box-10.txt',
      commaLog(
        readings({ from: '2025-11-21', to: '2026-11-20', truth: inBox('TW-B10'), offset: -0.8 }, luck),
      ),
    ],
    [
      'logs/box-5-stick.txt',
      twelveHourLog(
        readings(
          { from: '2026-05-13', to: '2026-11-18', truth: inBox('TW-B05'), offset: 0.9, floor: 15 },
          luck,
        ),
      ),
    ],
    [
      'logs/box-22.txt',
      offsetLog(
        readings({ from: '2026-01-13', to: '2026-11-19', truth: inBox('TW-B22'), offset: 0.4 }, luck),
      ),
    ],
  ])
}
