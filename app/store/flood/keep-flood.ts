'use server'

import { revalidatePath } from 'next/cache'
import { isoDate } from '../../../lib/base/calendar.ts'
import { floodEnteredWords, wettingWords } from '../../../lib/wording/flood.ts'
import { troubleWords } from '../../../lib/wording/trouble.ts'
import { personHere } from '../../_server/person.ts'
import { projectsHere } from '../../_server/project.ts'
import { servicesHere } from '../../_server/services.ts'

export interface Said {
  readonly ok: boolean
  readonly says: readonly string[]
}

const hows = Object.keys(wettingWords) as (keyof typeof wettingWords)[]

/** Every fault of the form at once; nothing is kept while there is one. */
export async function keepFlood(_before: Said | null, form: FormData): Promise<Said> {
  const person = await personHere()
  const services = await servicesHere()
  const { chosen } = await projectsHere()
  const text = (name: string) => String(form.get(name) ?? '').trim()
  const on = isoDate(text('on'))
  const how = hows.find((one) => one === text('how'))
  const boxes = form.getAll('box').map(String)
  const faults = [
    ...(person === null ? ['Say who you are first.'] : []),
    ...(on === null ? ['Give the day the water came, as 2026-11-25.'] : []),
    ...(on !== null && on > services.today() ? ['The day lies ahead. Give the day the water came.'] : []),
    ...(how === undefined ? ['Say how the water came.'] : []),
    ...(boxes.length === 0 ? ['Tick the boxes the water reached.'] : []),
  ]
  if (person === null || chosen === null || on === null || how === undefined || faults.length > 0)
    return { ok: false, says: faults }
  const flood = {
    projectId: chosen.id,
    room: text('room'),
    boxes,
    on,
    how,
    note: text('note').slice(0, 2000),
  }
  const answer = await services.enterFlood(flood, person)
  if (!answer.ok) return { ok: false, says: [troubleWords(answer.problems)] }
  revalidatePath('/', 'layout')
  return { ok: true, says: floodEnteredWords(answer.value) }
}
