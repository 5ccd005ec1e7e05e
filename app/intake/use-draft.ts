import { useEffect, useRef, useState } from 'react'
import type { Act } from './_sheet/act.ts'
import { keepDraft, loadDraft } from './draft.ts'
import type { Sheet } from './_sheet/sheet.ts'

export type DraftState = 'opening' | 'kept' | 'keeping' | 'not-kept'

const pauseMs = 300

/** Keeps the sheet on this device shortly after the last key, and brings it back. */
export function useDraft(project: string, sheet: Sheet, dispatch: (action: Act) => void): DraftState {
  const [state, setState] = useState<DraftState>('opening')
  const opened = useRef<Sheet | null>(null)

  useEffect(() => {
    let here = true
    const found = (kept: Sheet | null) => {
      if (!here) return
      opened.current = kept
      if (kept !== null) dispatch({ do: 'load', sheet: kept })
      setState('kept')
    }
    loadDraft(project).then(found, () => here && setState('not-kept'))
    return () => {
      here = false
    }
  }, [project, dispatch])

  useEffect(() => {
    if (state === 'opening' || sheet === opened.current) return
    const keep = () => {
      opened.current = sheet
      keepDraft(project, sheet).then(
        () => setState('kept'),
        () => setState('not-kept'),
      )
    }
    setState('keeping')
    const timer = setTimeout(keep, pauseMs)
    // A phone that is put away may never wake this page again.
    const hidden = () => document.visibilityState === 'hidden' && keep()
    document.addEventListener('visibilitychange', hidden)
    return () => {
      clearTimeout(timer)
      document.removeEventListener('visibilitychange', hidden)
    }
    // The state only guards the first load.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [project, sheet, state === 'opening'])

  return state
}
