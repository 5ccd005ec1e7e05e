import { useCallback, useState } from 'react'

/** How wide [px] the element is that takes the ref; a usual width until it is measured. */
export function useWidth(
  usual = 700,
): readonly [(element: HTMLElement | null) => void | (() => void), number] {
  const [width, setWidth] = useState(usual)
  const ref = useCallback((element: HTMLElement | null) => {
    if (element === null) return undefined
    setWidth(element.clientWidth)
    const watch = new ResizeObserver(() => setWidth(element.clientWidth))
    watch.observe(element)
    return () => watch.disconnect()
  }, [])
  return [ref, width]
}
