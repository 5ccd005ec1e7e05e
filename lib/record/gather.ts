import { assemble, type Assembled } from './assemble.ts'
import type { RowRead } from './read-row.ts'

/** What sets records of one find apart: its site and its day, either of which a further row may leave out. */
interface Occasion {
  readonly site: string
  readonly day: string
}

const occasionOf = (row: RowRead): Occasion => ({
  site: String(row.values.get('site_code') ?? ''),
  day: String(row.values.get('recorded_on') ?? row.unread.get('recorded_on') ?? ''),
})

const keyOf = ({ site, day }: Occasion) => JSON.stringify([site, day])
const fits = (part: Occasion, whole: Occasion) =>
  (part.site === '' || part.site === whole.site) && (part.day === '' || part.day === whole.day)

/**
 * Rows of one find number, parted by site and day. A row that leaves one of them out belongs to the record it fits; where
 * it fits several, to the one before it.
 */
export function byOccasion(rows: readonly RowRead[]): readonly (readonly RowRead[])[] {
  const occasions = new Map(rows.map((row) => [keyOf(occasionOf(row)), occasionOf(row)]))
  if (occasions.size === 1) return [rows]
  const whole = [...occasions.values()].filter(
    (one) =>
      ![...occasions.values()].some(
        (other) => other !== one && keyOf(other) !== keyOf(one) && fits(one, other),
      ),
  )
  const groups = new Map<string, RowRead[]>(whole.map((one) => [keyOf(one), []]))
  const wholeRows = rows.map((row) => ({ row, key: keyOf(occasionOf(row)) }))
  for (const [at, { row, key }] of wholeRows.entries()) {
    const own = groups.get(key)
    if (own) {
      own.push(row)
      continue
    }
    const fitting = (candidate: { key: string }) => {
      const occasion = occasions.get(candidate.key)!
      return groups.has(candidate.key) && fits(occasionOf(row), occasion)
    }
    const home = wholeRows.slice(0, at).findLast(fitting) ?? wholeRows.slice(at).find(fitting)!
    groups.get(home.key)!.push(row)
  }
  return [...groups.values()]
}

export interface Gathering {
  /** Takes the next row of the file; gives the records that are complete, in the order in which they began. */
  readonly add: (row: RowRead) => readonly Assembled[]
}

/**
 * Puts rows together to records, holding no more of them than it must: `counts` says how many rows each find number has
 * in the whole file, so that a find is given out as soon as its last row is in.
 */
export function gathering(counts: ReadonlyMap<string, number>): Gathering {
  const open = new Map<string, RowRead[]>()
  const waiting = new Map<number, Assembled[]>()
  let next = 0
  return {
    add(row) {
      const find = row.findNumber
      if (find !== null) {
        const rows = open.get(find) ?? []
        rows.push(row)
        open.set(find, rows)
        if (rows.length < (counts.get(find) ?? 1)) return []
        open.delete(find)
        for (const one of byOccasion(rows).map(assemble))
          waiting.set(one.firstRow, [...(waiting.get(one.firstRow) ?? []), one])
      }
      // Finds stand in `open` in the order in which they began, so nothing before the first of them can still come.
      const end = Math.min(row.row + 1, open.values().next().value?.[0]?.row ?? Infinity)
      const ready: Assembled[] = []
      for (; next < end; next++) {
        ready.push(...(waiting.get(next) ?? []))
        waiting.delete(next)
      }
      return ready
    },
  }
}
