import { useRef, type ClipboardEvent, type KeyboardEvent, type MouseEvent, type RefObject } from 'react'
import type { Act } from '../_sheet/act.ts'
import { editingKeyActs, keyAct, type Key } from '../_sheet/keys.ts'
import { tab, type Spot } from '../_sheet/move.ts'
import { selected, textAt, type GridState } from '../_sheet/state.ts'

export const newId = (): string => crypto.randomUUID()

/** Keys, clicks and the clipboard, turned into acts. */
export function useGridEvents(
  state: GridState,
  dispatch: (action: Act) => void,
  onBlock: (text: string) => void,
  page: () => number,
  wantsFocus: RefObject<boolean>,
) {
  /** After Escape the next Tab leaves the grid, so that nobody is caught in it. */
  const leaving = useRef(false)
  const wasActive = useRef(false)

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return
    const key: Key = {
      key: event.key,
      control: event.ctrlKey || event.metaKey,
      shift: event.shiftKey,
      alt: event.altKey,
    }
    if (state.editing === null && key.key === 'Escape') leaving.current = true
    else if (key.key !== 'Tab' && key.key !== 'Shift') leaving.current = false
    if (state.editing === null && key.key === 'Tab' && (leaving.current || atEnd(state, key.shift))) return
    const acts =
      state.editing === null ? one(keyAct(key, state, newId, page())) : editingKeyActs(key, state, newId)
    if (acts.length === 0) return
    event.preventDefault()
    wantsFocus.current = true
    for (const action of acts) dispatch(action)
  }

  const onMouseDown = (event: MouseEvent) => {
    const spot = spotOf(event.target)
    if (spot === null) return
    const active = isActive(spot, state)
    wasActive.current = active && event.currentTarget.contains(document.activeElement)
    if (wasActive.current) return
    event.preventDefault()
    wantsFocus.current = true
    dispatch({ do: 'go', spot, extend: event.shiftKey })
  }

  /** A second tap on the active cell opens it: the way in for touch, where there is no F2. */
  const onClick = (event: MouseEvent) => {
    const spot = spotOf(event.target)
    if (spot !== null && wasActive.current && state.editing === null) {
      dispatch({ do: 'edit', text: textAt(state), typed: false })
    }
  }

  const onPaste = (event: ClipboardEvent) => {
    if (state.editing !== null) return
    event.preventDefault()
    wantsFocus.current = true
    onBlock(event.clipboardData.getData('text/plain'))
  }

  const onCopy = (event: ClipboardEvent) => {
    if (state.editing !== null) return
    event.preventDefault()
    event.clipboardData.setData('text/plain', blockText(state))
  }

  return { onKeyDown, onMouseDown, onClick, onPaste, onCopy }
}

const one = (action: Act | null): readonly Act[] => (action === null ? [] : [action])

function atEnd({ spot, sheet, columns }: GridState, back: boolean): boolean {
  return tab(spot, back, { rows: sheet.rows.length, columns: columns.length, page: 1 }) === null
}

function isActive(spot: Spot, state: GridState): boolean {
  return spot.row === state.spot.row && spot.column === state.spot.column
}

function spotOf(target: EventTarget): Spot | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>('[data-row]') : null
  return cell === null ? null : { row: Number(cell.dataset.row), column: Number(cell.dataset.column) }
}

/** The selected block as a spreadsheet takes it. */
function blockText(state: GridState): string {
  const { top, bottom, left, right } = selected(state)
  const rows = Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (_, along) =>
      quoted(textAt(state, { row: top + down, column: left + along })),
    ),
  )
  return rows.map((cells) => cells.join('\t')).join('\n')
}

function quoted(text: string): string {
  return /["\t\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
