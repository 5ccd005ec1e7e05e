import 'server-only'
import { connection } from 'next/server'
import { notFound } from 'next/navigation'
import type { Outcome } from '../../lib/base/outcome.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import type { Trouble } from '../../lib/base/trouble.ts'
import { start, type Services } from '../../lib/start.ts'

/** The one door from the screens to the services: started once for this process, tried again after a failed start. */
const shared = globalThis as { quietmetalServices?: Promise<Services> | undefined }

export async function servicesHere(): Promise<Services> {
  // Data belongs to a request: nothing of it may be drawn when the screens are built.
  await connection()
  shared.quietmetalServices ??= start(process.cwd()).catch((fault: unknown) => {
    shared.quietmetalServices = undefined
    throw fault
  })
  return shared.quietmetalServices
}

export async function knowledgeHere(): Promise<Knowledge> {
  return (await servicesHere()).knowledge
}

/** What a page needs in order to be drawn at all. What is missing is a page that does not exist; all else is told by error.tsx. */
export async function orElsewhere<Value>(answer: Promise<Outcome<Value, Trouble>>): Promise<Value> {
  const outcome = await answer
  if (outcome.ok) return outcome.value
  if (outcome.problems.kind === 'missing') notFound()
  throw new Error(`The data could not be read: ${JSON.stringify(outcome.problems)}`)
}
