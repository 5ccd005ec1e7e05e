import type { WhatIfShown } from '../../../../lib/services/show-what-if.ts'
import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { projectsHere } from '../../../_server/project.ts'
import { servicesHere } from '../../../_server/services.ts'
import { readChange, typedOf } from '../asked-change.ts'
import type { Answered } from '../use-answer.ts'

const answer = (said: Answered<WhatIfShown>, status = 200) => Response.json(said, { status })

/** What a change would buy, as the address asks. */
export async function GET(request: Request) {
  const words = Object.fromEntries(new URL(request.url).searchParams)
  const { chosen } = await projectsHere()
  if (chosen === null) return answer({ says: 'There is no project yet.' }, 404)
  const services = await servicesHere()
  const shown = await services.showWhatIf({
    projectId: chosen.id,
    box: words['box'],
    room: words['room'],
    change: readChange(typedOf(words)).change,
  })
  return shown.ok ? answer({ answer: shown.value }) : answer({ says: troubleWords(shown.problems) }, 409)
}
