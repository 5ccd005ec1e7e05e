import Link from 'next/link'
import type { MethodBatch } from '../../../lib/evidence/assemblage-batches.ts'
import type { Method } from '../../../lib/knowledge/knowledge.ts'
import { batchWords, partsWords, questionsWords, settlesWords } from '../../../lib/wording/analyses-text.ts'
import { capital } from '../../../lib/wording/capital.ts'
import { leaveWords } from '../../../lib/wording/request.ts'
import { Scroll } from '../../_frame/scroll.tsx'
import paper from '../../_papers/paper.module.css'
import style from './analyses.module.css'
import { FurtherHours } from './further.tsx'

interface Props {
  readonly batch: MethodBatch
  readonly method: Method
  readonly nameOf: (find: string) => string
}

/** What goes to one method, to be taken along on paper, and what further hours there would buy. */
export function Batch({ batch, method, nameOf }: Props) {
  const { id, label, who, leave, cautions } = method
  return (
    <section className={`section ${style.batch}`} aria-labelledby={id}>
      <h2 id={id}>{label}</h2>
      <p>{`${batchWords(batch)}. ${who}.${leave ? ` ${leaveWords}` : ''}`}</p>
      {cautions.map(({ code, text }) => (
        <p key={code} className={`small measure ${style.careful}`}>
          {text}
        </p>
      ))}
      {batch.asks.length === 0 ? (
        <p>Nothing is sent there.</p>
      ) : (
        <Scroll name={`Finds for ${label}`}>
          <table className="broad">
            <thead>
              <tr>
                <th scope="col">Done</th>
                <th scope="col">Find</th>
                <th scope="col">Question</th>
                <th scope="col">What the answer does</th>
              </tr>
            </thead>
            <tbody>
              {batch.asks.map((ask) => {
                const parts = partsWords(ask, ask.find.facts.components.length)
                return (
                  <tr key={`${ask.find.id} ${parts}`}>
                    <td>
                      <span className={paper.tick} aria-hidden="true" />
                    </td>
                    <th scope="row" className={style.find}>
                      <Link href={`/finds/${ask.find.id}`}>{nameOf(ask.find.id)}</Link>
                      {parts !== '' && <span className={style.parts}>{parts}</span>}
                    </th>
                    <td>{questionsWords(ask)}</td>
                    <td>{capital(settlesWords(ask))}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
        </Scroll>
      )}
      <FurtherHours batch={batch} method={method} nameOf={nameOf} />
    </section>
  )
}
