import { memo } from 'react'
import type { DoNow } from '../../../lib/field/do-now.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { doNowLines, findsWords } from '../../../lib/wording/do-now.ts'
import { Stop } from '../../_statement/stop.tsx'
import style from './plan.module.css'

interface Props {
  readonly now: DoNow
  readonly knowledge: Knowledge
}

/** What to do now for the whole bag: stops first and whole, then whom to phone, what to keep wet, what goes together. */
export const DoNowStrip = memo(function DoNowStrip({ now, knowledge }: Props) {
  const lines = doNowLines(now, knowledge)
  if (now.stops.length === 0 && lines.length === 0) return null
  return (
    <section className={style.strip} aria-labelledby="do-now">
      <h2 id="do-now">Do now</h2>
      <div className={now.stops.length > 1 ? style.stops : undefined}>
        {now.stops.map(({ caution, finds }) => (
          <Stop key={caution.rule} caution={caution} knowledge={knowledge} about={findsWords(finds)} />
        ))}
      </div>
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
})
