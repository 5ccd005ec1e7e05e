import { fold } from '../../base/fold.ts'
import { widest } from './delimiter.ts'
import { readHeading } from './heading-words.ts'
import type { Layout } from './layout.ts'
import { readCell } from './number.ts'

/** The headings of the table once more; units may have been told below them. */
export function isOwnHeading(cells: readonly string[], layout: Layout): boolean {
  const filled = cells.filter((cell) => cell !== '')
  if (filled.length < 2 || layout.headingLine === null) return false
  return cells.every((cell, at) => fold(layout.headings[at] ?? '').startsWith(fold(cell)))
}

/** Headings, but not those of this table. */
export function isNewHeading(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '')
  if (filled.length < 2 || filled.length > widest) return false
  if (filled.some((cell) => cell.length > 60 || readCell(cell).kind === 'number')) return false
  const senses = new Set(filled.map((cell) => readHeading(cell).sense))
  const moment = senses.has('stamp') || senses.has('date') || senses.has('time')
  const value = senses.has('temperature') || senses.has('humidity')
  return value && (moment || (senses.has('temperature') && senses.has('humidity')))
}
