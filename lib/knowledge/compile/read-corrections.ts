import { isoDate } from '../../base/calendar.ts'
import type { Grade, Matter } from '../evidence.ts'
import { knowns } from '../known.ts'
import type { Knowledge } from '../knowledge.ts'
import type { Correction, CorrectionFault, CorrectionRow } from '../correction.ts'
import { nearest } from './nearest.ts'

const grades: readonly Grade[] = ['typical', 'frequent', 'occasional', 'rare', 'excluded']

type Fault = CorrectionFault extends infer One
  ? One extends { row: number }
    ? Omit<One, 'row'>
    : never
  : never

/** The rows that change a grade, and everything that is wrong with any row. */
export function readCorrections(
  rows: readonly CorrectionRow[],
  { matters, works }: Pick<Knowledge, 'matters' | 'works'>,
): { readonly corrections: readonly Correction[]; readonly faults: readonly CorrectionFault[] } {
  const faults: CorrectionFault[] = []
  const said = new Map<string, CorrectionRow>()
  const corrections = rows.flatMap((row): Correction[] => {
    const add = (fault: Fault): [] => {
      faults.push({ row: row.row, ...fault })
      return []
    }
    const now = gradeNow(row, matters, add)
    const to = among(row.grade, grades, 'grade', add)
    if (now === null || to === null) return []
    const cell = JSON.stringify([row.matter, row.group, row.state, row.rival])
    const first = said.get(cell)
    if (first !== undefined && first.grade !== row.grade)
      return add({ code: 'said-otherwise', first: first.row })
    if (first !== undefined) return []
    said.set(cell, row)
    if (to === now || row.gradeBefore === to) return []
    if (row.gradeBefore !== null && row.gradeBefore !== now)
      return add({ code: 'changed-meanwhile', printed: row.gradeBefore, now })
    const { work, place, known, because, by, on } = row
    for (const column of ['because', 'work', 'by', 'on'] as const)
      if (row[column] === '') add({ code: 'needed', column })
    if (work !== '') among(work, Object.keys(works), 'work', add)
    const mark = among(known, knowns, 'known', add)
    if (on !== '' && isoDate(on) === null) add({ code: 'not-a-day', found: on })
    if (mark === null) return []
    const { matter, group, state, rival } = row
    const source = { work, place: place === '' ? null : place, known: mark }
    return [{ row: row.row, matter, group, state, rival, from: now, to, because, ...source, by, on }]
  })
  return { corrections, faults }
}

function among<Id extends string>(
  found: string,
  ids: readonly Id[],
  column: string,
  add: (fault: Fault) => unknown,
): Id | null {
  const id = ids.find((one) => one === found)
  if (id !== undefined) return id
  add(
    found === '' ? { code: 'needed', column } : { code: 'no-such', column, found, near: nearest(found, ids) },
  )
  return null
}

/** The grade that stands in the content for the cell a row names. */
function gradeNow(
  row: CorrectionRow,
  matters: Readonly<Record<string, Matter>>,
  add: (fault: Fault) => unknown,
): Grade | null {
  const matter = among(row.matter, Object.keys(matters), 'matter', add)
  if (matter === null) return null
  const { groups } = matters[matter]!
  const id = among(
    row.group,
    groups.map((group) => group.id),
    'group',
    add,
  )
  const group = groups.find((one) => one.id === id)
  if (group === undefined) return null
  const fits = new Map([...group.states.map((one) => [one.id, one.fits] as const), ['rest', group.rest.fits]])
  const state = among(row.state, [...fits.keys()], 'state', add)
  if (state === null) return null
  const rival = among(row.rival, Object.keys(fits.get(state)!), 'rival', add)
  return rival === null ? null : fits.get(state)![rival]!
}
