'use server'

import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { personHere } from '../../../_server/person.ts'
import { servicesHere } from '../../../_server/services.ts'

const longest = 200

/** Keeps one answer, and goes on to the next question. Works as a plain form too. */
export async function keepLook(form: FormData): Promise<void> {
  const find = String(form.get('find') ?? '')
  if (!/^[\w-]{1,64}$/.test(find)) redirect('/finds')
  const place = `/finds/${find}/look`
  const person = await personHere()
  if (person === null) redirect(`/person?back=${place}`)
  const answers = answersIn(form)
  const skipped = String(form.get('else') ?? '')
  const after = (kept: string) =>
    `${place}?${new URLSearchParams({ kept, ...(skipped === '' ? {} : { else: skipped }) }).toString()}#look`
  if (answers.length === 0) redirect(after('empty'))
  const services = await servicesHere()
  const fact = String(form.get('fact') ?? '').slice(0, longest)
  const answer = await services.answerLook({ findId: find, fact, answers }, person)
  if (!answer.ok) redirect(after('no'))
  revalidatePath('/', 'layout')
  redirect(after('yes'))
}

/** What was pressed outweighs what was ticked before: "None of these" is meant as it is said. */
function answersIn(form: FormData): readonly string[] {
  const all = form
    .getAll('answer')
    .map((one) => String(one).trim().slice(0, longest))
    .filter((one) => one !== '')
  const pressed = all.findLast((one) => one === 'none' || one === 'unknown')
  return pressed === undefined ? all : [pressed]
}
