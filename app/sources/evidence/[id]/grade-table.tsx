import type { Group, Matter } from '../../../../lib/knowledge/evidence.ts'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import { circumstanceWords } from '../../../../lib/wording/evidence-table.ts'
import { codeLabel } from '../../../../lib/wording/fact.ts'
import { Scroll } from '../../../_frame/scroll.tsx'
import style from './evidence-tables.module.css'

interface Props {
  readonly group: Group
  readonly matter: Matter
  readonly knowledge: Knowledge
}

/** States down, explanations across: how often it looks so where each is true. The first state that holds counts. */
export function GradeTable({ group, matter, knowledge }: Props) {
  return (
    <Scroll name={`${group.label}, table`}>
      <table className={style.grades}>
        <thead>
          <tr>
            <th scope="col">What shows</th>
            {matter.rivals.map(({ id }) => (
              <th key={id} scope="col">
                {codeLabel(id, knowledge)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {group.states.map((state) => (
            <tr key={state.id}>
              <th scope="row">
                {capital(state.says)}
                {group.question === null && state.when.length > 0 && (
                  <p className={style.says}>{circumstanceWords(state.when, knowledge)}</p>
                )}
              </th>
              {matter.rivals.map(({ id }) => (
                <td key={id} data-grade={state.fits[id]}>
                  {state.fits[id]}
                </td>
              ))}
            </tr>
          ))}
          <tr>
            <th scope="row">
              {capital(group.rest.says)}
              <p className={style.says}>It was looked at, and is none of the others.</p>
            </th>
            {matter.rivals.map(({ id }) => (
              <td key={id} data-grade={group.rest.fits[id]}>
                {group.rest.fits[id]}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
    </Scroll>
  )
}
