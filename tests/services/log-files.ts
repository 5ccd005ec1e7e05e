import { bytes } from './world.ts'

export interface Invented {
  readonly serial?: string
  readonly from: string
  readonly hours: number
  readonly stepHours?: number
  readonly rh: (hour: number) => number
  readonly t?: (hour: number) => number
}

/** A logger's file as an ordinary logger writes it: stamps in UTC, one sensor. */
export function logText({ serial, from, hours, stepHours = 1, rh, t = () => 20 }: Invented): string {
  const first = Date.parse(`${from}T00:00Z`)
  const head = serial === undefined ? [] : [`Serial number,${serial}`, '']
  const lines = Array.from({ length: Math.floor(hours / stepHours) }, (_, step) => {
    const hour = step * stepHours
    const stamp = new Date(first + hour * 3_600_000).toISOString().slice(0, 19)
    return `${stamp}Z,${t(hour).toFixed(2)},${rh(hour).toFixed(2)}`
  })
  return [...head, 'timestamp,temperature_c,relative_humidity_percent', ...lines, ''].join('\n')
}

export const logBytes = (log: Invented): Uint8Array => bytes(logText(log))
