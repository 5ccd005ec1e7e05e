import { revalidatePath } from 'next/cache'
import { troubleWords } from '../../../../../lib/wording/trouble.ts'
import { servicesHere } from '../../../../_server/services.ts'
import type { LogAnswer } from '../log-answer.ts'
import { receivedLog } from '../received-log.ts'

const answer = (said: LogAnswer, status = 200) => Response.json(said, { status })

/** Keeps the file as it came, and its readings under their loggers; the same file again changes nothing. */
export async function POST(request: Request) {
  const received = await receivedLog(request)
  if (!received.ok) return answer({ says: received.says }, 400)
  const services = await servicesHere()
  const kept = await services.keepLog(received.log, received.by)
  if (!kept.ok) return answer({ says: troubleWords(kept.problems) }, 409)
  revalidatePath('/store', 'layout')
  return answer({ kept: kept.value })
}
