import type { IsoDate } from '../../lib/base/calendar.ts'
import { sortKey } from '../../lib/base/sort-key.ts'
import type { Actor, Find } from '../../lib/services/kept.ts'
import type { FindLine, Standing } from '../../lib/services/standing.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'

export const assistant: Actor = { name: 'Ana Tidewell', role: 'assistant', device: 'hut tablet' }
export const conservator: Actor = { name: 'Bo Lathe', role: 'conservator', device: 'bench computer' }

export const day = (text: string) => text as IsoDate

export function record(find_number: string, more: Partial<ConditionRecord> = {}): ConditionRecord {
  return { find_number, site_code: 'TW', components: [{ component: 'body', material: 'iron' }], ...more }
}

export function standing(
  find: Find,
  recordId: string,
  line: Partial<FindLine> = {},
  more: Partial<Standing> = {},
): Standing {
  return {
    findId: find.id,
    projectId: find.projectId,
    recordId,
    knowledge: 'sha256-one',
    asOf: day('2026-11-25'),
    band: '0-12',
    search: `tw ${find.findNumber.toLowerCase()} nail iron`,
    sortKey: sortKey(`${find.siteCode} ${find.findNumber}`),
    line: {
      findNumber: find.findNumber,
      siteCode: find.siteCode,
      object: 'nail',
      quantity: 1,
      parts: [{ component: 'body', material: 'iron' }],
      urgency: 'routine',
      reasons: [],
      firstStep: null,
      stops: [],
      keep: 'dry',
      rhPercent: { min: 0, max: 12 },
      interimRhPercent: null,
      bands: [],
      conflict: null,
      storedRhPercent: null,
      dueOn: null,
      inspectOn: day('2027-02-23'),
      box: 'B1',
      recordedOn: null,
      requests: [],
      packing: [],
      ...line,
    },
    ...more,
  }
}
