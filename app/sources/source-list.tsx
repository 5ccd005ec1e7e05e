import type { Knowledge, SourceRef } from '../../lib/knowledge/knowledge.ts'
import { Source } from '../_statement/reasons.tsx'

/** Works a rule, side or method stands on, each with its place; those that speak against it say so. */
export function SourceList({
  sources,
  knowledge,
}: {
  readonly sources: readonly SourceRef[]
  readonly knowledge: Knowledge
}) {
  return (
    <ul className="plain-list small">
      {sources.map((source) => (
        <li key={`${source.work} ${source.place} ${source.says}`}>
          {source.says === 'against' && <strong>Against: </strong>}
          <Source source={source} knowledge={knowledge} />
        </li>
      ))}
    </ul>
  )
}
