import { index, table, type Step } from './step.ts'

export type { Step } from './step.ts'

/**
 * One statement a step, harmless when run again, only ever added at the end: engines that cannot take back a change of
 * tables must be able to stop after any step and go on from there.
 */
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
  table('logger', {
    columns: { project_id: 'text', serial: 'text', given: 'text' },
    refers: { project_id: 'project' },
    unique: ['project_id', 'serial'],
  }),
  table('log_file', {
    columns: {
      project_id: 'text',
      name: 'text',
      sha256: 'text',
      bytes: 'bigint',
      answers: 'text',
      brought: 'text',
    },
    refers: { project_id: 'project' },
    unique: ['project_id', 'sha256'],
  }),
  table('log_file_part', {
    columns: { log_file_id: 'text', place: 'bigint', packed: 'text' },
    refers: { log_file_id: 'log_file' },
    unique: ['log_file_id', 'place'],
  }),
  table('reading_day', {
    columns: { logger_id: 'text', channel: 'text', day: 'text', block: 'text', sketch: 'text' },
    refers: { logger_id: 'logger' },
    unique: ['logger_id', 'channel', 'day'],
  }),
  table('diary_entry', {
    columns: {
      project_id: 'text',
      kind: 'text',
      box: 'text',
      room: 'text',
      find_id: 'text?',
      on_day: 'text',
      at_ms: 'bigint',
      place: 'bigint',
      given: 'text',
      content_hash: 'text',
    },
    refers: { project_id: 'project', find_id: 'find' },
    unique: ['project_id', 'content_hash'],
  }),
  index('diary_entry_by_box', 'diary_entry', ['project_id', 'box', 'on_day']),
  index('diary_entry_by_kind', 'diary_entry', ['project_id', 'kind', 'on_day']),
  index('diary_entry_by_find', 'diary_entry', ['find_id', 'on_day']),
  table('store_setting', {
    columns: { project_id: 'text', given: 'text' },
    refers: { project_id: 'project' },
    unique: ['project_id'],
  }),
  table('stay', {
    columns: {
      project_id: 'text',
      find_id: 'text',
      place: 'bigint',
      box: 'text',
      from_day: 'text',
      to_day: 'text',
    },
    refers: { project_id: 'project', find_id: 'find' },
    unique: ['find_id', 'place'],
  }),
  index('stay_by_box', 'stay', ['project_id', 'box', 'from_day']),
  table('identification', {
    columns: {
      project_id: 'text',
      find_id: 'text',
      record_id: 'text',
      knowledge: 'text',
      given: 'text',
      thought: 'text',
      content_hash: 'text',
    },
    refers: { project_id: 'project', find_id: 'find', record_id: 'condition_record' },
    unique: ['find_id', 'content_hash'],
  }),
  index('identification_by_project', 'identification', ['project_id']),
]
