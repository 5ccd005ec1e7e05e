import type { Harm, Method } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'
import { questionsOf } from './ask.ts'
import type { EvidenceBase } from './base.ts'
import type { Raised } from './raised.ts'
import type { EvidenceRequest, Unranked } from './requests.ts'

/**
 * The order in which requests are made. First what must come first, whatever it tells: the sample for a luminescence date
 * that is wanted, since rays spoil it, and the radiograph of iron, before anybody cleans. Then what takes no sample, the
 * most telling first, then samples. A sample goes ahead of all looking only where it would tell many times as much as the
 * best look there is, and then only if a conservator agrees.
 */

/** How many times as much a sample must tell. A house rule: what is taken off does not grow back. */
export const sampleTellsTimes = 3

const harms: readonly Harm[] = ['none', 'touches', 'loose-powder', 'micro-sample', 'cut']
const ferrous: readonly string[] = ['iron', 'cast-iron', 'steel']

export const datingWanted = (facts: RecordFacts): boolean =>
  facts.find['needed_for']?.has.includes('luminescence-dating') === true

/** May be iron: said so, or a metal that nobody could name. */
function mayBeIron(facts: RecordFacts, part: number): boolean {
  const material = facts.components[part]!.facts['material']
  if (material === undefined || material.may === 'any') return true
  return [...material.has, ...material.may].some(
    (one) => ferrous.includes(one) || one === 'metal-unidentified',
  )
}

export const rays = ({ cautions }: Method) => cautions.some(({ code }) => code === 'ionising-radiation')

/** The most that any look tells of each part: a question to the eye, or a method that takes no sample. */
function bestLook(
  requests: readonly Unranked[],
  raised: readonly Raised[],
  base: EvidenceBase,
): ReadonlyMap<number, number> {
  const best = new Map<number, number>()
  const looks = [...requests.filter(({ sampling }) => !sampling), ...questionsOf(raised, base)]
  for (const { part, gainBits } of looks) best.set(part, Math.max(best.get(part) ?? 0, gainBits))
  return best
}

/** To be put in order; `must`: something outside of the evidence asks for it without fail. */
export type Placeable = Unranked & { readonly must?: boolean }

export function ranked(
  requests: readonly Placeable[],
  raised: readonly Raised[],
  facts: RecordFacts,
  base: EvidenceBase,
): readonly EvidenceRequest[] {
  const wanted = datingWanted(facts)
  const best = bestLook(requests, raised, base)
  const placed = requests.map((request) => {
    const method = base.methods[request.method]!
    const exceeding =
      request.sampling &&
      request.gainBits > 0 &&
      request.gainBits >= sampleTellsTimes * (best.get(request.part) ?? 0)
    const dating = wanted && method.kind === 'dating'
    const iron = request.method === 'x-radiography' && mayBeIron(facts, request.part)
    const first = iron || (request.must === true && !request.sampling)
    const tier = dating ? 0 : first ? 1 : exceeding ? 2 : request.sampling ? 4 : 3
    return {
      request: {
        ...request,
        ifConservatorAgrees: tier === 2,
        afterDating: wanted && !request.sampling && rays(method),
      },
      tier,
      order: method.order,
    }
  })
  placed.sort(
    (a, b) =>
      a.tier - b.tier ||
      b.request.gainBits - a.request.gainBits ||
      harms.indexOf(a.request.harm) - harms.indexOf(b.request.harm) ||
      a.order - b.order,
  )
  return placed.map(({ request }, at) => ({ ...request, rank: at + 1 }))
}
