import { useCallback, useEffect, useRef, useState } from 'react'
import type { Act } from './_sheet/act.ts'
import { keepDraft, loadDraft } from './draft.ts'
import type { Sheet } from './_sheet/sheet.ts'

export type DraftState = 'opening' | 'kept' | 'keeping' | 'not-kept'

const pauseMs = 300
/** Who types without a pause is kept all the same: a tab that is taken away loses less than a second. */
const longestMs = 600

/** Keeps the sheet on this device while one types, and brings it back. */
export function useDraft(project: string, sheet: Sheet, dispatch: (action: Act) => void): DraftState {
  const [state, setState] = useState<DraftState>('opening')
  const newest = useRef(sheet)
  const kept = useRef<Sheet | null>(null)
  const longest = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)

  useEffect(() => {
    let here = true
    const found = (draft: Sheet | null) => {
      if (!here) return
      kept.current = draft
      if (draft !== null) dispatch({ do: 'load', sheet: draft })
      setState('kept')
    }
    loadDraft(project).then(found, () => here && setState('not-kept'))
    return () => {
      here = false
    }
  }, [project, dispatch])

  const keep = useCallback(async () => {
    clearTimeout(longest.current)
    longest.current = undefined
    if (newest.current === kept.current) return
    kept.current = newest.current
    await keepDraft(project, newest.current)
  }, [project])

  useEffect(() => {
    newest.current = sheet
    if (state === 'opening' || sheet === kept.current) return
    setState('keeping')
    const failed = () => setState('not-kept')
    longest.current ??= setTimeout(() => void keep().catch(failed), longestMs)
    // Only a pause is told, or the words would change with every other key.
    const pause = setTimeout(() => void keep().then(() => setState('kept'), failed), pauseMs)
    return () => clearTimeout(pause)
    // The state only guards the first load.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [keep, sheet, state === 'opening'])

  useEffect(() => {
    if (state === 'opening') return
    const keepNow = () => void keep().catch(() => setState('not-kept'))
    // A phone that is put away may never wake this page again.
    const hidden = () => document.visibilityState === 'hidden' && keepNow()
    document.addEventListener('visibilitychange', hidden)
    return () => {
      document.removeEventListener('visibilitychange', hidden)
      keepNow()
    }
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [keep, state === 'opening'])

  return state
}
