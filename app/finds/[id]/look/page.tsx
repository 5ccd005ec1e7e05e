import type { Metadata } from 'next'
import Link from 'next/link'
import { capital } from '../../../../lib/wording/capital.ts'
import { keepSentence } from '../../../../lib/wording/keep.ts'
import { nothingLeftWords } from '../../../../lib/wording/look.ts'
import '../../../_drawings/all.ts'
import { LookCard } from '../../../_look/look-card.tsx'
import look from '../../../_look/look.module.css'
import { shownQuestion } from '../../../_look/shown.ts'
import { UrgencyMark } from '../../../_marks/urgency-mark.tsx'
import { asked, type SearchParams } from '../../../_server/asked.ts'
import { personHere } from '../../../_server/person.ts'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'
import { Stop } from '../../../_statement/stop.tsx'
import { keepLook } from './keep-look.ts'
import { NextHeading } from './next-heading.tsx'

export const metadata: Metadata = { title: 'Look closer' }

interface Props {
  readonly params: Promise<{ readonly id: string }>
  readonly searchParams: SearchParams
}

/** One kept find, one question at a time; every answer is a record of its day, and the plan follows at once. */
export default async function LookPage({ params, searchParams }: Props) {
  const services = await servicesHere()
  const { id } = await params
  const words = await asked(searchParams)
  const { find, history, now } = await orElsewhere(services.showFind({ findId: id }))
  const person = await personHere()
  const { record } = history[0]!.kept
  const skipped = skippedIn(words['else'] ?? '')
  const left = now.lookNext.filter(({ fact }) => !skipped.includes(fact))
  const question = left[0]
  const shown = question === undefined ? null : shownQuestion(question, services.knowledge)
  return (
    <>
      {now.cautions
        .filter(({ level }) => level === 'stop')
        .map((caution) => (
          <Stop key={caution.rule} caution={caution} knowledge={services.knowledge} />
        ))}
      <header className="head">
        <h1>{`Look closer at ${find.findNumber}`}</h1>
        <p className="lead">
          {record.object !== undefined && `${capital(record.object)}. `}
          <Link href={`/finds/${id}`}>Its whole plan</Link>
        </p>
      </header>
      <div className="row">
        <UrgencyMark urgency={now.urgency} />
        <p>{keepSentence(now.storage)}</p>
        <p role="status">{saidOf(words)}</p>
      </div>
      {person === null && (
        <p>
          <Link href={`/person?back=/finds/${id}/look`}>Say who you are</Link> first: every record carries who
          wrote it.
        </p>
      )}
      <section className={look.card} id="look" aria-labelledby="look-next">
        {question === undefined || shown === null ? (
          <>
            <NextHeading asked="">Enough for now</NextHeading>
            <p>
              {skipped.length > 0 && now.lookNext.length > 0
                ? 'You left every question that is open. '
                : nothingLeftWords}
              {skipped.length > 0 && <Link href={`/finds/${id}/look`}>Ask me again</Link>}
            </p>
          </>
        ) : (
          <LookCard
            question={question}
            shown={shown}
            knowledge={services.knowledge}
            questions={left.length}
            form={{ action: keepLook }}
            heading={
              <NextHeading asked={question.fact}>
                {shown.part === null || record.components.length === 1
                  ? question.asks
                  : `${capital(shown.part)}: ${question.asks}`}
              </NextHeading>
            }
            other={
              <Link
                className="button"
                href={`/finds/${id}/look?${new URLSearchParams({ else: skippedText([...skipped, question.fact]) }).toString()}`}
                scroll={false}
              >
                Ask me something else
              </Link>
            }
          >
            <input type="hidden" name="find" value={id} />
            <input type="hidden" name="fact" value={question.fact} />
            <input type="hidden" name="else" value={skippedText(skipped)} />
          </LookCard>
        )}
      </section>
    </>
  )
}

/** Parts have names of any kind, commas among them. */
const skippedText = (facts: readonly string[]) => facts.map(encodeURIComponent).join(',')

function skippedIn(text: string): readonly string[] {
  try {
    return text
      .split(',')
      .filter((fact) => fact !== '')
      .map(decodeURIComponent)
  } catch {
    return []
  }
}

const said: Readonly<Record<string, string>> = {
  yes: 'Kept as a record of today, beside the earlier ones.',
  empty: 'Nothing was ticked. Tick what you see, or say that it is none of these.',
  no: 'That could not be kept. Nothing was changed; look at the question again.',
}

const saidOf = (words: Readonly<Record<string, string>>): string => said[words['kept'] ?? ''] ?? ''
