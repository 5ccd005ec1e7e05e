import { describe, expect, test } from 'vitest'
import { doNow } from '../../../lib/field/do-now.ts'
import type { Planned } from '../../../lib/field/bag.ts'
import { RowReader } from '../../../lib/field/rows.ts'
import { BagPlanner } from '../../../lib/field/bag.ts'
import type { FieldName } from '../../../lib/record/fields.ts'
import { knowledge } from '../../knowledge-at-hand.ts'
import { today } from '../../record-at-hand.ts'

type Cells = Partial<Record<FieldName, string>>

/** A bag as it is typed, read and planned by the project's own knowledge. */
function bagOf(...cells: readonly Cells[]): readonly Planned[] {
  const rows = cells.map((one, at) => ({ id: String(at), cells: { find_number: `TW-${at + 1}`, ...one } }))
  const read = new RowReader(knowledge).rows(rows)
  const planner = new BagPlanner(knowledge, { asOf: today })
  return rows.flatMap(({ id }) => {
    const row = read.get(id)
    return row?.record && row.leads ? [planner.plan(row.record)] : []
  })
}

describe('what a bag asks now', () => {
  test('says a stop once, with all finds it is about and whom to phone', () => {
    const now = doNow(bagOf({ material: 'iron', object: 'grenade' }, { material: 'iron', object: 'grenade' }))
    const [stop] = now.stops
    expect(stop?.caution.code).toBe('ammunition')
    expect(stop?.finds).toEqual(['TW-1', 'TW-2'])
    expect(now.call.map(({ contact }) => contact)).toContain('police')
  })
  test('puts finds of one humidity together, but never one under a stop', () => {
    const dry = { material: 'iron', state_now: 'dry' }
    const now = doNow(bagOf(dry, dry, { ...dry, object: 'grenade' }))
    expect(now.packTogether.map(({ finds }) => finds)).toEqual([['TW-1', 'TW-2']])
  })
  test('names what must stay wet', () => {
    const now = doNow(bagOf({ material: 'iron', state_now: 'wet', burial: 'marine' }))
    expect(now.keepWet).toEqual(['TW-1'])
    expect(now.packTogether).toEqual([])
  })
})
