import { instantWords, stretchWords } from './chart-time.ts'
import { numberWords } from './band.ts'

/** What was read in one stretch of time. */
export interface StretchRead {
  readonly fromMs: number
  readonly toMs: number
  readonly rhLow: number | null
  readonly rhHigh: number | null
  readonly temperatureLow: number | null
  readonly temperatureHigh: number | null
}

interface Limits {
  readonly zone: string
  readonly limitRhPercent: number | null
  readonly floorRhPercent: number | null
}

/** The reading under the line, said so that it serves without the drawing. */
export function readingWords(read: StretchRead, { zone, limitRhPercent, floorRhPercent }: Limits): string {
  const when =
    read.fromMs === read.toMs ? instantWords(read.fromMs, zone) : stretchWords(read.fromMs, read.toMs, zone)
  if (read.rhLow === null || read.rhHigh === null) return `${when}: nothing was read`
  const said = [rhWords(read.rhLow, read.rhHigh, floorRhPercent)]
  if (read.temperatureLow !== null && read.temperatureHigh !== null)
    said.push(`${fromToWords(read.temperatureLow, read.temperatureHigh)} °C`)
  if (limitRhPercent !== null && read.rhHigh > limitRhPercent)
    said.push(read.rhLow > limitRhPercent ? 'above the limit' : 'above the limit at times')
  return `${when}: ${said.join(', ')}`
}

/** `12.1 to 14 %`; at the floor of the logger what it prints is no reading. */
export function rhWords(low: number, high: number, floor: number | null): string {
  if (floor === null || low > floor) return `${fromToWords(low, high)} %`
  if (high <= floor) return `below ${numberWords(floor)} %, less than the logger can read`
  return `up to ${numberWords(high)} %, at times below what the logger can read (${numberWords(floor)} %)`
}

function fromToWords(low: number, high: number): string {
  const [from, to] = [numberWords(low), numberWords(high)]
  return from === to ? from : `${from} to ${to}`
}
