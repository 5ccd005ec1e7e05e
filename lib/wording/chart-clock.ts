/** What a clock on the wall shows, in some time zone. Months count from 1. */
export interface Clock {
  readonly year: number
  readonly month: number
  readonly day: number
  readonly hour: number
  readonly minute: number
}

const formats = new Map<string, Intl.DateTimeFormat>()

function formatOf(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone)
  if (known !== undefined) return known
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
  })
  formats.set(zone, format)
  return format
}

/** The clock of that zone at an instant; the browser's own tables serve, so that charts carry none with them. */
export function clockAt(atMs: number, zone: string): Clock {
  const parts = new Map(
    formatOf(zone)
      .formatToParts(atMs)
      .map(({ type, value }) => [type, Number(value)]),
  )
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.get(type) ?? 0
  return {
    year: part('year'),
    month: part('month'),
    day: part('day'),
    hour: part('hour'),
    minute: part('minute'),
  }
}

/** The instant [ms] at which that clock shows this; where clocks skip it, the same time after the skip. Fields may run over. */
export function instantOf({ year, month, day, hour, minute }: Clock, zone: string): number {
  const asUtc = Date.UTC(year, month - 1, day, hour, minute)
  const ahead = (at: number) => {
    const shown = clockAt(at, zone)
    const minutes = Math.floor(at / 60_000) * 60_000
    return Date.UTC(shown.year, shown.month - 1, shown.day, shown.hour, shown.minute) - minutes
  }
  const near = asUtc - ahead(asUtc)
  return asUtc - ahead(near)
}
