import Link from 'next/link'

/** The way up one level. */
export function Back({ to, name }: { readonly to: string; readonly name: string }) {
  return (
    <p className="no-print small">
      <Link className="tall" href={to}>
        <span aria-hidden="true">←</span>
        {name}
      </Link>
    </p>
  )
}
