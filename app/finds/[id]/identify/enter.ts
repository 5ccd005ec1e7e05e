'use server'

import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { personHere } from '../../../_server/person.ts'
import { servicesHere } from '../../../_server/services.ts'
import { formReader } from '../../../store/_forms/read-form.ts'
import type { Said } from '../../../store/_forms/said.ts'
import { resultRead } from './read-result.ts'

/** The fields of the form that a fault of the service belongs to. */
const fieldOf: Readonly<Record<string, string>> = {
  matter: 'found',
  interpretation: 'found',
  report: 'words',
}

/** A result is kept, and the page says what was thought before and what is thought now; or all that is wrong comes back. */
export async function enterResult(_before: Said | null, form: FormData): Promise<Said> {
  const reader = formReader(form)
  const refuse = (says: string, wrong: Readonly<Record<string, string>> = {}): Said => ({
    ok: false,
    says,
    wrong,
    given: reader.given(),
  })
  const by = await personHere()
  if (by === null) return refuse('Say who you are first: every entry carries who made it.')
  const services = await servicesHere()
  const result = resultRead(reader, services.today())
  const faults = Object.keys(reader.wrong).length
  if (faults > 0) {
    const says = faults === 1 ? 'One answer needs another look.' : `${faults} answers need another look.`
    return refuse(says, reader.wrong)
  }
  const entered = await services.enterResult(result, by)
  if (!entered.ok) {
    const { problems } = entered
    const named = problems.flatMap((one) =>
      one.kind === 'not-accepted' ? [[fieldOf[one.field] ?? one.field, troubleWords(one)] as const] : [],
    )
    const others = problems.filter(({ kind }) => kind !== 'not-accepted').map(troubleWords)
    return refuse(others[0] ?? 'This cannot be kept as it is.', Object.fromEntries(named))
  }
  revalidatePath('/', 'layout')
  const { findId, component, method } = result
  const kept = new URLSearchParams({ kept: entered.value.alreadyThere ? 'before' : 'now', component })
  kept.set('method', method === '' ? 'judged' : method)
  const matter = reader.text('matter')
  if (matter !== '') kept.set('matter', matter)
  redirect(`/finds/${findId}/identify?${kept.toString()}`)
}
