import { askable, isOpen } from '../evidence/open-matters.ts'
import { jointFor } from '../evidence/joint.ts'
import { meaningsOf, standOf, type Stand } from '../evidence/meanings.ts'
import type { Raised } from '../evidence/raised.ts'
import type { Matter } from '../knowledge/evidence.ts'
import { recordDomains } from '../knowledge/domains.ts'
import type { Cell, Knowledge } from '../knowledge/knowledge.ts'
import { stated } from '../record/fact.ts'

/**
 * Which looks could change what a find's surface is taken for: the explanation in front of a matter, or how far it is
 * decided. A look that leaves all of them as they are, whatever it shows, is not asked for.
 */
export interface Look {
  /** A field of the record, or `looked:QUESTION`. */
  readonly what: string
  readonly part: number
  readonly component: string
  /** Matters that hang on it, by how likely its answer is to change each, summed. */
  readonly change: number
  /** The answers that would change something. */
  readonly answers: readonly string[]
  /** What of the plan it could change. */
  readonly settles: readonly string[]
}

const settles = ['surface']

const differs = (now: Stand, { leader, standing }: Pick<Stand, 'leader' | 'standing'>): boolean =>
  leader !== now.leader || standing !== now.standing

/** Groups of a matter that a question to the eye can still answer. */
export const eyeGroups = (raised: Raised): readonly number[] =>
  askable(raised, ({ by, question }) => by === 'eye' && question !== null)

function looksAt(raised: Raised): readonly Look[] {
  const { matter, joint, part, component } = raised
  const now = standOf(raised.joint)
  return eyeGroups(raised).flatMap((group) => {
    const moving = meaningsOf(joint, group).filter((meaning) => differs(now, meaning))
    const change = moving.reduce((sum, { chance }) => sum + chance, 0)
    if (change === 0) return []
    const what = `looked:${matter.groups[group]!.question}`
    return [{ what, part, component, change, answers: moving.map(({ state }) => state), settles }]
  })
}

const cellsByMatter = new WeakMap<Matter, ReadonlyMap<string, ReadonlySet<string>>>()

/** What priors and groups of a matter read of the record that somebody could look at, and the answers they tell apart. */
function readsOf(matter: Matter, { vocabulary }: Knowledge): ReadonlyMap<string, ReadonlySet<string>> {
  const known = cellsByMatter.get(matter)
  if (known) return known
  const reads = new Map<string, Set<string>>()
  const cells: readonly Cell[] = [
    ...matter.rivals.flatMap(({ priors }) => priors.flatMap(({ when }) => when)),
    ...matter.groups
      .filter(({ by }) => by === 'record' || by === 'eye')
      .flatMap(({ states }) => states.flatMap(({ when }) => when)),
  ]
  for (const cell of cells) {
    if ('interval' in cell || vocabulary.fields[cell.fact]?.lookable !== true) continue
    const answers = reads.get(cell.fact) ?? new Set()
    for (const answer of 'any' in cell ? cell.any : cell.none) if (answer !== 'unknown') answers.add(answer)
    reads.set(cell.fact, answers)
  }
  cellsByMatter.set(matter, reads)
  return reads
}

/** Facts of the record itself, such as the burial ground, that nobody has stated yet. */
function factsFor(raised: Raised, knowledge: Knowledge): readonly Look[] {
  const { matter, lookup, part, component } = raised
  const now = standOf(raised.joint)
  return [...readsOf(matter, knowledge)].flatMap(([what, answers]) => {
    if (recordDomains[what] === undefined || lookup(what) !== undefined) return []
    const moving = [...answers].filter((answer) => {
      const fact = stated(answer)
      const joint = jointFor(matter, knowledge, (name) => (name === what ? fact : lookup(name)))
      return differs(now, standOf(joint))
    })
    if (moving.length === 0) return []
    const all = knowledge.vocabulary.fields[what]!.values.length
    return [{ what, part, component, change: moving.length / all, answers: moving, settles }]
  })
}

/** Every look that could change a matter that is raised, the likeliest to change something first. */
export function looksThatChange(raised: readonly Raised[], knowledge: Knowledge): readonly Look[] {
  const found = new Map<string, Look>()
  for (const one of raised.filter(isOpen)) {
    for (const look of [...looksAt(one), ...factsFor(one, knowledge)]) {
      const find = recordDomains[look.what]?.each === 'find'
      const key = `${find ? '' : look.part} ${look.what}`
      const before = found.get(key)
      found.set(key, {
        ...look,
        change: look.change + (before?.change ?? 0),
        answers: [...new Set([...(before?.answers ?? []), ...look.answers])],
      })
    }
  }
  return [...found.values()].toSorted((a, b) => b.change - a.change)
}
