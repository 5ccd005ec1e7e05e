import Link from 'next/link'
import { useEffect, useRef } from 'react'
import { Scroll } from '../_frame/scroll.tsx'
import { countWords } from '../../lib/wording/list.ts'
import { StopsLine } from '../_papers/stops-line.tsx'
import type { Summary } from './summary.ts'

interface Props {
  readonly summary: Summary
  readonly onCommit: () => void
  readonly onAgain: () => void
}

/** What the file holds: stops first, then counts, then everything that was not understood. */
export function Findings({ summary, onCommit, onAgain }: Props) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [summary])
  const stops = [...Map.groupBy(summary.stops, ({ text, who }) => `${text} ${who}`).values()]
  return (
    <div className="stack">
      <h2 ref={heading} tabIndex={-1}>
        {summary.dryRun ? `What ${summary.fileName} would bring` : `${summary.fileName} is in`}
      </h2>
      <StopsLine
        stops={stops.map((group) => ({
          about: group.map(({ where }) => where).join('; '),
          text: group[0]!.text,
          who: group[0]!.who,
        }))}
      />
      <Counts summary={summary} />
      <div className="row">
        {summary.dryRun ? (
          <>
            <button
              className="button first"
              type="button"
              disabled={summary.records + summary.rejected === 0}
              onClick={onCommit}
            >
              {summary.records === 0
                ? `Keep ${countWords(summary.rejected, 'row')} to mend`
                : `Keep ${countWords(summary.added, 'record')}`}
            </button>
            <button className="button" type="button" onClick={onAgain}>
              Choose another file
            </button>
          </>
        ) : (
          <>
            <Link className="button first" href="/">
              See what presses
            </Link>
            {summary.rejected > 0 && summary.importId !== null && (
              <a className="button" href={`/import/${summary.importId}/rows`} download>
                {`Save ${countWords(summary.rejected, 'row')} to mend`}
              </a>
            )}
            <button className="button" type="button" onClick={onAgain}>
              Import another file
            </button>
          </>
        )}
      </div>
      <Problems summary={summary} />
    </div>
  )
}

function Counts({ summary }: { readonly summary: Summary }) {
  const would = summary.dryRun ? 'would be' : 'were'
  return (
    <ul>
      <li>{`${countWords(summary.records, 'record')} could be read${summary.sheet === null ? '' : `, from the sheet “${summary.sheet}”`}.`}</li>
      <li>{`${countWords(summary.added, 'record')} ${would} added, of ${countWords(summary.findsNew, 'new find')}.`}</li>
      {summary.alreadyThere > 0 && (
        <li>{`${countWords(summary.alreadyThere, 'record')} are there already, word for word.`}</li>
      )}
      {summary.rejected > 0 && (
        <li>
          <strong>{`${countWords(summary.rejected, 'row')} could not be read.`}</strong>
          {summary.dryRun
            ? ' They would be kept aside, to be mended.'
            : ' They are kept aside, to be mended.'}
        </li>
      )}
      {summary.unknownColumns.length > 0 && (
        <li>{`Columns that are not known here are kept with the records: ${summary.unknownColumns.join(', ')}.`}</li>
      )}
    </ul>
  )
}

function Problems({ summary }: { readonly summary: Summary }) {
  if (summary.problems.length === 0) return <p>Everything in it was understood.</p>
  const words = { unreadable: 'Not read', problem: 'Not understood', note: 'Read so' } as const
  return (
    <Scroll name="What was not understood">
      <table>
        <caption>
          {`${countWords(summary.problemsInAll, 'problem')}, ${countWords(summary.notesInAll, 'note')}`}
          {summary.problems.length < summary.problemsInAll + summary.notesInAll &&
            `; the first ${summary.problems.length} are shown`}
        </caption>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">What</th>
            <th scope="col">What to do</th>
          </tr>
        </thead>
        <tbody>
          {summary.problems.map(({ where, says, severity }, at) => (
            // Two problems may have the same words in the same place.
            // oxlint-disable-next-line react/no-array-index-key
            <tr key={at}>
              <th scope="row">{where}</th>
              <td>{severity === 'note' ? words.note : <strong>{words[severity]}</strong>}</td>
              <td>{says}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}
