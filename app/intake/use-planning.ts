import { useMemo } from 'react'
import type { IsoDate } from '../../lib/base/calendar.ts'
import type { Contacts } from '../../lib/engine/plan.ts'
import { BagPlanner, type Planned } from '../../lib/field/bag.ts'
import { RowReader, type ReadRow } from '../../lib/field/rows.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import type { Rows } from './_sheet/sheet.ts'

export interface Planning {
  readonly read: ReadonlyMap<string, ReadRow>
  readonly bag: readonly Planned[]
  readonly planned: (rowId: string) => Planned | null
  readonly planner: BagPlanner
}

/** The bag read and planned as it stands this moment. Only what changed since the last keystroke is done again. */
export function usePlanning(rows: Rows, knowledge: Knowledge, asOf: IsoDate, contacts: Contacts): Planning {
  const reader = useMemo(() => new RowReader(knowledge), [knowledge])
  const planner = useMemo(() => new BagPlanner(knowledge, { asOf, contacts }), [knowledge, asOf, contacts])
  return useMemo(() => {
    const read = reader.rows(rows)
    const planned = (rowId: string) => {
      const record = read.get(rowId)?.record ?? null
      return record === null ? null : planner.plan(record)
    }
    const bag = rows.flatMap(({ id }) => (read.get(id)?.leads === true ? (planned(id) ?? []) : []))
    return { read, bag, planned, planner }
  }, [rows, reader, planner])
}
