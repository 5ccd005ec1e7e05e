import { fields, type FieldName } from './fields.ts'
import { joinList, splitList } from './list-cell.ts'
import { nameParts, type NamedPart } from './name-parts.ts'
import { problem, type Problem } from './problem.ts'
import type { FieldValue } from './cell-read.ts'
import { whereOf, type PartRead, type RowRead } from './read-row.ts'
import type { Component, ConditionRecord } from './record.ts'
import { settleTests } from './settle-tests.ts'

/** The rows of one find on one day, put together: one record, or none because no row tells of a component. */
export interface Assembled {
  readonly firstRow: number
  readonly record: ConditionRecord | null
  readonly rows: readonly RowRead[]
  readonly problems: readonly Problem[]
}

type Loose = Record<string, unknown>

const findFields = (Object.keys(fields) as FieldName[]).filter((name) => fields[name].level === 'find')
const partFields = (Object.keys(fields) as FieldName[]).filter((name) => fields[name].level === 'component')

const printed = (value: FieldValue): string => (Array.isArray(value) ? JSON.stringify(value) : String(value))

/** A list gathers what every row says; of a single value the first stands, and a later other one is a contradiction. */
function mergeField(
  field: FieldName,
  rows: readonly RowRead[],
  into: Loose,
  unread: Record<string, string>,
): readonly Problem[] {
  const kept: string[] = rows.flatMap((row) => splitList(row.unread.get(field) ?? ''))
  const problems: Problem[] = []
  let value: FieldValue | undefined
  for (const row of rows) {
    const said = row.values.get(field)
    if (said === undefined || (value !== undefined && printed(said) === printed(value))) continue
    if (value === undefined) value = said
    else if (Array.isArray(value) && Array.isArray(said)) {
      const have = new Set(value.map((item) => JSON.stringify(item)))
      value = [...value, ...said.filter((item: unknown) => !have.has(JSON.stringify(item)))] as FieldValue
    } else if (field === 'notes') {
      if (!`\n${String(value)}\n`.includes(`\n${String(said)}\n`)) value = `${String(value)}\n${String(said)}`
    } else {
      kept.push(String(said))
      problems.push(problem('contradiction', whereOf(row, field), String(said), String(value)))
    }
  }
  if (value !== undefined) into[field] = value
  // `unknown` for the day only sets an undated record apart from dated ones of the same find.
  const misread = field === 'recorded_on' ? kept.filter((text) => text !== 'unknown') : kept
  if (misread.length > 0) unread[field] = joinList([...new Set(misread)])
  return problems
}

/** Kept columns of the find; what a later row says otherwise stands beside it, counted. */
function mergeExtra(rows: readonly RowRead[]): Record<string, unknown> {
  const extra = new Map<string, unknown>()
  for (const row of rows) {
    for (const [key, value] of [...Object.entries(row.extra), ...Object.entries(row.loose)]) {
      let name = key
      for (
        let count = 2;
        extra.has(name) && JSON.stringify(extra.get(name)) !== JSON.stringify(value);
        count++
      )
        name = `${key} (${count})`
      extra.set(name, value)
    }
  }
  return Object.fromEntries(extra)
}

const bag = (name: string, entries: Readonly<Record<string, unknown>>): Loose =>
  Object.keys(entries).length === 0 ? {} : { [name]: entries }

function materialOf(part: PartRead, row: RowRead): { material: string; problems: readonly Problem[] } {
  const said = part.values.get('material')
  if (typeof said === 'string' && said !== 'unknown') return { material: said, problems: [] }
  const why = said === 'unknown' ? 'material-not-told' : part.unread.has('material') ? null : 'no-material'
  const where = { ...whereOf(row), field: 'material', column: row.columns.get('material') ?? null }
  return { material: 'metal-unidentified', problems: why === null ? [] : [problem(why, where, '')] }
}

function componentOf({ name, part, row, renamedFrom }: NamedPart): {
  component: Component
  problems: readonly Problem[]
} {
  const { material, problems } = materialOf(part, row)
  const component: Loose = {}
  for (const field of partFields) {
    const value = field === 'component' ? name : field === 'material' ? material : part.values.get(field)
    if (value !== undefined) component[field] = value
  }
  Object.assign(component, bag('extra', part.extra), bag('unread', Object.fromEntries(part.unread)))
  const renamed =
    renamedFrom === undefined
      ? []
      : [problem('component-renamed', whereOf(row, 'component'), renamedFrom, name)]
  return { component: component as unknown as Component, problems: [...renamed, ...problems] }
}

export function assemble(rows: readonly RowRead[]): Assembled {
  const firstRow = rows[0]!.row
  const { parts, repeated } = nameParts(rows)
  if (parts.length === 0) {
    return {
      firstRow,
      record: null,
      rows,
      problems: rows.map((row) => problem('no-component', whereOf(row), row.findNumber ?? '')),
    }
  }
  const record: Loose = {}
  const unread: Record<string, string> = {}
  const given = findFields.filter((field) =>
    rows.some((row) => row.values.has(field) || row.unread.has(field)),
  )
  const contradictions = given.flatMap((field) => mergeField(field, rows, record, unread))
  const read = parts.map(componentOf)
  const settled = settleTests(
    record['tests'] as readonly string[] | undefined,
    parts,
    read.map((one) => one.component),
    rows,
  )
  if (settled.tests) record['tests'] = settled.tests
  record['components'] = read.map((one) => one.component)
  Object.assign(record, bag('extra', mergeExtra(rows)), bag('unread', unread))
  return {
    firstRow,
    record: record as unknown as ConditionRecord,
    rows,
    problems: [
      ...contradictions,
      ...repeated.map((row) =>
        problem('repeated-row', whereOf(row, 'component'), String(row.part!.values.get('component'))),
      ),
      ...read.flatMap((one) => one.problems),
      ...settled.problems,
    ],
  }
}
