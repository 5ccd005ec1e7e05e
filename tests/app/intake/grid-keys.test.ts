import { describe, expect, test } from 'vitest'
import { act } from '../../../app/intake/_sheet/act.ts'
import { editingKeyActs, keyAct, type Key } from '../../../app/intake/_sheet/keys.ts'
import { fieldAt, gridState, liveRows, type GridState } from '../../../app/intake/_sheet/state.ts'
import type { FieldName } from '../../../lib/record/fields.ts'

const columns: readonly FieldName[] = ['find_number', 'context', 'material', 'core']
let made = 0
const newId = () => `new-${(made += 1)}`

/** Presses keys as a person would: `'i'`, `'Tab'`, `'Control+d'`. */
function press(state: GridState, ...names: readonly string[]): GridState {
  return names.reduce((before, name) => {
    const parts = name === '+' ? ['+'] : name.split('+')
    const key: Key = {
      key: parts.at(-1)!,
      control: parts.includes('Control'),
      shift: parts.includes('Shift'),
      alt: false,
    }
    if (before.editing !== null) {
      const acts = editingKeyActs(key, before, newId)
      if (acts.length > 0) return acts.reduce(act, before)
      return act(before, { do: 'type', text: before.editing.text + key.key })
    }
    const action = keyAct(key, before, newId, 10)
    return action === null ? before : act(before, action)
  }, state)
}

const start = gridState([{ id: 'a', cells: { find_number: 'TW-0412', context: '1021' } }], columns)
const column = (state: GridState, field: FieldName) => state.sheet.rows.map(({ cells }) => cells[field] ?? '')

describe('typing', () => {
  test('a letter begins a cell, Tab keeps it and goes right', () => {
    const after = press(start, 'Tab', 'Tab', 'i', 'r', 'o', 'n', 'Tab')
    expect(column(after, 'material')).toEqual(['iron'])
    expect(fieldAt(after)).toBe('core')
  })
  test('what is typed counts before it is kept', () => {
    const after = press(start, 'Tab', 'Tab', 't', 'i', 'n')
    expect(after.sheet.rows[0]?.cells.material).toBeUndefined()
    expect(liveRows(after)[0]?.cells.material).toBe('tin')
  })
  test('Escape leaves the cell as it was', () => {
    const after = press(start, 'F2', 'x', 'Escape')
    expect(column(after, 'find_number')).toEqual(['TW-0412'])
    expect(after.sheet.past).toHaveLength(0)
  })
  test('F2 goes on with what stands there and keeps the arrow keys in the cell', () => {
    const after = press(start, 'F2', '7', 'ArrowLeft')
    expect(after.editing?.text).toContain('TW-04127')
    expect(after.spot.column).toBe(0)
  })
  test('an arrow key ends a cell begun by typing', () => {
    expect(press(start, 'ArrowRight', '9', 'ArrowRight').spot.column).toBe(2)
  })
})

describe('Enter', () => {
  test('from the last row begins the next find, back where the run of Tab began', () => {
    const after = press(start, 'ArrowRight', 'ArrowRight', 'i', 'Tab', 's', 'Enter')
    expect(column(after, 'find_number')).toEqual(['TW-0412', 'TW-0413'])
    expect(column(after, 'context')).toEqual(['1021', '1021'])
    expect(after.spot).toEqual({ row: 1, column: 2 })
  })
  test('with Control adds another part of the same find', () => {
    const after = press(start, 'Control+Enter')
    expect(column(after, 'find_number')).toEqual(['TW-0412', 'TW-0412'])
    expect(fieldAt(after)).toBe('material')
  })
})

describe('blocks', () => {
  const three = press(start, 'Enter', 'Enter', 'Control+Home')
  test('Control+D fills a cell from above', () => {
    const after = press(three, 'ArrowRight', 'ArrowRight', 't', 'Enter', 'Control+d')
    expect(column(after, 'material')).toEqual(['t', 't', ''])
  })
  test('Control+D fills a block from its first row', () => {
    const after = press(
      three,
      'ArrowRight',
      'ArrowRight',
      't',
      'Enter',
      'ArrowUp',
      'Shift+ArrowDown',
      'Shift+ArrowDown',
      'Control+d',
    )
    expect(column(after, 'material')).toEqual(['t', 't', 't'])
  })
  test('Delete clears a block, and one undo brings it back', () => {
    const cleared = press(three, 'ArrowRight', 'Shift+ArrowDown', 'Delete')
    expect(column(cleared, 'context')).toEqual(['', '', '1021'])
    expect(column(press(cleared, 'Control+z'), 'context')).toEqual(['1021', '1021', '1021'])
    expect(column(press(cleared, 'Control+z', 'Control+Shift+Z'), 'context')).toEqual(['', '', '1021'])
  })
})

test('undo that shortens the sheet keeps the active cell inside it', () => {
  expect(press(start, 'Enter', 'Control+z').spot.row).toBe(0)
})

test('an answer to a question lands in its row', () => {
  const after = act(start, { do: 'answer', rowId: 'a', field: 'core', text: 'unknown' })
  expect(column(after, 'core')).toEqual(['unknown'])
})
