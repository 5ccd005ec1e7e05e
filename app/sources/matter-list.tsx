import Link from 'next/link'
import type { Matter } from '../../lib/knowledge/evidence.ts'

/** Matters of the evidence base that rest on something; the section is left out where none does. */
export function MatterList({
  name,
  matters,
}: {
  readonly name: string
  readonly matters: readonly Matter[]
}) {
  if (matters.length === 0) return null
  return (
    <section className="section" aria-labelledby="matters">
      <h2 id="matters">{name}</h2>
      <ul className="plain-list">
        {matters.map(({ id, asks }) => (
          <li key={id}>
            <Link className="tall" href={`/sources/evidence/${id}`}>
              {asks}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}
