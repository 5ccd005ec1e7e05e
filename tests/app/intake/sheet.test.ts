import { describe, expect, test } from 'vitest'
import { move, tab } from '../../../app/intake/_sheet/move.ts'
import { nextNumber, nextRow } from '../../../app/intake/_sheet/next-row.ts'
import { pasteBlock, placeBlock, readBlock } from '../../../app/intake/_sheet/paste.ts'
import { emptySheet, redo, step, undo, write, type Rows } from '../../../app/intake/_sheet/sheet.ts'

const rows: Rows = [
  { id: 'a', cells: { find_number: 'TW-0412', context: '1021', material: 'iron' } },
  { id: 'b', cells: { find_number: 'TW-0413' } },
]

describe('undo', () => {
  test('takes back one step and gives it again', () => {
    const changed = step(emptySheet(rows), write(rows, [{ row: 1, field: 'material', text: 'lead' }]))
    expect(undo(changed).rows).toBe(rows)
    expect(redo(undo(changed)).rows).toEqual(changed.rows)
  })
  test('a change that changes nothing is no step', () => {
    const sheet = emptySheet(rows)
    expect(step(sheet, write(rows, [{ row: 0, field: 'material', text: 'iron' }]))).toBe(sheet)
  })
  test('a new change after undo forgets the future', () => {
    const first = step(emptySheet(rows), write(rows, [{ row: 1, field: 'material', text: 'lead' }]))
    const other = step(undo(first), write(rows, [{ row: 1, field: 'material', text: 'tin' }]))
    expect(redo(other)).toBe(other)
  })
})

describe('write', () => {
  test('leaves untouched rows the same objects', () => {
    const after = write(rows, [{ row: 1, field: 'material', text: 'lead' }])
    expect(after[0]).toBe(rows[0])
    expect(after[1]?.cells).toEqual({ find_number: 'TW-0413', material: 'lead' })
  })
  test('an emptied cell is absent, not blank', () => {
    expect(write(rows, [{ row: 0, field: 'material', text: '' }])[0]?.cells).not.toHaveProperty('material')
  })
})

describe('the next row', () => {
  test('counts on and carries what the bag has in common', () => {
    expect(nextRow(rows[0], 'n').cells).toEqual({ find_number: 'TW-0413', context: '1021' })
  })
  test.each([
    ['TW-0999', 'TW-1000'],
    ['SF9', 'SF10'],
    ['7', '8'],
    ['A-1b', null],
  ])('%s → %s', (number, next) => {
    expect(nextNumber(number)).toBe(next)
  })
})

describe('moving', () => {
  const size = { rows: 3, columns: 4, page: 10 }
  test('stays inside', () => {
    expect(move({ row: 0, column: 0 }, 'ArrowUp', false, size)).toEqual({ row: 0, column: 0 })
    expect(move({ row: 2, column: 3 }, 'PageDown', false, size)).toEqual({ row: 2, column: 3 })
  })
  test('Tab goes on to the next row and leaves at the end', () => {
    expect(tab({ row: 0, column: 3 }, false, size)).toEqual({ row: 1, column: 0 })
    expect(tab({ row: 1, column: 0 }, true, size)).toEqual({ row: 0, column: 3 })
    expect(tab({ row: 2, column: 3 }, false, size)).toBeNull()
    expect(tab({ row: 0, column: 0 }, true, size)).toBeNull()
  })
})

describe('pasting', () => {
  test('reads quoted cells with breaks and doubled quotes', () => {
    expect(readBlock('a\t"two\nlines"\r\nc\t"say ""so"""\n')).toEqual([
      ['a', 'two\nlines'],
      ['c', 'say "so"'],
    ])
  })
  test('a lone quote eats no row below it', () => {
    expect(readBlock('TW-1\t"nail\nTW-2\tthe "big" one\nTW-3\t"ring"\n')).toEqual([
      ['TW-1', '"nail'],
      ['TW-2', 'the "big" one'],
      ['TW-3', 'ring'],
    ])
  })
  test('by headings where the first line names fields', () => {
    const block = placeBlock(
      [
        ['Find no', 'Material', 'Colour'],
        ['TW-1', 'iron', 'red'],
      ],
      0,
      ['context'],
      (heading) => (heading === 'Find no' ? 'find_number' : heading === 'Material' ? 'material' : null),
    )
    expect(block).toEqual({
      fields: ['find_number', 'material', null],
      headed: true,
      rows: [['TW-1', 'iron', 'red']],
    })
  })
  test('by place otherwise, adding rows', () => {
    const block = placeBlock(
      [
        ['x', 'iron'],
        ['y', 'tin'],
      ],
      1,
      ['find_number', 'context', 'material'],
      () => null,
    )
    const after = pasteBlock(rows, { row: 1, column: 1 }, block, () => 'n')
    expect(after.map(({ cells }) => cells.material)).toEqual(['iron', 'iron', 'tin'])
    expect(after[2]?.cells.context).toBe('y')
  })
})
