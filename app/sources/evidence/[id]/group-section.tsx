import type { Group, Matter } from '../../../../lib/knowledge/evidence.ts'
import type { Knowledge } from '../../../../lib/knowledge/knowledge.ts'
import { capital } from '../../../../lib/wording/capital.ts'
import {
  byWords,
  circumstanceWords,
  failureOften,
  failureShows,
} from '../../../../lib/wording/evidence-table.ts'
import { explanationName } from '../../../../lib/wording/interpretation.ts'
import { listWords } from '../../../../lib/wording/list.ts'
import { Fold } from '../../../_evidence/fold.tsx'
import { Entries } from '../../entries.tsx'
import { SourceList } from '../../source-list.tsx'
import { GradeTable } from './grade-table.tsx'
import { QuestionPut } from './question-put.tsx'

interface Props {
  readonly group: Group
  readonly matter: Matter
  readonly knowledge: Knowledge
}

/** Features with one cause: how it is asked, how often each is so under each explanation, and how it goes wrong. */
export function GroupSection({ group, matter, knowledge }: Props) {
  const question = group.question === null ? undefined : knowledge.questions[group.question]
  const twin = matter.groups.find(({ id }) => id === group.sameCauseAs)
  return (
    <section className="section" aria-labelledby={`group-${group.id}`}>
      <h2 id={`group-${group.id}`}>{group.label}</h2>
      {question !== undefined && <QuestionPut question={question} />}
      <p>
        <strong>{`${byWords(group, knowledge)}.`}</strong> How often each is so, where an explanation is the
        true one:
      </p>
      {twin !== undefined && (
        <p className="soft">{`What it shows counts once with “${twin.label}”, which looks for the same.`}</p>
      )}
      <GradeTable group={group} matter={matter} knowledge={knowledge} />
      <Fold says="Where these words come from">
        <Entries
          entries={group.states.map((state) => [
            capital(state.says),
            <SourceList key={state.id} sources={state.sources} knowledge={knowledge} />,
          ])}
        />
      </Fold>
      {group.failures.length > 0 && (
        <>
          <h3>How it goes wrong</h3>
          <ul className="plain-list stack">
            {group.failures.map((failure) => (
              <li key={failure.id} className="stack">
                <p className="measure">
                  <strong>{capital(failure.says)}</strong>
                </p>
                <Entries
                  entries={[
                    ...(failure.when.length === 0
                      ? []
                      : [['Where', circumstanceWords(failure.when, knowledge)] as const]),
                    ...(failure.of === null
                      ? []
                      : [
                          [
                            'Befalls',
                            capital(
                              listWords(
                                failure.of.map((id) => explanationName(id, knowledge)),
                                'or',
                              ),
                            ),
                          ] as const,
                        ]),
                    ['Then it shows', capital(failureShows(failure, group))],
                    ['How often', capital(failureOften(failure, knowledge))],
                    ['Sources', <SourceList key="sources" sources={failure.sources} knowledge={knowledge} />],
                  ]}
                />
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}
