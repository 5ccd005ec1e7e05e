import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { diaryWords } from '../../../../lib/wording/box-diary.ts'
import { dayWords } from '../../../../lib/wording/day.ts'
import { countWords } from '../../../../lib/wording/list.ts'

const shownAtOnce = 12

/** Everything that was done to the box, newest first, by whom. */
export function Diary({ shown }: { readonly shown: BoxShown }) {
  const { diary, finds, stays } = shown
  const numbers = new Map([
    ...stays.map(({ find }) => [find.id, find.findNumber] as const),
    ...finds.map(({ findId, line }) => [findId, line.findNumber] as const),
  ])
  const lines = diary.map((entry) => (
    <li key={entry.id}>
      {`${dayWords(entry.on)}: ${diaryWords(entry, entry.findId === null ? null : (numbers.get(entry.findId) ?? null))}`}{' '}
      <span className="soft small">{entry.by.name}</span>
    </li>
  ))
  return (
    <section className="section" aria-labelledby="diary">
      <h2 id="diary">Diary</h2>
      {diary.length === 0 ? <p>Nothing is written down yet.</p> : <ul>{lines.slice(0, shownAtOnce)}</ul>}
      {lines.length > shownAtOnce && (
        <details>
          <summary>{countWords(lines.length - shownAtOnce, 'older entry', 'older entries')}</summary>
          <ul>{lines.slice(shownAtOnce)}</ul>
        </details>
      )}
    </section>
  )
}
