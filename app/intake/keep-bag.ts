'use server'

import { revalidatePath } from 'next/cache'
import { RowReader, type TypedRow } from '../../lib/field/rows.ts'
import { fields, type FieldName } from '../../lib/record/fields.ts'
import { troubleWords } from '../../lib/wording/trouble.ts'
import { personHere } from '../_server/person.ts'
import { projectsHere } from '../_server/project.ts'
import { servicesHere } from '../_server/services.ts'

export type BagKept =
  | {
      readonly ok: true
      readonly finds: readonly { readonly id: string; readonly findNumber: string }[]
      readonly added: number
      readonly alreadyThere: number
      readonly keptRows: readonly string[]
    }
  | { readonly ok: false; readonly says: string }

const mostRows = 5000
const longestCell = 10_000

/** What a browser sends is read again here, by the same reader: nothing is kept that was not understood on this side too. */
export async function keepBag(sent: unknown): Promise<BagKept> {
  const person = await personHere()
  if (person === null) return { ok: false, says: 'Say who you are first: every record carries who wrote it.' }
  const rows = readSent(sent)
  if (rows === null)
    return {
      ok: false,
      says: 'The rows could not be taken over. Reload the page; nothing is lost on this device.',
    }
  const services = await servicesHere()
  const read = new RowReader(services.knowledge).rows(rows)
  const kept = rows.filter(({ id }) => read.get(id)?.record)
  const records = [...new Set(kept.flatMap(({ id }) => read.get(id)?.record ?? []))]
  if (records.length === 0) return { ok: false, says: 'No row has both a find number and a material yet.' }
  const { chosen } = await projectsHere()
  const project = chosen ?? (await begun(person))
  if (project === null)
    return { ok: false, says: 'A project could not be begun. Nothing was kept; your rows are still here.' }
  const answer = await services.addRecords({ projectId: project.id, records }, person)
  if (!answer.ok) return { ok: false, says: troubleWords(answer.problems) }
  revalidatePath('/', 'layout')
  return { ok: true, ...answer.value, keptRows: kept.map(({ id }) => id) }
}

async function begun(person: NonNullable<Awaited<ReturnType<typeof personHere>>>) {
  const services = await servicesHere()
  const answer = await services.startProject({ name: 'First project' }, person)
  return answer.ok ? answer.value : null
}

function readSent(sent: unknown): readonly TypedRow[] | null {
  if (!Array.isArray(sent) || sent.length > mostRows) return null
  const rows = sent.map((row: unknown) => readSentRow(row))
  return rows.every((row) => row !== null) ? rows : null
}

function readSentRow(row: unknown): TypedRow | null {
  if (typeof row !== 'object' || row === null) return null
  const { id, cells } = row as Record<string, unknown>
  if (typeof id !== 'string' || typeof cells !== 'object' || cells === null) return null
  const texts: Partial<Record<FieldName, string>> = {}
  for (const [field, text] of Object.entries(cells)) {
    if (!Object.hasOwn(fields, field) || typeof text !== 'string' || text.length > longestCell) return null
    texts[field as FieldName] = text
  }
  return { id, cells: texts }
}
