'use client'

import Link from 'next/link'
import { useState, useTransition } from 'react'
import type { Planned } from '../../lib/field/bag.ts'
import { countWords } from '../../lib/wording/list.ts'
import type { Act } from './_sheet/act.ts'
import { isBlank, type Rows } from './_sheet/sheet.ts'
import { newId } from './_grid/use-grid-events.ts'
import { keepBag, type BagKept } from './keep-bag.ts'

interface Props {
  readonly rows: Rows
  readonly bag: readonly Planned[]
  readonly known: boolean
  readonly dispatch: (action: Act) => void
}

/** Hands the bag to the database. Rows that give no record yet stay in the grid. */
export function KeepBag({ rows, bag, known, dispatch }: Props) {
  const [result, setResult] = useState<BagKept | null>(null)
  const [busy, start] = useTransition()
  const unready =
    rows.filter((row) => !isBlank(row)).length === 0
      ? 0
      : rows.filter((row) => !isBlank(row)).length - rowsOf(bag)
  const keep = () =>
    start(async () => {
      const answer = await keepBag(rows).catch(() => unreached)
      setResult(answer)
      if (answer.ok) dispatch({ do: 'bag-kept', rowIds: answer.keptRows, newId: newId() })
    })
  return (
    <div className="stack">
      <div className="row">
        <button
          className="button first"
          type="button"
          disabled={busy || bag.length === 0 || !known}
          onClick={keep}
        >
          {busy ? 'Keeping …' : `Keep ${countWords(bag.length, 'find')} in the project`}
        </button>
        {!known && (
          <p>
            <Link href="/person?back=/intake">Say who you are</Link> first: every record carries who wrote it.
          </p>
        )}
        {unready > 0 && (
          <p className="soft">{`${countWords(unready, 'row')} without number or material will stay here.`}</p>
        )}
      </div>
      <div role="status">{result !== null && <Result result={result} />}</div>
    </div>
  )
}

/** As many as one sheet holds, and one address can name. */
const onASheet = 200

const unreached: BagKept = {
  ok: false,
  says: 'The server could not be reached. Your rows are still here and kept on this device.',
}

function rowsOf(bag: readonly Planned[]): number {
  return bag.reduce((sum, { record }) => sum + record.components.length, 0)
}

function Result({ result }: { readonly result: BagKept }) {
  if (!result.ok) return <p className="wrong">{result.says}</p>
  const sheet = result.finds.slice(0, onASheet).map(({ id }) => id)
  return (
    <p>
      {`${countWords(result.added, 'record')} kept`}
      {result.alreadyThere > 0 &&
        `; ${countWords(result.alreadyThere, 'record')} were there already, word for word`}
      {'. '}
      <Link href={`/sheets/bag?finds=${sheet.join(',')}`}>Print the bag sheet</Link>
      {'. '}
      {result.finds.slice(0, 12).map(({ id, findNumber }, at) => (
        <span key={id}>
          {at > 0 && ', '}
          <Link href={`/finds/${id}`}>{findNumber}</Link>
        </span>
      ))}
      {result.finds.length > 12 && ` and ${result.finds.length - 12} more`}
    </p>
  )
}
