'use client'

import Link from 'next/link'
import { useRef, useState, useTransition } from 'react'
import { StopsLine } from '../../_papers/stops-line.tsx'
import type { TablesSaid } from './said.ts'
import { sendTable } from './send-table.ts'

const largestMegabytes = 15
const tooLarge: TablesSaid = {
  ok: false,
  kept: false,
  says: `The file is larger than ${largestMegabytes} MB. A table of the store is far smaller: check that it is the right one.`,
  stops: [],
  problems: [],
  more: 0,
  toMend: [],
}

/** Choose, see what the file holds, keep it. Nothing is kept before it was seen. */
export function TableForm({ named }: { readonly named: boolean }) {
  const [file, setFile] = useState<File | null>(null)
  const [name, setName] = useState('')
  const [said, setSaid] = useState<TablesSaid | null>(null)
  const [busy, begin] = useTransition()
  const answer = useRef<HTMLDivElement>(null)
  const send = (chosen: File, keep: boolean) =>
    begin(async () => {
      const form = new FormData()
      form.set('file', chosen)
      form.set('name', name)
      if (keep) form.set('keep', 'yes')
      setSaid(chosen.size > largestMegabytes * 1_000_000 ? tooLarge : await sendTable(form))
      answer.current?.focus()
    })
  return (
    <div className="stack">
      {!named && (
        <div className="field">
          <label htmlFor="name">Name of the new project</label>
          <input id="name" value={name} maxLength={120} onChange={(event) => setName(event.target.value)} />
        </div>
      )}
      <div className="field">
        <label htmlFor="table">A table of rooms, boxes, rounds, loggers or the diary</label>
        <input
          id="table"
          type="file"
          accept=".csv,.txt,.xlsx,.json,.jsonl"
          onChange={(event) => {
            setFile(event.target.files?.[0] ?? null)
            setSaid(null)
          }}
        />
        <p className="hint">CSV, XLSX or JSON. Which table it is, its headings tell.</p>
      </div>
      <div className="row">
        <button
          type="button"
          className={said?.ok === true && !said.kept ? 'button' : 'button first'}
          disabled={file === null || busy || (!named && name.trim() === '')}
          onClick={() => file && send(file, false)}
        >
          {busy ? 'Looking …' : 'See what it holds'}
        </button>
        {said?.ok === true && !said.kept && file !== null && (
          <button type="button" className="button first" disabled={busy} onClick={() => send(file, true)}>
            Keep it
          </button>
        )}
      </div>
      <div ref={answer} tabIndex={-1} role="status" className="stack">
        {said !== null && <Answer said={said} />}
      </div>
    </div>
  )
}

function Answer({ said }: { readonly said: TablesSaid }) {
  return (
    <>
      <StopsLine stops={said.stops} />
      <p className={said.ok ? undefined : 'wrong'}>{said.says}</p>
      {said.problems.length > 0 && (
        <ul>
          {said.problems.map((problem) => (
            <li key={problem}>{problem}</li>
          ))}
        </ul>
      )}
      {said.more > 0 && <p>{`and ${said.more} more`}</p>}
      {said.toMend.map((id) => (
        <a key={id} className="button" href={`/import/${id}/rows`} download>
          Save the rows to mend
        </a>
      ))}
      {said.kept && (
        <p>
          <Link href="/store">The store as it stands now</Link>
        </p>
      )}
    </>
  )
}
