import type { CannotKeep, KeepShown } from '../../../../lib/services/show-what-if-keep.ts'
import { troubleWords } from '../../../../lib/wording/trouble.ts'
import { projectsHere } from '../../../_server/project.ts'
import { servicesHere } from '../../../_server/services.ts'
import { readKeep } from '../asked-keep.ts'
import type { Answered } from '../use-answer.ts'

const answer = (said: Answered<KeepShown | CannotKeep>, status = 200) => Response.json(said, { status })

/** How much dry gel keeps a box under a limit, as the address asks. */
export async function GET(request: Request) {
  const asked = readKeep(Object.fromEntries(new URL(request.url).searchParams))
  const { chosen } = await projectsHere()
  if (chosen === null) return answer({ says: 'There is no project yet.' }, 404)
  if (asked.box === null) return answer({ says: 'Name a box.' }, 400)
  const services = await servicesHere()
  const { box, limitRhPercent, days } = asked
  const shown = await services.showKeep({ projectId: chosen.id, box, limitRhPercent, days })
  return shown.ok
    ? answer({ answer: shown.value })
    : answer({ says: keepTrouble(box, shown.problems.kind) ?? troubleWords(shown.problems) }, 409)
}

const keepTrouble = (box: string, kind: string) =>
  kind === 'missing' ? `No box is called “${box}”.` : undefined
