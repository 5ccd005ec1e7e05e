import type { Finding, Flaw, Place } from '../knowledge/flaw.ts'
import type { Looks } from '../record/looks.ts'
import { absentSide } from './absent-side.ts'
import { answersNeverGiven } from './answers-never-given.ts'
import type { Base, Check } from './base.ts'
import { conflicts } from './conflicts.ts'
import { countedTwice } from './counted-twice.ts'
import { evidenceUnexplained, matterSize } from './evidence-covers.ts'
import { gradesWithoutSource, memoryRulesOut } from './evidence-sources.ts'
import { examplesHold, type Decide } from './examples.ts'
import { factsOfDecision } from './facts-of-decision.ts'
import { fixedAnswers } from './fixed-answers.ts'
import { gaps } from './gaps.ts'
import { memoryBehindMust } from './memory-behind-must.ts'
import { memoryRelaxes } from './memory-relaxes.ts'
import { negativeClears } from './negative-clears.ts'
import { looksAgree, questionsUnused } from './questions-asked.ts'
import { silentRules } from './silent-rules.ts'
import { stopsUnread } from './stops-unread.ts'
import { taskCautions } from './task-cautions.ts'
import { tellsApart } from './tells-apart.ts'
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
  gradesWithoutSource,
  memoryRulesOut,
  negativeClears,
  countedTwice,
  tellsApart,
  evidenceUnexplained,
  matterSize,
  questionsUnused,
]

/** `looks`: the questions that the record takes. */
export function findings(base: Base, decide: Decide, looks: Looks): readonly Finding[] {
  return [...checks, examplesHold(decide), looksAgree(looks)].flatMap((check) => check(base))
}

/** The findings at the lines they are about. */
export function located(found: readonly Finding[], places: ReadonlyMap<string, Place>): Flaw[] {
  return found.map(({ at, ...finding }) => {
    const { file, line } = places.get(at) ?? { file: 'content', line: 1 }
    return { ...finding, file, line }
  })
}
