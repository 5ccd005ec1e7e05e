import { weigh } from '../../lib/evidence/weigh.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'
import { calibration, manyStated, shareHeld, type Decile } from '../simulated/evidence-finds.ts'

const findsEach = 500

export interface EvidenceFigures {
  readonly matters: number
  readonly findsEach: number
  readonly held: { readonly share: number; readonly cases: number }
  /** The matter whose ranges hold least often, and the one where they hold most often. */
  readonly least: { readonly matter: string; readonly share: number }
  readonly most: { readonly matter: string; readonly share: number }
  readonly deciles: readonly Decile[]
  /** To weigh one find with three matters, best of many batches. */
  readonly weighMilliseconds: number
}

function weighing(): number {
  const facts = factsOf(
    record({ burial: ['waterlogged'], state_now: 'dry' }, {
      material: 'copper-alloy',
      evidence: ['white-metal-sheen', 'gold-coloured-film'],
      seen: ['pale-green-powder'],
      tests: ['xrf:Cu+Sn'],
    } as never),
    knowledge.vocabulary.textWords,
    today,
  )
  const batch = (times: number): number => {
    const from = performance.now()
    for (let at = 0; at < times; at++) weigh(facts, knowledge)
    return (performance.now() - from) / times
  }
  batch(2000)
  return Math.min(...Array.from({ length: 20 }, () => batch(200)))
}

/** Finds drawn from the evidence base itself: whether stated ranges hold, and whether what is called likely is likely. */
export function evidenceFigures(): EvidenceFigures {
  const weighMilliseconds = weighing()
  const each = Object.values(knowledge.matters).map((matter) => ({
    matter: matter.id,
    stated: manyStated(matter, knowledge, findsEach, 7),
  }))
  const shares = each
    .map(({ matter, stated }) => ({ matter, share: shareHeld(stated).share }))
    .sort((a, b) => a.share - b.share)
  const all = each.flatMap(({ stated }) => stated)
  return {
    matters: each.length,
    findsEach,
    held: shareHeld(all),
    least: shares[0]!,
    most: shares.at(-1)!,
    deciles: calibration(all),
    weighMilliseconds,
  }
}
