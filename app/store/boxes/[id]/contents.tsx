import Link from 'next/link'
import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { dayWords } from '../../../../lib/wording/day.ts'
import { countWords } from '../../../../lib/wording/list.ts'
import { FindList } from '../../../_finds/find-list.tsx'

/** What lies in the box, what is out of it, and what lay in it before. */
export function Contents({ shown }: { readonly shown: BoxShown }) {
  const { finds, out, stays, project } = shown
  const before = stays.filter(({ to }) => to !== null)
  return (
    <section className="section" aria-labelledby="contents">
      <h2 id="contents">{finds.length === 0 ? 'Nothing lies in it' : countWords(finds.length, 'find')}</h2>
      {finds.length > 0 && <FindList finds={finds} invented={project.invented} tells="reasons" />}
      {out.length > 0 && (
        <>
          <h3>Out of it</h3>
          <ul>
            {out.map(({ find, since, where, why, days }) => (
              <li key={find.id}>
                <Link href={`/finds/${find.id}`}>{find.findNumber}</Link>
                {`, since ${dayWords(since)} (${countWords(days, 'day')})${where === '' ? '' : `, ${where}`}${why === '' ? '' : `: ${why}`}`}
              </li>
            ))}
          </ul>
        </>
      )}
      {before.length > 0 && (
        <details>
          <summary>{`Lay in it before: ${countWords(before.length, 'find')}`}</summary>
          <ul>
            {before.map(({ find, from, to }) => (
              <li key={`${find.id} ${from}`}>
                <Link href={`/finds/${find.id}`}>{find.findNumber}</Link>
                {`${from === null ? '' : `, from ${dayWords(from)}`}${to === null ? '' : `, to ${dayWords(to)}`}`}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}
