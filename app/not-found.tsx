import type { Metadata } from 'next'
import Link from 'next/link'

export const metadata: Metadata = { title: 'Nothing here' }

export default function NotFound() {
  return (
    <div className="stack">
      <h1>There is nothing here</h1>
      <p className="measure">
        The find, rule or work this address names is not in this database or not in this version of the
        knowledge. It may belong to another project, or the address may have lost a letter.
      </p>
      <p>
        <Link className="button" href="/finds">
          Search the finds
        </Link>
      </p>
    </div>
  )
}
