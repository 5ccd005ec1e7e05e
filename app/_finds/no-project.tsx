import Link from 'next/link'

/** Where there is nothing yet: what this place will show, and the ways to fill it. */
export function NoProject({ shows }: { readonly shows: string }) {
  return (
    <div className="stack">
      <p className="measure">{`${shows} Nothing is recorded yet.`}</p>
      <div className="row">
        <Link className="button first" href="/intake">
          Type a bag
        </Link>
        <Link className="button" href="/import">
          Import a file
        </Link>
        <Link className="button" href="/">
          Load the invented demo
        </Link>
      </div>
    </div>
  )
}
