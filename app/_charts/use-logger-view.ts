import { useCallback, useRef, useState } from 'react'
import { viewWithin, type ChartView, type Span } from '../../lib/papers/store-chart.ts'

export interface ViewAnswer {
  readonly view?: ChartView
  readonly says?: string
}

const unreached = 'The readings could not be fetched; the chart still shows the stretch before. Try again.'

/** The view that is shown, and ways to another; what was shown stays until the new one is there. */
export function useLoggerView(first: ChartView, whole: Span, address: string) {
  const [view, setView] = useState(first)
  const [state, setState] = useState<'still' | 'fetching' | { readonly says: string }>('still')
  const latest = useRef<AbortController | null>(null)

  const show = useCallback(
    async (wanted: Span) => {
      const { fromMs, toMs } = viewWithin(whole, wanted)
      latest.current?.abort()
      const here = new AbortController()
      latest.current = here
      setState('fetching')
      try {
        const answer = await fetch(`${address}&from=${fromMs}&to=${toMs}`, { signal: here.signal })
        const { view: found, says = unreached } = (await answer.json()) as ViewAnswer
        if (latest.current !== here) return
        if (found !== undefined) setView(found)
        setState(found === undefined ? { says } : 'still')
      } catch {
        if (latest.current === here && !here.signal.aborted) setState({ says: unreached })
      }
    },
    [address, whole],
  )
  return { view, state, show }
}
