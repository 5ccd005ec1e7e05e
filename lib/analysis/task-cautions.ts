import type { Finding } from '../knowledge/flaw.ts'
import type { Base } from './base.ts'

/** A caution about a task of the store has a source that supports it, and none that stops the work rests on memory alone. */
export function taskCautions({ knowledge }: Base): Finding[] {
  return Object.values(knowledge.tasks).flatMap((task) =>
    task.cautions.flatMap(({ code, level, sources }): Finding[] => {
      const name = `${task.id}/${code}`
      const support = sources.filter(({ says }) => says === 'supports')
      const at = `task ${task.id}`
      if (support.length === 0)
        return [{ code: 'without-source', severity: 'error', at, about: { rule: name } }]
      return level === 'stop' && support.every(({ known }) => known === 'memory')
        ? [{ code: 'memory-behind-stop', severity: 'error', at, about: { task: name } }]
        : []
    }),
  )
}
