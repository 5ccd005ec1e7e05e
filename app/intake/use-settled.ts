import { startTransition, useEffect, useState } from 'react'

const pauseMs = 250

/**
 * A value as it stood when typing last paused: what is large to draw and need not follow every key waits for it, so that
 * the row's own plan can.
 */
export function useSettled<Value>(value: Value): Value {
  const [settled, settle] = useState(value)
  useEffect(() => {
    if (value === settled) return
    const timer = setTimeout(() => startTransition(() => settle(value)), pauseMs)
    return () => clearTimeout(timer)
  }, [value, settled])
  return settled
}
