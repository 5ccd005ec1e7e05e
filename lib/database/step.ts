import type { CreateTableBuilder, Kysely } from 'kysely'
import type { Tables } from './tables.ts'

/** One statement that changes the tables, harmless when run again. */
export interface Step {
  readonly name: string
  readonly run: (db: Kysely<Tables>) => Promise<void>
}

type ColumnType = 'text' | 'bigint'

/** `?` marks a column that may be empty. */
type Columns = Readonly<Record<string, ColumnType | `${ColumnType}?`>>

interface TableForm {
  readonly columns: Columns
  /** Columns that hold the id of a row of another table. */
  readonly refers?: Readonly<Record<string, string>>
  readonly unique?: readonly string[]
}

const common: Columns = {
  version: 'bigint',
  created_at: 'bigint',
  updated_at: 'bigint',
  person_id: 'text',
  device_id: 'text',
}

/** A new table with the columns that every row wears. */
export function table(name: string, { columns, refers = {}, unique }: TableForm): Step {
  const run = async (db: Kysely<Tables>) => {
    let table: CreateTableBuilder<string, string> = db.schema
      .createTable(name)
      .ifNotExists()
      .addColumn('id', 'text', (column) => column.primaryKey().notNull())
    for (const [column, type] of Object.entries({ ...common, ...columns })) {
      const plain = type.replace('?', '') as ColumnType
      const target = refers[column]
      table = table.addColumn(column, plain, (built) => {
        const filled = type.endsWith('?') ? built : built.notNull()
        return target === undefined ? filled : filled.references(`${target}.id`)
      })
    }
    // The name is the engine's handle of an index, so it must be the only one of its kind.
    if (unique) table = table.addUniqueConstraint(`${name}_once`, [...unique])
    await table.execute()
  }
  return { name: `table ${name}`, run }
}

export function index(name: string, on: string, columns: readonly string[]): Step {
  return {
    name: `index ${name}`,
    run: (db) =>
      db.schema
        .createIndex(name)
        .ifNotExists()
        .on(on)
        .columns([...columns])
        .execute(),
  }
}
