import { revalidatePath } from 'next/cache'
import { troubleWords } from '../../../lib/wording/trouble.ts'
import type { Person } from '../../_server/person.ts'
import { chooseProjectHere } from '../../_server/project.ts'
import { servicesHere } from '../../_server/services.ts'
import { received } from '../received.ts'
import type { ImportLine } from '../import-line.ts'
import { summaryOf } from '../summary.ts'

/** The project begun under this name, or why it cannot be. */
async function begun(name: string, by: Person): Promise<string | { readonly says: string }> {
  const services = await servicesHere()
  const project = await services.startProject({ name }, by)
  return project.ok ? project.value.id : { says: troubleWords(project.problems) }
}

/** Imports the file and tells how far it is, a line of JSON at a time; the last line is the result. */
export async function POST(request: Request) {
  const file = await received(request)
  if (!file.ok) return Response.json({ says: file.says }, { status: 400 })
  const { by, name, fileName, bytes } = file
  const services = await servicesHere()
  const project = file.projectId ?? (await begun(name, by))
  if (typeof project !== 'string') return Response.json(project, { status: 409 })
  const text = new TextEncoder()
  const body = new ReadableStream<Uint8Array>({
    async start(lines) {
      const tell = (line: ImportLine) => lines.enqueue(text.encode(`${JSON.stringify(line)}\n`))
      const onProgress = async (done: number, total: number) => {
        tell({ done, total })
        // Lets the line leave before the next stretch is kept.
        await new Promise((resolve) => setImmediate(resolve))
      }
      try {
        const answer = await services.importFile(
          { projectId: project, fileName, bytes, dryRun: false, onProgress },
          by,
        )
        if (answer.ok) tell({ summary: summaryOf(answer.value, project, services.knowledge) })
        else tell({ says: troubleWords(answer.problems) })
      } catch {
        tell({
          says: 'The import broke off through a fault of ours. Nothing of the file was kept; try again.',
        })
      }
      lines.close()
    },
  })
  revalidatePath('/', 'layout')
  // What was just imported is what one wants to look at next.
  await chooseProjectHere(project)
  return new Response(body, {
    headers: { 'content-type': 'application/x-ndjson; charset=utf-8', 'cache-control': 'no-store' },
  })
}
