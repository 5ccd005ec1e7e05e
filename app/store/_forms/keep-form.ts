import 'server-only'
import { revalidatePath } from 'next/cache'
import type { IsoDate } from '../../../lib/base/calendar.ts'
import type { Outcome } from '../../../lib/base/outcome.ts'
import type { Trouble } from '../../../lib/base/trouble.ts'
import type { Services } from '../../../lib/start.ts'
import { troubleWords } from '../../../lib/wording/trouble.ts'
import { personHere, type Person } from '../../_server/person.ts'
import { servicesHere } from '../../_server/services.ts'
import { formReader, type FormReader } from './read-form.ts'
import { kept, type Said } from './said.ts'

interface Task<Asked> {
  /** Reads what was given; what is wrong is left in the reader. */
  readonly read: (form: FormReader, today: IsoDate) => Asked
  readonly keep: (services: Services, asked: Asked, by: Person) => Promise<Outcome<unknown, Trouble>>
  readonly says: string
}

/** One form: read, all that is wrong told at once, kept, and every page of the store drawn anew. */
export async function keepForm<Asked>(form: FormData, { read, keep, says }: Task<Asked>): Promise<Said> {
  const reader = formReader(form)
  const refuse = (words: string, wrong: Readonly<Record<string, string>> = {}): Said => ({
    ok: false,
    says: words,
    wrong,
    given: reader.given(),
  })
  const by = await personHere()
  if (by === null) return refuse('Say who you are first: every entry carries who made it.')
  const services = await servicesHere()
  const asked = read(reader, services.today())
  const faults = Object.keys(reader.wrong).length
  if (faults > 0)
    return refuse(
      faults === 1 ? 'One answer needs another look.' : `${faults} answers need another look.`,
      reader.wrong,
    )
  const answer = await keep(services, asked, by)
  if (!answer.ok) {
    const { problems } = answer
    return problems.kind === 'not-accepted'
      ? refuse('One answer needs another look.', { [problems.field]: troubleWords(problems) })
      : refuse(troubleWords(problems))
  }
  revalidatePath('/store', 'layout')
  return kept(says)
}
