import type { Interpretation, Leaning } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { capital } from '../../lib/wording/capital.ts'
import { againstWords, forWords } from '../../lib/wording/interpretation.ts'
import { Source } from '../_statement/reasons.tsx'
import style from './evidence.module.css'

interface Props {
  readonly rival: Interpretation
  readonly knowledge: Knowledge
}

/** What was seen that speaks for an explanation and against it, the strongest first, each with its works. */
export function Leanings({ rival, knowledge }: Props) {
  return (
    <div className={style.leanings}>
      <Side name="For" leanings={rival.for} words={forWords} knowledge={knowledge} />
      <Side name="Against" leanings={rival.against} words={againstWords} knowledge={knowledge} />
    </div>
  )
}

interface SideProps {
  readonly name: string
  readonly leanings: readonly Leaning[]
  readonly words: Readonly<Record<Leaning['strength'], string>>
  readonly knowledge: Knowledge
}

function Side({ name, leanings, words, knowledge }: SideProps) {
  if (leanings.length === 0) return null
  return (
    <div>
      <h4>{name}</h4>
      <ul className="plain-list stack">
        {leanings.map(({ group, says, strength, sources }) => (
          <li key={group} data-strength={strength} className={style.leaning}>
            <p>
              {`${capital(says)}: `}
              <span className={style.strength}>{words[strength]}</span>
            </p>
            <ul className="plain-list soft">
              {[...new Map(sources.map((source) => [`${source.work} ${source.place}`, source]))].map(
                ([key, source]) => (
                  <li key={key}>
                    <Source source={source} knowledge={knowledge} />
                  </li>
                ),
              )}
            </ul>
          </li>
        ))}
      </ul>
    </div>
  )
}
