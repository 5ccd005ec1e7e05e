import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { Logger } from './loggers.ts'
import type { World } from './ports.ts'

/** The register of loggers, without their readings. */
export function listLoggers({ store }: World, projectId: string): Answer<readonly Logger[]> {
  return store.read(async (reads) =>
    (await reads.projects.byId(projectId))
      ? given(await reads.loggers.ofProject(projectId))
      : refused(missing('project', projectId)),
  )
}
