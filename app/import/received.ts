import { personHere, type Person } from '../_server/person.ts'
import { servicesHere } from '../_server/services.ts'
import { troubleWords } from '../../lib/wording/trouble.ts'

export type Received =
  | {
      readonly ok: true
      /** Null: the project is yet to be begun, under this name. */
      readonly projectId: string | null
      readonly name: string
      readonly fileName: string
      readonly bytes: Uint8Array
      readonly by: Person
    }
  | { readonly ok: false; readonly says: string }

const largestBytes = 200 * 1024 * 1024

/** The file somebody chose, for the project they chose or named anew; nothing is kept of it yet. */
export async function received(request: Request): Promise<Received> {
  if (request.headers.get('sec-fetch-site') === 'cross-site')
    return { ok: false, says: 'Files are taken from this tool’s own pages only.' }
  const by = await personHere()
  if (by === null) return { ok: false, says: 'Say who you are first: every record carries who wrote it.' }
  const form = await request.formData()
  const file = form.get('file')
  if (!(file instanceof File)) return { ok: false, says: 'Choose a file first.' }
  if (file.size > largestBytes) {
    return {
      ok: false,
      says: 'The file is larger than 200 MB. Import it by the command line, which reads it piece by piece.',
    }
  }
  const services = await servicesHere()
  const chosen = String(form.get('project') ?? '')
  const name = String(form.get('name') ?? '')
  const given = {
    name,
    fileName: file.name.slice(0, 200),
    bytes: new Uint8Array(await file.arrayBuffer()),
    by,
  }
  if (chosen !== '') return { ok: true, projectId: chosen, ...given }
  const known = await services.findProject({ name })
  if (!known.ok) return { ok: false, says: troubleWords(known.problems) }
  return { ok: true, projectId: known.value?.id ?? null, ...given }
}
