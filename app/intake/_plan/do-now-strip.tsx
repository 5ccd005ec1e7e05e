import type { DoNow } from '../../../lib/field/do-now.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { doNowLines, findsWords } from '../../../lib/wording/do-now.ts'
import { Stop } from '../../_statement/stop.tsx'
import style from './plan.module.css'

/** What to do now for the whole bag: stops first and whole, then whom to phone, what to keep wet, what goes together. */
export function DoNowStrip({ now, knowledge }: { readonly now: DoNow; readonly knowledge: Knowledge }) {
  const lines = doNowLines(now, knowledge)
  if (now.stops.length === 0 && lines.length === 0) return null
  return (
    <section className={style.strip} aria-labelledby="do-now">
      <h2 id="do-now">Do now</h2>
      {now.stops.map(({ caution, finds }) => (
        <Stop key={caution.rule} caution={caution} knowledge={knowledge} about={findsWords(finds)} />
      ))}
      <dl className={style.lines}>
        {lines.map(({ key, name, says }) => (
          <div key={key}>
            <dt>{name}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
