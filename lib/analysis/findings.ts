import type { Finding, Flaw, Place } from '../knowledge/flaw.ts'
import type { Base, Check } from './base.ts'
import { factsOfDecision } from './facts-of-decision.ts'
import { memoryBehindMust } from './memory-behind-must.ts'
import { unusedFigures, unusedWorks } from './unused.ts'
import { withoutSource } from './without-source.ts'
import { codesWithoutWords, wordsWithoutCode } from './words.ts'

/** Every check there is; each stands alone and knows nothing of the others. */
const checks: readonly Check[] = [
  withoutSource,
  memoryBehindMust,
  unusedFigures,
  unusedWorks,
  factsOfDecision,
  codesWithoutWords,
  wordsWithoutCode,
]

export function findings(base: Base): readonly Finding[] {
  return checks.flatMap((check) => check(base))
}

/** The findings at the lines they are about. */
export function located(found: readonly Finding[], places: ReadonlyMap<string, Place>): Flaw[] {
  return found.map(({ at, ...finding }) => {
    const { file, line } = places.get(at) ?? { file: 'content', line: 1 }
    return { ...finding, file, line } as Flaw
  })
}
