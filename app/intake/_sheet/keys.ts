import type { Act } from './act.ts'
import { textAt, type GridState } from './state.ts'

export interface Key {
  readonly key: string
  readonly control: boolean
  readonly shift: boolean
  readonly alt: boolean
}

const arrows = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End', 'PageUp', 'PageDown']

/** What a key means while no cell is being typed in; null where it means nothing here and the browser keeps it. */
export function keyAct(key: Key, state: GridState, newId: () => string, page: number): Act | null {
  if (key.alt) return null
  if (arrows.includes(key.key)) {
    return { do: 'move', key: key.key, control: key.control, extend: key.shift, page }
  }
  if (key.control) return controlAct(key, newId)
  switch (key.key) {
    case 'Tab':
      return { do: 'tab', back: key.shift }
    case 'Enter':
      return key.shift
        ? { do: 'move', key: 'ArrowUp', control: false, extend: false, page }
        : { do: 'enter', newId: newId() }
    case 'F2':
      return { do: 'edit', text: textAt(state), typed: false }
    case 'Delete':
    case 'Backspace':
      return { do: 'clear' }
    default:
      return [...key.key].length === 1 ? { do: 'edit', text: key.key, typed: true } : null
  }
}

function controlAct(key: Key, newId: () => string): Act | null {
  switch (key.key.toLowerCase()) {
    case 'z':
      return { do: key.shift ? 'redo' : 'undo' }
    case 'y':
      return { do: 'redo' }
    case 'd':
      return { do: 'fill-down' }
    case 'enter':
      return { do: 'add-part', newId: newId() }
    default:
      return null
  }
}

/** What a key means in a cell that is being typed in: it ends the typing and goes on, or it is the cell's own. */
export function editingKeyActs(key: Key, state: GridState, newId: () => string): readonly Act[] {
  if (key.alt) return []
  if (key.control && key.key === 'Enter') return [{ do: 'add-part', newId: newId() }]
  switch (key.key) {
    case 'Enter':
      return [{ do: 'enter', newId: newId() }]
    case 'Tab':
      return [{ do: 'commit' }, { do: 'tab', back: key.shift }]
    case 'Escape':
      return [{ do: 'cancel' }]
    case 'ArrowUp':
    case 'ArrowDown':
      return [{ do: 'move', key: key.key, control: false, extend: false, page: 1 }]
    case 'ArrowLeft':
    case 'ArrowRight':
      return state.editing?.typed === true
        ? [{ do: 'move', key: key.key, control: false, extend: false, page: 1 }]
        : []
    default:
      return []
  }
}
