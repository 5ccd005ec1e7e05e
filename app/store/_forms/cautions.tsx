import Link from 'next/link'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { codeLabel } from '../../../lib/wording/fact.ts'
import { SourceList } from '../../sources/source-list.tsx'
import style from './forms.module.css'

interface Props {
  readonly knowledge: Knowledge
  readonly task: string
}

/** What to beware of at a task, beside its form: stops first and large, never folded; only the sources are one tap away. */
export function Cautions({ knowledge, task }: Props) {
  const cautions = knowledge.tasks[task]?.cautions ?? []
  if (cautions.length === 0) return null
  return (
    <aside className={style.cautions} aria-label={`Beware: ${knowledge.tasks[task]?.label ?? ''}`}>
      <ul className="plain-list">
        {cautions.map(({ code, text, level, sources, contested }) => (
          <li key={`${code} ${text}`} data-level={level}>
            <p>
              <strong>{codeLabel(code, knowledge)}.</strong> {text}
            </p>
            <details>
              <summary>{contested === null ? 'Sources' : 'Sources, which disagree'}</summary>
              {contested !== null && (
                <p>
                  <Link href={`/sources/contested/${contested}`}>
                    {knowledge.contested[contested]?.question ?? 'What is contested here'}
                  </Link>
                </p>
              )}
              <SourceList sources={sources} knowledge={knowledge} />
            </details>
          </li>
        ))}
      </ul>
    </aside>
  )
}
