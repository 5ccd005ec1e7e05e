import type { RefObject } from 'react'
import type { Act } from '../_sheet/act.ts'
import type { GridState } from '../_sheet/state.ts'
import type { DraftState } from '../use-draft.ts'
import { allColumns, basics } from './columns.ts'
import { newId } from './use-grid-events.ts'
import style from './below.module.css'

interface Props {
  readonly state: GridState
  readonly dispatch: (action: Act) => void
  readonly draft: DraftState
  readonly wantsFocus: RefObject<boolean>
}

const draftWords: Readonly<Record<DraftState, string>> = {
  opening: 'Looking for what you typed before …',
  keeping: 'Keeping on this device …',
  kept: 'Kept on this device',
  'not-kept': 'This device does not let drafts be kept: save before you leave',
}

export function Toolbar({ state, dispatch, draft, wantsFocus }: Props) {
  const all = state.columns.length > basics.length
  const toEnd = () => {
    wantsFocus.current = true
    dispatch({ do: 'go', spot: { row: state.sheet.rows.length - 1, column: 0 }, extend: false })
    dispatch({ do: 'enter', newId: newId() })
  }
  const addPart = () => {
    wantsFocus.current = true
    dispatch({ do: 'add-part', newId: newId() })
  }
  return (
    <div className={style.toolbar} role="toolbar" aria-label="Rows">
      <button className="button first" type="button" onClick={toEnd}>
        Next find
      </button>
      <button className="button" type="button" onClick={addPart}>
        Another part
      </button>
      <button
        className="button"
        type="button"
        disabled={state.sheet.rows.length === 0}
        onClick={() => dispatch({ do: 'remove-rows' })}
      >
        Remove row
      </button>
      <button
        className="button"
        type="button"
        disabled={state.sheet.past.length === 0}
        onClick={() => dispatch({ do: 'undo' })}
      >
        Undo
      </button>
      <button
        className="button"
        type="button"
        disabled={state.sheet.future.length === 0}
        onClick={() => dispatch({ do: 'redo' })}
      >
        Redo
      </button>
      <button
        className="button"
        type="button"
        aria-pressed={all}
        onClick={() => dispatch({ do: 'columns', columns: all ? basics : allColumns })}
      >
        All columns
      </button>
      <p className={style.state} role="status">
        {draftWords[draft]}
      </p>
    </div>
  )
}
