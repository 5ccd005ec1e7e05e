import type { Metadata } from 'next'
import Link from 'next/link'
import { notFound } from 'next/navigation'
import { circumstanceWords, raisesWords } from '../../../../lib/wording/evidence-table.ts'
import { listWords } from '../../../../lib/wording/list.ts'
import { knowledgeHere } from '../../../_server/services.ts'
import { Back } from '../../back.tsx'
import { Entries } from '../../entries.tsx'
import { Correct } from './correct.tsx'
import { GroupSection } from './group-section.tsx'
import { OddsTable } from './odds-table.tsx'

interface Props {
  readonly params: Promise<{ readonly id: string }>
}

async function matterOf({ params }: Props) {
  const { id } = await params
  const knowledge = await knowledgeHere()
  return { knowledge, matter: Object.hasOwn(knowledge.matters, id) ? knowledge.matters[id] : undefined }
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await matterOf(props)).matter?.asks ?? 'What surfaces may be' }
}

export default async function MatterPage(props: Props) {
  const { knowledge, matter } = await matterOf(props)
  if (matter === undefined) notFound()
  const contested = matter.contested === null ? undefined : knowledge.contested[matter.contested]
  return (
    <>
      <header className="head">
        <Back to="/sources/evidence" name="What surfaces may be" />
        <h1>{matter.asks}</h1>
        <p className="lead">
          {`Asked where this was seen: ${listWords(
            raisesWords(matter, knowledge).map((label) => label.toLowerCase()),
            'or',
          )}.`}
        </p>
      </header>
      <Entries
        entries={[
          ...(matter.where.length === 0
            ? []
            : [['Only where', circumstanceWords(matter.where, knowledge)] as const]),
          ...(contested === undefined
            ? []
            : [
                [
                  'Contested',
                  <Link key="contested" href={`/sources/contested/${contested.id}`}>
                    {contested.question}
                  </Link>,
                ] as const,
              ]),
          [
            'Words',
            <Link key="words" href="/sources/evidence#words">
              How the words of these tables become numbers
            </Link>,
          ],
        ]}
      />
      <section className="section" aria-labelledby="rivals">
        <h2 id="rivals">What it may be</h2>
        <p className="measure">
          How common each is before anybody has looked closer. The first line whose circumstances all hold
          counts.
        </p>
        <OddsTable matter={matter} knowledge={knowledge} />
      </section>
      {matter.groups.map((group) => (
        <GroupSection key={group.id} group={group} matter={matter} knowledge={knowledge} />
      ))}
      <Correct matter={matter.id} />
    </>
  )
}
