import Link from 'next/link'
import { useEffect, useRef } from 'react'
import { countWords } from '../../../../lib/wording/list.ts'
import { logFormWords, logKeptWords } from '../../../../lib/wording/store-log.ts'
import { LogChannel } from './log-channel.tsx'
import { LogProblems } from './log-problems.tsx'
import { LogQuestionAsked } from './log-question.tsx'
import type { LogSaid } from './received-log.ts'
import { answersOf, readyToKeep } from './said-so-far.ts'
import type { LogInHand } from './use-log-files.ts'
import style from '../loggers.module.css'

export interface Known {
  readonly zone: string
  readonly zones: readonly string[]
  readonly serials: readonly string[]
  readonly boxes: readonly string[]
}

interface Props {
  readonly file: LogInHand
  readonly known: Known
  /** Noted; the file need not be read again for it. */
  readonly onSaid: (said: LogSaid) => void
  /** The file is read again with this. */
  readonly onAnswer: (said: LogSaid) => void
  readonly onKeep: (said: LogSaid) => void
  readonly onDrop: () => void
}

/** One file: what it would bring, what it leaves open, what is wrong in it; kept only when somebody says so. */
export function LogCard({ file, known, onSaid, onAnswer, onKeep, onDrop }: Props) {
  const { read, kept, said, busy, says } = file
  const heading = useRef<HTMLHeadingElement>(null)
  const id = `log-${file.id}`
  useEffect(() => {
    if (kept !== null) heading.current?.focus()
  }, [kept])
  return (
    <section className="section" aria-labelledby={id}>
      <h2 id={id} ref={heading} tabIndex={-1}>
        {file.name}
      </h2>
      <div role="status">
        {busy === 'reading' && <p>Reading it; nothing is kept yet …</p>}
        {busy === 'keeping' && <p>Keeping it …</p>}
        {kept !== null && <p>{logKeptWords(kept)}</p>}
      </div>
      {says !== null && (
        <p role="alert" className="wrong">
          {says}
        </p>
      )}
      {read === null && says !== null && (
        <div className={style.does}>
          <button type="button" className="button first" onClick={() => onAnswer(said)}>
            Try again
          </button>
          <button type="button" className="button" onClick={onDrop}>
            Leave it
          </button>
        </div>
      )}
      {read !== null && (
        <>
          {read.kept !== null && kept === null && (
            <p>
              <strong>The same file is kept already.</strong> Keeping it again changes nothing; with other
              answers it is read anew.
            </p>
          )}
          {read.asks.map((question) => (
            <LogQuestionAsked
              key={question.about}
              id={id}
              question={question}
              zones={known.zones}
              onAnswer={(answers) => onAnswer({ ...said, answers: { ...answersOf(read), ...answers } })}
            />
          ))}
          {read.channels.map((channel, at) => (
            <LogChannel
              // A file may name two sensors alike.
              // oxlint-disable-next-line react/no-array-index-key
              key={`${channel.channel} ${at}`}
              id={`${id}-${at}`}
              channel={channel}
              zone={known.zone}
              serials={known.serials}
              boxes={known.boxes}
              box={said.boxes[channel.serial ?? ''] ?? ''}
              kept={kept !== null}
              onSerial={(serial) =>
                onAnswer({ ...said, serials: { ...said.serials, [channel.channel]: serial } })
              }
              onBox={(box) => onSaid({ ...said, boxes: { ...said.boxes, [channel.serial ?? '']: box } })}
            />
          ))}
          <LogProblems problems={read.problems} name={file.name} />
          {read.form !== null && (
            <details>
              <summary>How it was read</summary>
              <ul>
                {logFormWords(read.form).map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
              <p className="soft">
                {`${countWords(read.rows.lines, 'line')}, ${countWords(read.rows.read, 'reading')}, ${countWords(read.rows.unreadable, 'line')} not read.`}
              </p>
            </details>
          )}
          <div className={style.does}>
            {kept === null ? (
              <>
                <button
                  type="button"
                  className="button first"
                  disabled={busy !== null || !readyToKeep(read)}
                  onClick={() => onKeep({ ...said, boxes: filled(said.boxes) })}
                >
                  Keep this file
                </button>
                <button type="button" className="button" disabled={busy !== null} onClick={onDrop}>
                  Leave it
                </button>
                {!readyToKeep(read) && <p className="soft">{whyNot(read)}</p>}
              </>
            ) : (
              kept.read.channels.map(
                ({ logger }) =>
                  logger !== null && (
                    <Link key={logger.id} className="button" href={`/store/loggers/${logger.id}`}>
                      {`See logger ${logger.given.serial}`}
                    </Link>
                  ),
              )
            )}
          </div>
        </>
      )}
    </section>
  )
}

const filled = (names: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(names).filter(([, name]) => name.trim() !== ''))

function whyNot(read: NonNullable<LogInHand['read']>): string {
  if (read.asks.length > 0) return 'Answer what is asked above first.'
  return read.channels.every(({ readings }) => readings === 0)
    ? 'There is no reading in it that could be kept.'
    : 'Say which logger it is of first.'
}
