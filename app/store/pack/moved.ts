'use server'

import { troubleWords } from '../../../lib/wording/trouble.ts'
import { personHere } from '../../_server/person.ts'
import { servicesHere } from '../../_server/services.ts'

export interface MovedSaid {
  readonly ok: boolean
  readonly says: string
}

/**
 * One find is in its new box: somebody has carried it there and says so. The list is not drawn anew, or it would change in
 * the hands of whoever works it off.
 */
export async function sayMoved(_before: MovedSaid | null, form: FormData): Promise<MovedSaid> {
  const by = await personHere()
  if (by === null) return { ok: false, says: 'Say who you are first: every entry carries who made it.' }
  const [findId, box] = [form.get('find'), form.get('box')]
  if (typeof findId !== 'string' || typeof box !== 'string' || box === '')
    return { ok: false, says: 'Nothing was kept: the line names no find or no box.' }
  const services = await servicesHere()
  const answer = await services.moveFind(
    { findId, move: 'to-box', box, on: services.today(), why: 'packing' },
    by,
  )
  return answer.ok
    ? { ok: true, says: `Kept: it is in ${box}.` }
    : { ok: false, says: troubleWords(answer.problems) }
}
