import { useEffect, useRef } from 'react'

/** A scanner types faster than any hand [ms between two keys]. */
const scannerPaceMs = 60
const shortestCode = 2

/** Hears what a scanner types when no field has focus: its letters, ended by Enter. */
export function useScanner(onScan: (typed: string) => void): void {
  const heard = useRef({ text: '', atMs: 0 })
  const call = useRef(onScan)
  useEffect(() => {
    call.current = onScan
  })
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (
        event.target instanceof HTMLInputElement &&
        event.target.type !== 'radio' &&
        event.target.type !== 'checkbox'
      )
        return
      if (event.ctrlKey || event.metaKey || event.altKey) return
      const { text, atMs } = heard.current
      const quick = event.timeStamp - atMs < scannerPaceMs
      if (event.key === 'Enter') {
        if (!quick || text.length < shortestCode) return
        event.preventDefault()
        heard.current = { text: '', atMs: 0 }
        call.current(text)
      } else if (event.key.length === 1) {
        heard.current = { text: quick ? text + event.key : event.key, atMs: event.timeStamp }
      }
    }
    addEventListener('keydown', onKey, { capture: true })
    return () => removeEventListener('keydown', onKey, { capture: true })
  }, [])
}
