import style from './report.module.css'

/** So many names are read at once; more are folded on a screen. */
const few = 40

/** Boxes by name after what is said of them. */
export function BoxNames({ says, names }: { readonly says: string; readonly names: readonly string[] }) {
  if (names.length <= few)
    return (
      <p className="measure">
        <strong>{says}:</strong> <Names names={names} />
      </p>
    )
  return (
    <details className="measure">
      <summary>
        <strong>{`${says}: ${names.length} boxes`}</strong>
      </summary>
      <p>
        <Names names={names} />
      </p>
    </details>
  )
}

const Names = ({ names }: { readonly names: readonly string[] }) =>
  names.map((name, at) => (
    <span key={name}>
      <span className={style.name}>{name}</span>
      {at === names.length - 1 ? '.' : at === names.length - 2 ? ' and ' : ', '}
    </span>
  ))
