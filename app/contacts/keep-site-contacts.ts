'use server'

import { revalidatePath } from 'next/cache'
import type { Contact } from '../../lib/knowledge/knowledge.ts'
import { troubleWords } from '../../lib/wording/trouble.ts'
import { personHere } from '../_server/person.ts'
import { servicesHere } from '../_server/services.ts'

export interface ContactLine {
  readonly kind: Contact
  readonly label: string
  readonly means: string
  readonly name: string
  readonly reach: string
  readonly version: number | null
}

export interface Said {
  readonly ok: boolean
  readonly says: string
}

/** Keeps the lines that were changed; each against the version it was read at, so that nobody's change is lost. */
export async function keepSiteContacts(_before: Said | null, form: FormData): Promise<Said> {
  const person = await personHere()
  if (person === null) return { ok: false, says: 'Say who you are first.' }
  const services = await servicesHere()
  const text = (name: string) => String(form.get(name) ?? '').trim()
  const contacts = (Object.keys(services.knowledge.vocabulary.contacts) as Contact[]).flatMap((kind) => {
    const [name, reach] = [text(`${kind}.name`), text(`${kind}.reach`)]
    if (String(form.get(`${kind}.before`) ?? '').replaceAll('\r\n', '\n') === `${name}\n${reach}`) return []
    const version = text(`${kind}.version`)
    return [{ kind, name, reach, version: version === '' ? null : Number(version) }]
  })
  if (contacts.length === 0) return { ok: true, says: 'Nothing was changed.' }
  const answer = await services.keepContacts({ siteId: text('site'), contacts }, person)
  if (!answer.ok) return { ok: false, says: troubleWords(answer.problems) }
  revalidatePath('/', 'layout')
  return { ok: true, says: 'Kept. Plans print these from now on.' }
}
