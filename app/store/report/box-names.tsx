import { listWords } from '../../../lib/wording/list.ts'

/** So many names are read at once; more are folded on a screen. */
const few = 24

/** Boxes by name after what is said of them. */
export function BoxNames({ says, names }: { readonly says: string; readonly names: readonly string[] }) {
  if (names.length <= few)
    return (
      <p className="measure">
        <strong>{says}:</strong> {listWords(names)}.
      </p>
    )
  return (
    <details className="measure">
      <summary className="tall">
        <strong>{`${says}: ${names.length} boxes`}</strong>
      </summary>
      <p>{listWords(names)}.</p>
    </details>
  )
}
