import type { ReactNode } from 'react'
import style from './entries.module.css'

/** Names and what stands behind them, in two columns where there is room. An empty name goes on with the one above. */
export function Entries({ entries }: { readonly entries: readonly (readonly [string, ReactNode])[] }) {
  const groups: { name: string; values: ReactNode[] }[] = []
  for (const [name, value] of entries) {
    const last = groups.at(-1)
    if (name === '' && last !== undefined) last.values.push(value)
    else groups.push({ name, values: [value] })
  }
  return (
    <dl className={style.entries}>
      {groups.map(({ name, values }) => (
        <div key={name}>
          <dt>{name}</dt>
          {values.map((value, at) => (
            // The values of one name have no identity but their place.
            // oxlint-disable-next-line react/no-array-index-key
            <dd key={at}>{value}</dd>
          ))}
        </div>
      ))}
    </dl>
  )
}
