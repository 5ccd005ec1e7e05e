import { useEffect, useState } from 'react'

const pauseMs = 700

/** A text as it stood when typing paused: read aloud once, not at every key. */
export function useSettledText(text: string): string {
  const [settled, settle] = useState(text)
  useEffect(() => {
    if (text === settled) return
    const timer = setTimeout(() => settle(text), pauseMs)
    return () => clearTimeout(timer)
  }, [text, settled])
  return settled
}
