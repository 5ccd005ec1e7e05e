import { useCallback, useEffect, useState } from 'react'
import { flushSync } from 'react-dom'

/** How much room [px] a chart has; on paper as much as fits the narrower of A4 and Letter. */
export interface Room {
  readonly width: number
  readonly height: number
  /** Of the small drawing below. */
  readonly small: number
  readonly onPaper: boolean
}

const paper: Room = { width: 660, height: 230, small: 100, onPaper: true }
const narrow = 560
/** Until it is measured. */
const usual = 700

/** The room for a chart in the element that takes the ref. What is printed is drawn anew for paper before it leaves. */
export function useRoom(): readonly [(element: HTMLElement | null) => void | (() => void), Room] {
  const [width, setWidth] = useState(usual)
  const [onPaper, setOnPaper] = useState(false)
  const ref = useCallback((element: HTMLElement | null) => {
    if (element === null) return undefined
    setWidth(element.clientWidth)
    const watch = new ResizeObserver(() => setWidth(element.clientWidth))
    watch.observe(element)
    return () => watch.disconnect()
  }, [])
  useEffect(() => {
    // Nothing is drawn between this and the print itself unless it is drawn at once.
    const before = () => flushSync(() => setOnPaper(true))
    const after = () => setOnPaper(false)
    addEventListener('beforeprint', before)
    addEventListener('afterprint', after)
    return () => {
      removeEventListener('beforeprint', before)
      removeEventListener('afterprint', after)
    }
  }, [])
  if (onPaper) return [ref, paper]
  const [height, small] = width < narrow ? [250, 105] : [320, 132]
  return [ref, { width, height, small, onPaper }]
}
