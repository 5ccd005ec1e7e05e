import type { LogProblem } from '../../../../lib/logger/log-problem.ts'
import { countWords } from '../../../../lib/wording/list.ts'
import { logProblemAdvice, logProblemPlace } from '../../../../lib/wording/log-problems.ts'
import { Scroll } from '../../../_frame/scroll.tsx'

interface Props {
  readonly problems: readonly LogProblem[]
  readonly name: string
}

const kinds = { error: 'Not read', warning: 'Look at it', note: 'Read so' } as const

/** What is wrong or notable in the file, each kind once with its first line and what to do; notes are folded. */
export function LogProblems({ problems, name }: Props) {
  const notes = problems.filter(({ severity }) => severity === 'note')
  const wrong = problems.filter(({ severity }) => severity !== 'note')
  return (
    <>
      {wrong.length > 0 && <Table problems={wrong} name={`What is wrong in ${name}`} />}
      {notes.length > 0 && (
        <details>
          <summary>{countWords(notes.length, 'note')}</summary>
          <Table problems={notes} name={`Notes on ${name}`} />
        </details>
      )}
    </>
  )
}

function Table({ problems, name }: Props) {
  return (
    <Scroll name={name}>
      <table>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">Kind</th>
            <th scope="col">What, and what to do</th>
          </tr>
        </thead>
        <tbody>
          {problems.map((problem) => (
            <tr key={`${problem.code} ${problem.line} ${problem.column}`}>
              <th scope="row">{logProblemPlace(problem)}</th>
              <td>
                {problem.severity === 'error' ? <strong>{kinds.error}</strong> : kinds[problem.severity]}
              </td>
              <td>{logProblemAdvice(problem)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}
