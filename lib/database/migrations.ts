import type { CreateTableBuilder, Kysely } from 'kysely'
import type { Tables } from './tables.ts'

/**
 * One statement a step, harmless when run again, only ever added at the end: engines that cannot take back a change of
 * tables must be able to stop after any step and go on from there.
 */
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

function table(name: string, { columns, refers = {}, unique }: TableForm): Step {
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

function index(name: string, on: string, columns: readonly string[]): Step {
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

export const steps: readonly Step[] = [
  table('person', { columns: { name: 'text', role: 'text', verified: 'bigint' }, unique: ['name', 'role'] }),
  table('device', { columns: { name: 'text' }, unique: ['name'] }),
  table('project', { columns: { name: 'text', invented: 'bigint' }, unique: ['name'] }),
  table('site', {
    columns: { project_id: 'text', code: 'text', name: 'text' },
    refers: { project_id: 'project' },
    unique: ['project_id', 'code'],
  }),
  table('contact', {
    columns: { site_id: 'text', kind: 'text', name: 'text', reach: 'text' },
    refers: { site_id: 'site' },
    unique: ['site_id', 'kind'],
  }),
  table('room', {
    columns: { project_id: 'text', name: 'text', given: 'text' },
    refers: { project_id: 'project' },
    unique: ['project_id', 'name'],
  }),
  table('box', {
    columns: { project_id: 'text', name: 'text', given: 'text' },
    refers: { project_id: 'project' },
    unique: ['project_id', 'name'],
  }),
  table('find', {
    columns: { project_id: 'text', site_id: 'text', find_number: 'text', sort_key: 'text' },
    refers: { project_id: 'project', site_id: 'site' },
    unique: ['site_id', 'find_number'],
  }),
  index('find_by_number', 'find', ['project_id', 'sort_key', 'id']),
  table('import_batch', {
    columns: {
      project_id: 'text',
      file_name: 'text',
      sha256: 'text',
      kind: 'text',
      headings: 'text',
      records_read: 'bigint',
      records_added: 'bigint',
      records_already_there: 'bigint',
      rows_rejected: 'bigint',
      problems: 'bigint',
    },
    refers: { project_id: 'project' },
  }),
  index('import_batch_by_project', 'import_batch', ['project_id', 'created_at']),
  table('rejected_row', {
    columns: { import_id: 'text', row_number: 'bigint', line: 'bigint?', cells: 'text', problems: 'text' },
    refers: { import_id: 'import_batch' },
  }),
  index('rejected_row_by_import', 'rejected_row', ['import_id', 'row_number']),
  table('condition_record', {
    columns: {
      find_id: 'text',
      recorded_on: 'text',
      content_hash: 'text',
      record: 'text',
      import_id: 'text?',
    },
    refers: { find_id: 'find', import_id: 'import_batch' },
    unique: ['find_id', 'content_hash'],
  }),
  index('condition_record_by_find', 'condition_record', ['find_id', 'recorded_on', 'id']),
  table('plan', {
    columns: { record_id: 'text', knowledge: 'text', as_of: 'text', plan: 'text' },
    refers: { record_id: 'condition_record' },
    unique: ['record_id', 'knowledge', 'as_of'],
  }),
  table('standing', {
    columns: {
      find_id: 'text',
      project_id: 'text',
      record_id: 'text',
      knowledge: 'text',
      as_of: 'text',
      urgency: 'bigint',
      due_on: 'text',
      inspect_on: 'text',
      stops: 'bigint',
      keep: 'text',
      band: 'text',
      box: 'text',
      search: 'text',
      sort_key: 'text',
      line: 'text',
    },
    refers: { find_id: 'find', record_id: 'condition_record' },
    unique: ['find_id'],
  }),
  index('standing_by_urgency', 'standing', ['project_id', 'urgency', 'due_on', 'sort_key', 'find_id']),
  index('standing_by_number', 'standing', ['project_id', 'sort_key', 'find_id']),
  index('standing_by_band', 'standing', ['project_id', 'band', 'urgency']),
  index('standing_by_day', 'standing', ['project_id', 'as_of', 'knowledge']),
  table('change', {
    columns: { what: 'text', person_name: 'text', person_role: 'text', device_name: 'text', touched: 'text' },
  }),
  index('change_by_time', 'change', ['created_at', 'id']),
]
