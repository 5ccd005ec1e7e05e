import type { Metadata } from 'next'
import Link from 'next/link'
import { orElsewhere, servicesHere } from '../../../../_server/services.ts'
import { AskForm } from '../../../_forms/ask-form.tsx'
import { boxQuestions } from '../../box-questions.ts'
import { mendBox } from '../../keep-box.ts'
import { namesOf } from '../../names-of.ts'

interface Props {
  readonly params: Promise<{ readonly id: string }>
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const services = await servicesHere()
  const shown = await services.showBox({ boxId: (await params).id })
  return { title: shown.ok ? `Mend box ${shown.value.line.box.given.box}` : 'Mend a box' }
}

export default async function EditBox({ params }: Props) {
  const services = await servicesHere()
  const { id } = await params
  const { project, line } = await orElsewhere(services.showBox({ boxId: id }))
  const store = await orElsewhere(services.showStore(project.id))
  const { box } = line
  // What it is called stands in records and in the diary: a box is not renamed here.
  const questions = boxQuestions(box.given, namesOf(store)).filter(
    ({ name }) => name !== 'box' && !notOf(box.given.kind).includes(name),
  )
  return (
    <>
      <header className="head">
        <h1>{`Box ${box.given.box}`}</h1>
        <p className="lead">What is written about it. What happened to it goes into its diary instead.</p>
        <p>
          <Link href={`/store/boxes/${id}`}>Back to the box</Link>
        </p>
      </header>
      <AskForm
        id="box"
        action={mendBox}
        questions={questions}
        hidden={{ id, project: project.id, version: String(box.version), box: box.given.box }}
        submit="Keep"
      />
    </>
  )
}

/** A tub is asked for no gel, and what is no tub for no water. */
const notOf = (kind: string | undefined): readonly string[] =>
  kind === 'tub'
    ? [
        'gel_kg',
        'gel_kind',
        'gel_conditioned_on',
        'gel_rh_percent',
        'target_min',
        'target_max',
        'air_changes_per_day',
      ]
    : ['filled_on', 'water_changed_on']
