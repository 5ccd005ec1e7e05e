import Link from 'next/link'
import type { Use } from './uses.ts'

export function UseList({ uses }: { readonly uses: readonly Use[] }) {
  if (uses.length === 0) return <p className="soft">No rule rests on it.</p>
  return (
    <ul className="plain-list">
      {uses.map(({ decision, rule }) => (
        <li key={`${decision}/${rule.id}`}>
          <Link className="tall" href={`/sources/decisions/${decision}#${rule.id}`}>
            {rule.title}
          </Link>
        </li>
      ))}
    </ul>
  )
}
