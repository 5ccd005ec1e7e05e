import { useLayoutEffect, useRef, type RefObject } from 'react'

/**
 * Keeps the grid where the eye is while what stands above it grows or shrinks with the plan. A stop is let push it down:
 * it alone may interrupt.
 */
export function useSteadyPlace(below: RefObject<HTMLElement | null>, above: object, stops: number) {
  const before = useRef<{ readonly top: number; readonly stops: number } | null>(null)
  useLayoutEffect(() => {
    const place = below.current
    if (place === null) return
    const top = place.getBoundingClientRect().top + window.scrollY
    const last = before.current
    before.current = { top, stops }
    if (last !== null && last.stops === stops && last.top !== top && place.contains(document.activeElement)) {
      window.scrollBy({ top: top - last.top, behavior: 'instant' })
    }
    // `above` is what may have grown: the place is measured when it is drawn anew, not at every key.
  }, [below, above, stops])
}
