import type { Finding } from '../knowledge/flaw.ts'
import { evidence } from '../record/ids.ts'
import type { Base } from './base.ts'
import { eachMatter } from './evidence-parts.ts'

/** Every trace that the record can name raises some matter. Content without any evidence base has nothing to cover. */
export function evidenceUnexplained({ knowledge }: Base): Finding[] {
  const matters = eachMatter(knowledge)
  if (matters.length === 0) return []
  const raised = new Set(
    matters.flatMap(({ about }) => about.flatMap(({ field, value }) => (field === 'evidence' ? value : []))),
  )
  return evidence
    .filter((id) => !raised.has(id))
    .map((id): Finding => ({
      code: 'evidence-unexplained',
      severity: 'error',
      at: `value evidence/${id}`,
      about: { evidence: id },
    }))
}

const rivalsWanted = [3, 7] as const
const groupsWanted = [3, 13] as const

/** A matter that a person can take in: not so few rivals that nothing is weighed, not so many that nobody reads them. */
export function matterSize({ knowledge }: Base): Finding[] {
  return eachMatter(knowledge).flatMap(({ id, rivals, groups }) => {
    const sizes = [
      { part: 'rivals' as const, count: rivals.length, wants: rivalsWanted },
      { part: 'groups' as const, count: groups.length, wants: groupsWanted },
    ]
    return sizes
      .filter(({ count, wants }) => count < wants[0] || count > wants[1])
      .map(({ part, count, wants }): Finding => ({
        code: 'matter-size',
        severity: 'warning',
        at: `matter ${id}`,
        about: { matter: id, part, count, least: wants[0], most: wants[1] },
      }))
  })
}
