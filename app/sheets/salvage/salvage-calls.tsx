import Link from 'next/link'
import type { Contacts } from '../../../lib/engine/plan.ts'
import type { Contact } from '../../../lib/knowledge/knowledge.ts'
import type { SalvageList } from '../../../lib/services/list-salvage.ts'

const called = [
  'site-manager',
  'conservator',
  'store',
  'safety-adviser',
] as const satisfies readonly Contact[]

interface Props {
  readonly contacts: SalvageList['contacts']
  readonly words: Readonly<Partial<Record<Contact, { readonly label: string }>>>
}

/** Whom to call, on the same paper: nobody looks numbers up with water coming in. */
export function SalvageCalls({ contacts, words }: Props) {
  const lines = contacts.flatMap(({ site, contacts: of }) => called.flatMap((kind) => lineOf(kind, of, site)))
  return (
    <section className="section" aria-labelledby="calls">
      <h2 id="calls">Call</h2>
      {lines.length === 0 ? (
        <p>
          Nobody is written down yet: <Link href="/contacts">who to call</Link>. Until then write the numbers
          here by hand.
        </p>
      ) : (
        <ul>
          {lines.map(({ kind, site, name, reach }) => (
            <li key={`${site} ${kind}`}>
              <strong>{words[kind]?.label ?? kind}</strong>
              {`: ${[name, reach].filter((text) => text !== '').join(', ')}`}
              {contacts.length > 1 && ` (${site})`}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

function lineOf(kind: Contact, of: Contacts, site: string) {
  const contact = of[kind]
  return contact === undefined ? [] : [{ kind, site, ...contact }]
}
