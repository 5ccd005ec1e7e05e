import { countsOf } from './layout.ts'
import { readCell } from './number.ts'
import { readStamp } from './stamp-text.ts'
import type { Unit } from './units.ts'

export type CellSense = 'empty' | 'stamp' | 'date' | 'time' | 'number' | 'gap' | 'text'

export interface CellSeen {
  readonly sense: CellSense
  readonly value: number
  readonly mark: '.' | ',' | null
  readonly unit: Unit | null
}

const none = { value: Number.NaN, mark: null, unit: null } as const
const plainNumber = /^[+-]?\d+(?:[.,]\d+)?$/
const squeezedDate = /^(?:19|20)\d{6}(?:\d{4}(?:\d{2})?)?$/

/** What a cell looks like by itself, before anybody knows what its column is. */
export function seeCell(cell: string): CellSeen {
  if (cell === '') return { sense: 'empty', ...none }
  if (!plainNumber.test(cell) || squeezedDate.test(cell)) {
    const stamp = /\d/.test(cell) ? readStamp(cell) : null
    if (stamp) return { sense: stamp.date ? (stamp.clock ? 'stamp' : 'date') : 'time', ...none }
  }
  const read = readCell(cell)
  if (read.kind === 'number') return { sense: 'number', value: read.value, mark: read.mark, unit: read.unit }
  return { sense: read.kind === 'gap' ? 'gap' : 'text', ...none }
}

export const isMoment = (seen: CellSeen): boolean =>
  seen.sense === 'stamp' || seen.sense === 'date' || seen.sense === 'time'

/** A line that looks like a reading: something tells when, something tells how much. */
export function looksLikeReading(seen: readonly CellSeen[]): boolean {
  const dated = seen.some(({ sense }) => sense === 'stamp' || sense === 'date')
  const counted = seen.some(({ sense, value }) => {
    const counts = sense === 'number' ? countsOf(value) : null
    return counts !== null && (counts !== 'days' || !Number.isInteger(value))
  })
  const values = seen.filter(({ sense }) => sense === 'number' || sense === 'gap').length
  return dated ? values > 0 : counted && values > 1
}

/** A line of numbers only: a table that may have lost its dates, or counts them in a way that only its heading tells. */
export const isAllNumbers = (seen: readonly CellSeen[]): boolean =>
  seen.length > 1 &&
  seen.filter(({ sense }) => sense === 'number').length > 1 &&
  seen.every(({ sense }) => sense === 'number' || sense === 'gap' || sense === 'empty' || sense === 'time')
