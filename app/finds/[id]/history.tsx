import Link from 'next/link'
import { Scroll } from '../../_frame/scroll.tsx'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { FindShown } from '../../../lib/services/show-find.ts'
import { dayWords, momentWords } from '../../../lib/wording/day.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { whoWords } from '../../../lib/wording/marks.ts'
import { changeWords, recordWords } from '../../../lib/wording/record.ts'
import { UrgencyMark } from '../../_marks/urgency-mark.tsx'

interface Props {
  readonly id: string
  /** Newest first. */
  readonly history: FindShown['history']
  readonly knowledge: Knowledge
}

/** Every condition record with its day, who wrote it, what it says otherwise than the one before, and the plan issued for it. */
export function History({ id, history, knowledge }: Props) {
  const nameOf = (at: number) =>
    history.length === 1 ? 'The record, table' : `Record ${history.length - at}, table`
  return (
    <section className="section no-print" aria-labelledby="history">
      <h2 id="history">{countWords(history.length, 'condition record')}</h2>
      <p className="soft small">Nothing is overwritten: a new look at the find is a new record.</p>
      <ol className="plain-list stack" reversed>
        {history.map(({ kept, plans }, at) => {
          const before = history[at + 1]?.kept.record
          const issued = plans[0]
          return (
            <li key={kept.id} className="stack">
              <h3>{kept.recordedOn === null ? 'Day not recorded' : dayWords(kept.recordedOn)}</h3>
              <p className="small soft">
                {`Kept by ${kept.by.name}, ${whoWords[kept.by.role]} (unverified), ${momentWords(kept.createdAt)}`}
                {kept.record.recorded_by !== undefined && `; recorded by ${kept.record.recorded_by}`}
              </p>
              {issued !== undefined && (
                <p>
                  <UrgencyMark urgency={issued.plan.urgency} />{' '}
                  <Link
                    href={`/finds/${id}?record=${kept.id}`}
                  >{`Plan issued for ${dayWords(issued.asOf)}`}</Link>
                </p>
              )}
              {before === undefined ? (
                <Whole name={nameOf(at)} said={recordWords(kept.record, knowledge)} />
              ) : (
                <Changes changes={changeWords(before, kept.record, knowledge)} />
              )}
              {before !== undefined && (
                <details>
                  <summary className="tall">The whole record</summary>
                  <Whole name={nameOf(at)} said={recordWords(kept.record, knowledge)} />
                </details>
              )}
            </li>
          )
        })}
      </ol>
    </section>
  )
}

interface WholeProps {
  /** A find may have several records, each in a table with a name of its own. */
  readonly name: string
  readonly said: ReturnType<typeof recordWords>
}

function Whole({ name, said }: WholeProps) {
  return (
    <Scroll name={name}>
      <table className="measure">
        <tbody>
          {said.map(({ part, field, label, value }) => (
            <tr key={`${part} ${field}`}>
              <th scope="row">{part === null ? label : `${part}: ${label}`}</th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}

function Changes({ changes }: { readonly changes: ReturnType<typeof changeWords> }) {
  if (changes.length === 0) return <p>It says the same as the record before.</p>
  return (
    <ul>
      {changes.map(({ part, label, from, to }) => (
        <li key={`${part} ${label}`}>
          <strong>{part === null ? label : `${part}: ${label}`}</strong>
          {`: ${from ?? 'not recorded'} → ${to ?? 'not recorded'}`}
        </li>
      ))}
    </ul>
  )
}
