import type { Metadata } from 'next'
import Link from 'next/link'
import { notFound } from 'next/navigation'
import { Scroll } from '../../../_frame/scroll.tsx'
import { absentWords, policyWords } from '../../../../lib/wording/rule.ts'
import { fieldLabel } from '../../../../lib/wording/fact.ts'
import { knowledgeHere } from '../../../_server/services.ts'
import { Back } from '../../back.tsx'
import { Gaps } from './gaps.tsx'
import { RuleRows } from './rule-rows.tsx'
import { capital } from '../../../../lib/wording/capital.ts'

interface Props {
  readonly params: Promise<{ readonly id: string }>
}

async function decisionOf({ params }: Props) {
  const { id } = await params
  const knowledge = await knowledgeHere()
  return { knowledge, decision: knowledge.decisions.find((candidate) => candidate.id === id) }
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await decisionOf(props)).decision?.asks ?? 'Decision' }
}

export default async function DecisionSheet(props: Props) {
  const { knowledge, decision } = await decisionOf(props)
  if (decision === undefined) notFound()
  return (
    <>
      <header className="head">
        <Back to="/sources#decisions" name="Decisions" />
        <h1>{decision.asks}</h1>
        <p className="measure">
          {`Asked of each ${decision.each === 'component' ? 'part' : 'find'}. ${policyWords[decision.policy]} ${absentWords[decision.absent]}`}
        </p>
      </header>
      <Scroll name="Review table">
        <table className="broad">
          <caption>
            Review table: a rule holds where all its cells do. The order of rules means nothing.
          </caption>
          <thead>
            <tr>
              <th scope="col">Rule</th>
              {decision.facts.map((fact) => (
                <th key={fact} scope="col">
                  {knowledge.decisions.some((other) => other.id === fact) ? (
                    <Link href={`/sources/decisions/${fact}`}>{capital(fieldLabel(fact, knowledge))}</Link>
                  ) : (
                    fieldLabel(fact, knowledge)
                  )}
                </th>
              ))}
              <th scope="col">Gives</th>
              <th scope="col">Strength, certainty</th>
            </tr>
          </thead>
          {decision.rules.map((rule) => (
            <RuleRows key={rule.id} rule={rule} decision={decision} knowledge={knowledge} />
          ))}
        </table>
      </Scroll>
      <Gaps
        id="not-covered"
        name="We have no advice on"
        gaps={decision.notCovered.filter(({ quiet }) => !quiet)}
        knowledge={knowledge}
      />
      <Gaps
        id="silent"
        name="Knowingly silent"
        gaps={decision.notCovered.filter(({ quiet }) => quiet)}
        knowledge={knowledge}
      />
    </>
  )
}
