import type { Metadata } from 'next'
import Link from 'next/link'
import { notFound } from 'next/navigation'
import { thoughtBefore } from '../../../../lib/field/thought.ts'
import { methodWords } from '../../../../lib/wording/identification.ts'
import { stoodOf } from '../../../../lib/wording/standing.ts'
import { Invented } from '../../../_marks/invented.tsx'
import { asked, type SearchParams } from '../../../_server/asked.ts'
import { personHere } from '../../../_server/person.ts'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'
import { Back } from '../../../sources/back.tsx'
import { Stop } from '../../../_statement/stop.tsx'
import { Choose, resultAt } from './choose.tsx'
import { enterResult } from './enter.ts'
import { FoundOut } from './found.tsx'
import { ResultForm } from './result-form.tsx'
import { foundQuestion, reportQuestions, sourceQuestions } from './result-questions.ts'
import { Told } from './told.tsx'

interface Props {
  readonly params: Promise<{ readonly id: string }>
  readonly searchParams: SearchParams
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const services = await servicesHere()
  const shown = await services.showFind({ findId: (await params).id })
  return { title: shown.ok ? `A result for ${shown.value.find.findNumber}` : 'A result' }
}

/** A result has come in: what was asked and how, then what came back; kept, it says what was thought before and now. */
export default async function IdentifyPage({ params, searchParams }: Props) {
  const services = await servicesHere()
  const { id } = await params
  const { project, find, history, identifications, now } = await orElsewhere(
    services.showFind({ findId: id }),
  )
  const { knowledge } = services
  const { component, matter, method: asking, kept } = await asked(searchParams)
  const { record } = history[0]!.kept
  const several = record.components.length > 1
  const stood = stoodOf(now.interpretations)
  const method = asking === 'judged' ? '' : asking
  const part = record.components.find((one) => one.component === component)
  const raised = stood.find((one) => one.component === component && one.matter === matter)
  const chosen = component !== undefined && method !== undefined
  if (chosen && (!part || (method !== '' && !knowledge.methods[method]))) notFound()
  if (chosen && matter !== undefined && raised === undefined) notFound()
  const written = matter === undefined ? undefined : knowledge.matters[matter]
  const person = await personHere()
  const here = `/finds/${id}/identify`
  const found = identifications.findLast(
    ({ given }) => given.component === component && given.matter === matter && given.method === method,
  )
  return (
    <>
      {now.cautions
        .filter(({ level }) => level === 'stop')
        .map((caution) => (
          <Stop key={caution.rule} caution={caution} knowledge={knowledge} />
        ))}
      <header className="head">
        <Back to={`/finds/${id}`} name={find.findNumber} />
        <h1>A result has come in</h1>
        <p className="soft">
          {[find.findNumber, record.object ?? ''].filter((text) => text !== '').join(', ')}{' '}
          {project.invented && <Invented />}
        </p>
      </header>
      {chosen && kept !== undefined && (
        <Told
          id={id}
          kept={kept === 'before' ? 'before' : 'now'}
          before={
            found?.thought.rivals ??
            (matter === undefined
              ? null
              : thoughtBefore(record, { component, matter, method }, knowledge, services.today())
            )?.rivals ??
            []
          }
          now={raised}
          found={found}
          knowledge={knowledge}
        />
      )}
      {chosen && kept === undefined && (
        <section className="section" aria-labelledby="came">
          <h2 id="came">{methodWords(method, knowledge)}</h2>
          <p className="measure">
            {[several ? `Of ${component}.` : '', written?.asks ?? ''].filter((text) => text !== '').join(' ')}{' '}
            <Link className="tall" href={here}>
              Something else was asked
            </Link>
          </p>
          {person === null && (
            <p>
              <Link
                href={`/person?back=${encodeURIComponent(
                  resultAt(id, {
                    component,
                    method: asking!,
                    ...(matter === undefined ? {} : { matter }),
                  }),
                )}`}
              >
                Say who you are
              </Link>{' '}
              first: every entry carries who made it.
            </p>
          )}
          <ResultForm
            action={enterResult}
            hidden={{ find: id, component, method, ...(matter === undefined ? {} : { matter }) }}
            report={reportQuestions(written, method, knowledge)}
            found={written ? [foundQuestion(written, knowledge)] : []}
            source={sourceQuestions(services.today())}
          />
        </section>
      )}
      {!chosen && (
        <Choose
          id={id}
          stood={stood}
          record={record}
          identifications={identifications}
          knowledge={knowledge}
        />
      )}
      <FoundOut
        identifications={identifications}
        severalParts={several}
        invented={project.invented}
        knowledge={knowledge}
      />
    </>
  )
}
