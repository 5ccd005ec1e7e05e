import { useCallback, useEffect, useRef, useState } from 'react'
import type { WalkEntry } from '../../../lib/papers/walk-list.ts'
import { dropEntry, forgetOld, keepEntry, loadEntries } from './entries.ts'

/** An entry rests this long [ms] before it is sent: so long it can be taken back as if it had never been. */
const restsMs = 20_000
const triesEveryMs = 10_000

export type SendAnswer =
  | { readonly ok: true; readonly ids: readonly string[] }
  | { readonly ok: false; readonly says: string }

export interface Entries {
  readonly entries: readonly WalkEntry[]
  readonly opened: boolean
  /** This device does not let the page keep anything: what is written would be lost with the page. */
  readonly notKept: boolean
  readonly network: boolean
  /** Why the store did not take what was sent; null where it did. */
  readonly refused: string | null
  readonly add: (entry: WalkEntry) => void
  readonly undo: () => WalkEntry | null
  readonly sendNow: () => void
}

/** What was written on the walk: kept on the device at once, sent when there is a network, and sent again without harm. */
export function useEntries(project: string): Entries {
  const [entries, setEntries] = useState<readonly WalkEntry[]>([])
  const [opened, setOpened] = useState(false)
  const [notKept, setNotKept] = useState(false)
  const [network, setNetwork] = useState(true)
  const [refused, setRefused] = useState<string | null>(null)
  const here = useRef(entries)
  const sending = useRef(false)

  const put = useCallback((next: readonly WalkEntry[]) => {
    here.current = next
    setEntries(next)
  }, [])

  useEffect(() => {
    loadEntries(project).then(
      (found) => {
        put(found)
        setOpened(true)
        return forgetOld(found, Date.now())
      },
      () => {
        setNotKept(true)
        setOpened(true)
      },
    )
  }, [project, put])

  const send = useCallback(
    async (restedMs: number) => {
      const due = here.current.filter(({ sentMs, atMs }) => sentMs === null && Date.now() - atMs >= restedMs)
      if (sending.current || due.length === 0) return
      sending.current = true
      try {
        const answer = await post(project, due)
        setNetwork(true)
        setRefused(answer.ok ? null : answer.says)
        if (answer.ok) {
          const taken = new Set(answer.ids)
          const next = here.current.map((entry) =>
            taken.has(entry.id) ? { ...entry, sentMs: Date.now() } : entry,
          )
          put(next)
          await Promise.all(next.filter(({ id }) => taken.has(id)).map((entry) => keepEntry(entry))).catch(
            () => undefined,
          )
        }
      } catch {
        setNetwork(false)
      }
      sending.current = false
    },
    [project, put],
  )

  useEffect(() => {
    const again = setInterval(() => void send(restsMs), triesEveryMs)
    const back = () => void send(restsMs)
    const gone = () => setNetwork(false)
    // A phone that is put away may never wake this page again: what rests is sent.
    const hidden = () => document.visibilityState === 'hidden' && void send(0)
    addEventListener('online', back)
    addEventListener('offline', gone)
    document.addEventListener('visibilitychange', hidden)
    return () => {
      clearInterval(again)
      removeEventListener('online', back)
      removeEventListener('offline', gone)
      document.removeEventListener('visibilitychange', hidden)
    }
  }, [send])

  const add = (entry: WalkEntry) => {
    put([...here.current, entry])
    keepEntry(entry).catch(() => setNotKept(true))
  }
  const undo = () => {
    const last = here.current.at(-1)
    if (last === undefined || last.sentMs !== null) return null
    put(here.current.slice(0, -1))
    dropEntry(last.id).catch(() => setNotKept(true))
    return last
  }
  return { entries, opened, notKept, network, refused, add, undo, sendNow: () => void send(0) }
}

async function post(project: string, entries: readonly WalkEntry[]): Promise<SendAnswer> {
  const answer = await fetch('/store/walk/send', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ project, entries }),
  })
  return (await answer.json()) as SendAnswer
}

/** The day on the clock of whoever walks. */
export function todayOnDevice(): string {
  const now = new Date()
  const two = (value: number) => String(value).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
