import type { Matter } from '../../../../lib/knowledge/evidence.ts'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import { circumstanceWords } from '../../../../lib/wording/evidence-table.ts'
import { codeLabel } from '../../../../lib/wording/fact.ts'
import { Scroll } from '../../../_frame/scroll.tsx'
import { SourceList } from '../../source-list.tsx'
import style from './evidence-tables.module.css'

interface Props {
  readonly matter: Matter
  readonly knowledge: Knowledge
}

/** Each explanation with its odds, circumstance by circumstance, and on what each rests. */
export function OddsTable({ matter, knowledge }: Props) {
  return (
    <Scroll name="What it may be, table">
      <table className={style.odds}>
        <thead>
          <tr>
            <th scope="col">What it may be</th>
            <th scope="col">Where</th>
            <th scope="col">How common</th>
            <th scope="col">Because</th>
            <th scope="col">Sources</th>
          </tr>
        </thead>
        {matter.rivals.map(({ id, says, priors }) => (
          <tbody key={id} id={`rival-${id}`}>
            {priors.map(({ when, odds, because, sources }, at) => (
              <tr key={circumstanceWords(when, knowledge)}>
                {at === 0 && (
                  <th scope="rowgroup" rowSpan={priors.length}>
                    {codeLabel(id, knowledge)}
                    <p className={style.says}>{says}</p>
                  </th>
                )}
                <td data-name="Where">
                  {when.length > 0 ? circumstanceWords(when, knowledge) : at === 0 ? 'always' : 'else'}
                </td>
                <td data-name="How common">
                  <strong>{odds}</strong>
                </td>
                <td data-name="Because">{because}</td>
                <td>
                  <SourceList sources={sources} knowledge={knowledge} />
                </td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </Scroll>
  )
}
