import { cleanText } from './clean-text.ts'

/**
 * Values of kept columns in a cell. A table has only texts; anything else, and a text that a cell would not give back as
 * it was, is written as JSON behind a mark.
 */
const mark = 'json:'

export function writeExtra(value: unknown): string {
  if (typeof value === 'string' && value !== '' && cleanText(value) === value && !value.startsWith(mark))
    return value
  return `${mark}${JSON.stringify(value)}`
}

export function readExtra(cell: string): unknown {
  if (!cell.startsWith(mark)) return cell
  try {
    return JSON.parse(cell.slice(mark.length)) as unknown
  } catch {
    return cell
  }
}

/** A heading that says whether an unknown column is the find's own or a component's. */
export const findColumn = 'find.'
export const partColumn = 'part.'

/** The column that says what is wrong with a row saved to be mended; it is never read back. */
export const mendColumn = 'mend: what is wrong'
