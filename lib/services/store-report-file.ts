import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import { boxYears, type BoxYear } from '../papers/store-report-line.ts'
import { byteOrderMark, csvText } from '../tables/csv-write.ts'
import type { World } from './ports.ts'
import { reportYear, type StoreYear } from './store-report.ts'

export const yearTables = ['boxes', 'renewals', 'events', 'movements'] as const
export type YearTable = (typeof yearTables)[number]

export type YearFileAsked = { readonly projectId: string; readonly year: number } & (
  | { readonly format: 'json' }
  | { readonly format: 'csv'; readonly table: YearTable }
)

type Cell = string | number | null

const text = (cell: Cell): string =>
  typeof cell === 'number' ? String(Math.round(cell * 1000) / 1000) : (cell ?? '')

function table(headings: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return byteOrderMark + csvText([headings, ...rows.map((row) => row.map(text))])
}

function boxesTable(lines: readonly BoxYear[]): string {
  const rows = lines.map((line): readonly Cell[] => {
    const { lastRead, risk, due, done } = line
    const how = (which: 'in-time' | 'late' | 'unseen') => done.filter((one) => one.how === which).length
    return [
      line.box,
      line.room,
      line.finds,
      line.limitRhPercent,
      line.state,
      lastRead?.on ?? null,
      lastRead?.by ?? null,
      lastRead?.lowRhPercent ?? null,
      lastRead?.highRhPercent ?? null,
      line.strips,
      line.loggerDays,
      line.putInKg,
      line.takenOutKg,
      how('in-time'),
      how('late'),
      how('unseen'),
      due?.when ?? null,
      due?.early ?? null,
      due?.likely ?? null,
      risk?.findIds.length ?? 0,
      risk?.hoursAbove ?? 0,
      risk?.worstRhPercent ?? null,
      risk?.stripsOver ?? 0,
    ]
  })
  return table(
    [
      'box',
      'room',
      'finds',
      'limit_rh_percent',
      'state',
      'last_read_on',
      'last_read_by',
      'last_read_low_rh_percent',
      'last_read_high_rh_percent',
      'strips_read',
      'logger_days',
      'gel_put_in_kg',
      'gel_taken_out_kg',
      'renewed_in_time',
      'renewed_late',
      'renewed_unseen',
      'renewal_due',
      'due_early_on',
      'due_likely_on',
      'finds_at_risk',
      'hours_above_limit',
      'worst_rh_percent',
      'strips_over_limit',
    ],
    rows,
  )
}

function renewalsTable({ report }: StoreYear): string {
  const rows = report.renewals.done.map(({ on, box, room, gelKg, removedKg, how }): readonly Cell[] => [
    on,
    box,
    room,
    gelKg,
    removedKg,
    how,
  ])
  return table(['on', 'box', 'room', 'gel_kg', 'removed_kg', 'how'], rows)
}

function eventsTable({ water, lids }: StoreYear): string {
  const came = water.map(({ on, room, cause, boxes, note }): readonly Cell[] => [
    on,
    'water',
    room,
    boxes?.join('; ') ?? null,
    cause,
    note,
  ])
  const loose = lids.flatMap(({ box, room, notSeatedOn }) =>
    notSeatedOn.map((on): readonly Cell[] => [on, 'lid-not-seated', room, box, null, null]),
  )
  const rows = [...came, ...loose].toSorted((a, b) => (String(a[0]) < String(b[0]) ? -1 : 1))
  return table(['on', 'event', 'room', 'boxes', 'cause', 'note'], rows)
}

function movementsTable({ movements }: StoreYear): string {
  const rows = movements.map((one): readonly Cell[] => [
    one.findNumber,
    one.object,
    one.box,
    one.from,
    one.to,
    one.where,
    one.why,
    one.days,
    one.needsHumidity ? 'yes' : 'no',
  ])
  return table(
    ['find_number', 'object', 'box', 'out_from', 'back_on', 'where', 'why', 'days_out', 'needs_humidity'],
    rows,
  )
}

/** The year as data: all of it as JSON with units in its keys, or one of its tables as CSV. */
export async function reportYearFile(world: World, asked: YearFileAsked): Answer<string> {
  const found = await reportYear(world, asked)
  if (!found.ok) return found
  const year = found.value
  const lines = boxYears(year.lines, year.report)
  if (asked.format === 'csv') {
    switch (asked.table) {
      case 'boxes':
        return given(boxesTable(lines))
      case 'renewals':
        return given(renewalsTable(year))
      case 'events':
        return given(eventsTable(year))
      case 'movements':
        return given(movementsTable(year))
    }
  }
  const { project, lines: _kept, boxIds: _ids, ...told } = year
  const whole = { project: project.name, invented: project.invented, ...told, boxes: lines }
  return given(`${JSON.stringify(whole, null, 2)}\n`)
}
