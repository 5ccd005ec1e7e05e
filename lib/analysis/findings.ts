import type { Finding, Flaw, Place } from '../knowledge/flaw.ts'
import { absentSide } from './absent-side.ts'
import { answersNeverGiven } from './answers-never-given.ts'
import type { Base, Check } from './base.ts'
import { conflicts } from './conflicts.ts'
import { examplesHold, type Decide } from './examples.ts'
import { factsOfDecision } from './facts-of-decision.ts'
import { fixedAnswers } from './fixed-answers.ts'
import { gaps } from './gaps.ts'
import { memoryBehindMust } from './memory-behind-must.ts'
import { memoryRelaxes } from './memory-relaxes.ts'
import { silentRules } from './silent-rules.ts'
import { stopsUnread } from './stops-unread.ts'
import { taskCautions } from './task-cautions.ts'
import { uncovered } from './uncovered.ts'
import { unusedFigures, unusedWorks } from './unused.ts'
import { vocabularyAgrees } from './vocabulary.ts'
import { withoutSource } from './without-source.ts'
import { wordsWithoutCode } from './words-without-code.ts'

/** Every check there is; each stands alone and knows nothing of the others. */
const checks: readonly Check[] = [
  withoutSource,
  memoryBehindMust,
  memoryRelaxes,
  taskCautions,
  unusedFigures,
  unusedWorks,
  vocabularyAgrees,
  wordsWithoutCode,
  factsOfDecision,
  fixedAnswers,
  answersNeverGiven,
  absentSide,
  stopsUnread,
  silentRules,
  conflicts,
  uncovered,
  gaps,
]

export function findings(base: Base, decide: Decide): readonly Finding[] {
  return [...checks, examplesHold(decide)].flatMap((check) => check(base))
}

/** The findings at the lines they are about. */
export function located(found: readonly Finding[], places: ReadonlyMap<string, Place>): Flaw[] {
  return found.map(({ at, ...finding }) => {
    const { file, line } = places.get(at) ?? { file: 'content', line: 1 }
    return { ...finding, file, line }
  })
}
