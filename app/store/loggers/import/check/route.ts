import { troubleWords } from '../../../../../lib/wording/trouble.ts'
import { servicesHere } from '../../../../_server/services.ts'
import type { LogAnswer } from '../log-answer.ts'
import { receivedLog } from '../received-log.ts'

const answer = (said: LogAnswer, status = 200) => Response.json(said, { status })

/** What this file would bring, and where it would land; nothing of it is kept. */
export async function POST(request: Request) {
  const received = await receivedLog(request)
  if (!received.ok) return answer({ says: received.says }, 400)
  const services = await servicesHere()
  const read = await services.readLogFile(received.log)
  return read.ok ? answer({ read: read.value }) : answer({ says: troubleWords(read.problems) }, 409)
}
