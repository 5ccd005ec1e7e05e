import { useRef, useState, type KeyboardEvent, type PointerEvent } from 'react'

/** Where the line stands and what is marked, in shares of the width from 0 to 1. */
export interface Crosshair {
  readonly at: number | null
  /** The other end of what is being marked; null where nothing is. */
  readonly markedFrom: number | null
}

interface Asked {
  /** The places to stand on, in order, in shares of the width. */
  readonly places: readonly number[]
  readonly onMark?: (from: number, to: number) => void
  readonly onZoom?: (at: number, factor: number) => void
  readonly onTable: () => void
}

const nothing: Crosshair = { at: null, markedFrom: null }
const leastMark = 0.02

/** A line over a chart that follows keys, mouse and finger; Shift and arrows, or dragging, mark a stretch. */
export function useCrosshair({ places, onMark, onZoom, onTable }: Asked) {
  const [cross, setCross] = useState<Crosshair>(nothing)
  const dragging = useRef<number | null>(null)
  const last = places.length - 1
  const at = cross.at ?? 1
  const index = nearest(places, at)

  const step = (by: number, marking: boolean) => {
    // Where no line stands yet it comes in from the side it moves away from.
    const here = cross.at === null ? (by < 0 ? places.length : -1) : index
    const next = Math.min(last, Math.max(0, here + by))
    const place = places[next] ?? 0
    setCross({ at: place, markedFrom: marking ? (cross.markedFrom ?? cross.at ?? place) : null })
  }
  const mark = (from: number, to: number) => {
    setCross(nothing)
    onMark?.(Math.min(from, to), Math.max(from, to))
  }

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return
    const marking = event.shiftKey && onMark !== undefined
    const tenth = Math.max(1, Math.round(places.length / 10))
    const acts: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => step(marking ? -Math.max(1, Math.round(tenth / 4)) : -1, marking),
      ArrowRight: () => step(marking ? Math.max(1, Math.round(tenth / 4)) : 1, marking),
      ArrowUp: () => onZoom?.(at, 0.5),
      ArrowDown: () => onZoom?.(at, 2),
      PageUp: () => step(-tenth, false),
      PageDown: () => step(tenth, false),
      Home: () => step(-places.length, marking),
      End: () => step(places.length, marking),
      Escape: () => setCross({ ...cross, markedFrom: null }),
      t: onTable,
      T: onTable,
      Enter: () => cross.markedFrom !== null && mark(cross.markedFrom, at),
    }
    const act = acts[event.key]
    if (act === undefined || places.length === 0) return
    event.preventDefault()
    act()
  }

  const shareOf = (event: PointerEvent) => {
    const { left, width } = event.currentTarget.getBoundingClientRect()
    return Math.min(1, Math.max(0, (event.clientX - left) / width))
  }
  const pointer = {
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return
      dragging.current = shareOf(event)
      if (onMark !== undefined) event.currentTarget.setPointerCapture(event.pointerId)
      setCross({ at: dragging.current, markedFrom: null })
    },
    onPointerMove: (event: PointerEvent) => {
      const here = shareOf(event)
      const from = onMark === undefined ? null : dragging.current
      const far = from !== null && Math.abs(here - from) >= leastMark
      setCross({ at: here, markedFrom: far ? from : null })
    },
    onPointerUp: (event: PointerEvent) => {
      const [from, here] = [dragging.current, shareOf(event)]
      dragging.current = null
      if (from !== null && onMark !== undefined && Math.abs(here - from) >= leastMark) mark(from, here)
    },
    onPointerCancel: () => {
      dragging.current = null
      setCross(nothing)
    },
    onPointerLeave: (event: PointerEvent) => {
      if (dragging.current === null && event.pointerType === 'mouse') setCross(nothing)
    },
  }
  return { cross, index, onKeyDown, pointer, clear: () => setCross(nothing) }
}

/** Of places in order the one nearest to a share of the width. */
export function nearest(places: readonly number[], share: number): number {
  let [low, high] = [0, Math.max(0, places.length - 1)]
  while (low < high) {
    const middle = (low + high) >> 1
    if (((places[middle] ?? 0) + (places[middle + 1] ?? 0)) / 2 < share) low = middle + 1
    else high = middle
  }
  return low
}
