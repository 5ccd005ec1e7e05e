import Link from 'next/link'

interface Props {
  readonly path: string
  readonly asked: Readonly<Record<string, string>>
  readonly next: string | null
}

/** Older pages are reached by the browser's own way back; the next one by this. */
export function PageTurner({ path, asked, next }: Props) {
  const { after, ...rest } = asked
  if (next === null && after === undefined) return null
  return (
    <nav aria-label="Pages" className="row">
      {after !== undefined && (
        <Link className="button" href={`${path}?${new URLSearchParams(rest)}`}>
          From the beginning
        </Link>
      )}
      {next !== null && (
        <Link className="button" href={`${path}?${new URLSearchParams({ ...rest, after: next })}`}>
          Next page
        </Link>
      )}
    </nav>
  )
}
