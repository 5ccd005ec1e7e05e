import { useEffect, useRef, useState } from 'react'

const pauseMs = 250

export interface Answered<Value> {
  readonly answer?: Value
  readonly says?: string
}

const unreached = 'The answer could not be fetched; the one before still stands. Try again.'

/** The answer to a question in an address, asked anew when typing pauses; the one before stands until it is there. */
export function useAnswer<Value>(address: string, first: Value) {
  const [answer, setAnswer] = useState(first)
  const [state, setState] = useState<'still' | 'asking' | { readonly says: string }>('still')
  const asked = useRef(address)
  useEffect(() => {
    if (asked.current === address) return
    const here = new AbortController()
    const ask = async () => {
      setState('asking')
      try {
        const got = await fetch(address, { signal: here.signal })
        const { answer: found, says = unreached } = (await got.json()) as Answered<Value>
        if (here.signal.aborted) return
        asked.current = address
        if (found !== undefined) setAnswer(found)
        setState(found === undefined ? { says } : 'still')
      } catch {
        if (!here.signal.aborted) setState({ says: unreached })
      }
    }
    const timer = setTimeout(() => void ask(), pauseMs)
    return () => {
      clearTimeout(timer)
      here.abort()
    }
  }, [address])
  return { answer, state }
}
