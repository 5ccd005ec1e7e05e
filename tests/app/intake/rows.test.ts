import { describe, expect, test } from 'vitest'
import { RowReader, type TypedRow } from '../../../lib/field/rows.ts'
import { knowledge } from '../../knowledge-at-hand.ts'

const row = (id: string, cells: TypedRow['cells']): TypedRow => ({ id, cells })

describe('typed rows', () => {
  test('rows of one find make one record; the first of them leads', () => {
    const rows = [
      row('a', { find_number: 'TW-1', material: 'iron' }),
      row('b', { find_number: 'TW-1', material: 'bone', component: 'handle' }),
    ]
    const read = new RowReader(knowledge).rows(rows)
    expect(read.get('a')?.record?.components.map(({ material }) => material)).toEqual(['iron', 'bone'])
    expect(read.get('b')?.record).toBe(read.get('a')?.record)
    expect([read.get('a')?.leads, read.get('b')?.leads]).toEqual([true, false])
  })
  test('what did not change is the same object again', () => {
    const reader = new RowReader(knowledge)
    const first = row('a', { find_number: 'TW-1', material: 'iron' })
    const second = row('b', { find_number: 'TW-2', material: 'lead' })
    const before = reader.rows([first, second])
    const after = reader.rows([first, row('b', { find_number: 'TW-2', material: 'tin' })])
    expect(after.get('a')).toBe(before.get('a'))
    expect(after.get('b')?.record?.components[0]?.material).toBe('tin')
  })
  test('labels are understood, slips are told beside their cell', () => {
    const read = new RowReader(knowledge).rows([
      row('a', { find_number: 'TW-1', material: 'Copper alloy', core: 'soldi' }),
    ])
    expect(read.get('a')?.record?.components[0]?.material).toBe('copper-alloy')
    expect(read.get('a')?.problems.map(({ field, suggestion }) => [field, suggestion])).toEqual([
      ['core', 'solid'],
    ])
  })
  test('a hazard is heard in a row that has no number yet', () => {
    const read = new RowReader(knowledge).rows([row('a', { object: 'grenade', material: 'iron' })])
    expect(read.get('a')?.record).toBeNull()
    expect(read.get('a')?.loudHazards.map(({ hazard }) => hazard)).toEqual(['ammunition-like'])
  })
  test('one date settles how the others of its column are read', () => {
    const reader = new RowReader(knowledge)
    const unsettled = row('a', { find_number: 'TW-1', material: 'iron', recorded_on: '03/04/2024' })
    expect(reader.rows([unsettled]).get('a')?.record?.recorded_on).toBeUndefined()
    const settling = row('b', { find_number: 'TW-2', material: 'iron', recorded_on: '25/04/2024' })
    expect(reader.rows([unsettled, settling]).get('a')?.record?.recorded_on).toBe('2024-04-03')
  })
})
