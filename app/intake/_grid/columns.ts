import { fields, type FieldName } from '../../../lib/record/fields.ts'

/** What most bags need, in the order it is met with a find in the hand. */
export const basics: readonly FieldName[] = [
  'find_number',
  'context',
  'object',
  'material',
  'component',
  'seen',
  'hazards_noticed',
  'burial',
  'state_now',
  'core',
  'fragility',
  'evidence',
  'packed_in',
  'done_already',
  'proposed',
  'stored_rh_percent',
  'lifted_on',
  'recorded_on',
  'notes',
  'looked',
]

export const allColumns: readonly FieldName[] = [
  ...basics,
  ...(Object.keys(fields) as FieldName[]).filter((field) => !basics.includes(field)),
]

/** Width of a column [rem]. */
function widthOf(field: FieldName): number {
  switch (fields[field].kind) {
    case 'choices':
    case 'tests':
    case 'treatments':
    case 'looks':
      return 14
    case 'choice':
    case 'open-choice':
      return 10
    case 'number':
    case 'whole':
    case 'date':
      return 8
    default:
      return field === 'notes' || field === 'object' ? 13 : 8
  }
}

const numberWidth = 3

export function templateOf(columns: readonly FieldName[]): string {
  return [`${numberWidth}rem`, ...columns.map((field) => `${widthOf(field)}rem`), 'var(--plan-width)'].join(
    ' ',
  )
}
