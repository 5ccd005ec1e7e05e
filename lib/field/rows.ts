import type { Knowledge } from '../knowledge/knowledge.ts'
import { namesOf } from '../knowledge/names.ts'
import { assemble } from '../record/assemble.ts'
import type { FieldName } from '../record/fields.ts'
import { byOccasion } from '../record/gather.ts'
import type { GivenCell, GivenRow } from '../record/given.ts'
import type { Problem } from '../record/problem.ts'
import { dayOrders } from '../record/read-record.ts'
import { readRow, type HazardSeen, type Reading, type RowRead } from '../record/read-row.ts'
import type { ConditionRecord } from '../record/record.ts'

/** A row as it is typed: texts by field. The same object means the same row, unchanged. */
export interface TypedRow {
  readonly id: string
  readonly cells: Readonly<Partial<Record<FieldName, string>>>
}

export interface ReadRow {
  readonly id: string
  /** The record the row belongs to; null where it has no number yet, or the find no material. */
  readonly record: ConditionRecord | null
  /** True for the first row of its record: the plan stands there. */
  readonly leads: boolean
  readonly problems: readonly Problem[]
  /** Hazards a row names that gives no plan: a missing number must not hide them. */
  readonly loudHazards: readonly HazardSeen[]
}

/** A record is put together again only where one of its rows has changed; what stays the same stays the same object. */
interface Kept {
  readonly rows: readonly RowRead[]
  readonly record: ConditionRecord | null
  readonly problems: ReadonlyMap<number, readonly Problem[]>
}

export class RowReader {
  private readonly knowledge: Knowledge
  private reading: Reading
  private read = new WeakMap<TypedRow, RowRead>()
  private given = new WeakMap<TypedRow, GivenRow>()
  private kept = new WeakMap<RowRead, Kept>()
  private results = new WeakMap<RowRead, { readonly kept: Kept | null; readonly result: ReadRow }>()
  private serial = 0

  constructor(knowledge: Knowledge) {
    this.knowledge = knowledge
    this.reading = {
      names: namesOf(knowledge.vocabulary),
      words: knowledge.vocabulary.textWords,
      dayOrders: new Map(),
    }
  }

  rows(rows: readonly TypedRow[]): ReadonlyMap<string, ReadRow> {
    this.settleDates(rows)
    const read = rows.map((row) => ({ id: row.id, row: this.readOne(row) }))
    const idOf = new Map(read.map(({ id, row }) => [row.row, id]))
    const result = new Map<string, ReadRow>()
    for (const { id, row } of read) {
      if (row.findNumber === null) result.set(id, this.told(id, row, null, false))
    }
    const finds = Map.groupBy(
      read.flatMap(({ row }) => (row.findNumber === null ? [] : [row])),
      ({ findNumber }) => findNumber,
    )
    for (const group of finds.values()) {
      for (const occasion of byOccasion(group)) {
        const kept = this.put(occasion)
        for (const [at, row] of occasion.entries()) {
          const id = idOf.get(row.row)!
          result.set(id, this.told(id, row, kept, at === 0))
        }
      }
    }
    return result
  }

  /** Which of day and month comes first is decided over a whole column, so a new date may change how others are read. */
  private settleDates(rows: readonly TypedRow[]) {
    const orders = dayOrders(rows.map((row) => this.giveOne(row)))
    const before = this.reading.dayOrders
    if ([...orders].every(([field, order]) => before.get(field) === order)) return
    this.reading = { ...this.reading, dayOrders: orders }
    this.read = new WeakMap()
  }

  private giveOne(row: TypedRow): GivenRow {
    const known = this.given.get(row)
    if (known !== undefined) return known
    const { fields } = this.knowledge.vocabulary
    const cells = new Map<FieldName, GivenCell>()
    for (const [field, text] of Object.entries(row.cells) as [FieldName, string][]) {
      if (text.trim() !== '') cells.set(field, { column: fields[field]?.label ?? field, value: text })
    }
    this.serial += 1
    const given = { row: this.serial, cells, findExtra: {}, partExtra: {} }
    this.given.set(row, given)
    return given
  }

  private readOne(row: TypedRow): RowRead {
    const known = this.read.get(row)
    if (known !== undefined) return known
    const read = readRow(this.giveOne(row), this.reading)
    this.read.set(row, read)
    return read
  }

  private told(id: string, row: RowRead, kept: Kept | null, leads: boolean): ReadRow {
    const known = this.results.get(row)
    if (known !== undefined && known.kept === kept && known.result.leads === leads) return known.result
    const result = {
      id,
      record: kept?.record ?? null,
      leads,
      problems: [...row.problems, ...(kept?.problems.get(row.row) ?? [])],
      loudHazards: kept === null || kept.record === null ? row.hazards : [],
    }
    this.results.set(row, { kept, result })
    return result
  }

  private put(rows: readonly RowRead[]): Kept {
    const first = rows[0]!
    const known = this.kept.get(first)
    if (
      known !== undefined &&
      known.rows.length === rows.length &&
      known.rows.every((row, at) => row === rows[at])
    )
      return known
    const { record, problems } = assemble(rows)
    const kept = { rows, record, problems: Map.groupBy(problems, ({ row }) => row ?? first.row) }
    this.kept.set(first, kept)
    return kept
  }
}
