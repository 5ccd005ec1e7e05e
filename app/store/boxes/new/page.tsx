import type { Metadata } from 'next'
import Link from 'next/link'
import { NoProject } from '../../../_finds/no-project.tsx'
import { asked, type SearchParams } from '../../../_server/asked.ts'
import { projectsHere } from '../../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'
import { AskForm } from '../../_forms/ask-form.tsx'
import { boxQuestions } from '../box-questions.ts'
import { keepNewBox } from '../keep-box.ts'
import { namesOf } from '../names-of.ts'

export const metadata: Metadata = { title: 'A new box' }

export default async function NewBox({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>A new box</h1>
        <NoProject shows="Boxes belong to a project." />
      </>
    )
  }
  const services = await servicesHere()
  const store = await orElsewhere(services.showStore(chosen.id))
  const { box } = await asked(searchParams)
  return (
    <>
      <header className="head">
        <h1>A new box</h1>
        <p className="lead">Leave open what nobody knows; the forecast says what it could not tell.</p>
        <p>
          <Link href="/store">Back to the store</Link>
        </p>
      </header>
      <AskForm
        id="box"
        action={keepNewBox}
        questions={boxQuestions(box === undefined ? {} : { box }, namesOf(store))}
        hidden={{ project: chosen.id }}
        submit="Keep this box"
      />
    </>
  )
}
