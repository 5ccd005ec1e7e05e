import type { MeaningAnswer, MeaningReason } from '../boxes/excursion-meaning.ts'
import { numberWords } from './band.ts'
import { countWords, listWords } from './list.ts'
import { chanceWords } from './logger-limits.ts'

/** What an excursion asks of a person. */
export const meaningWords: Readonly<Record<MeaningAnswer, string>> = {
  none: 'stayed within what it bears',
  noted: 'noted, nothing to do now',
  'look-soon': 'look at it soon',
  'look-now': 'look at it now',
}

/** Why, for one find: the level it is about, how sure, and which parts. */
export function meaningReasonWords({
  because,
  levelRhPercent,
  chance,
  withinDays,
  components,
}: MeaningReason): string {
  const level = levelRhPercent === null ? '' : `${numberWords(levelRhPercent)} %`
  const parts = components.length === 0 ? '' : ` (${listWords(components)})`
  const within =
    withinDays === null ? '' : `, somebody should be there within ${countWords(withinDays, 'day')}`
  const sure =
    chance === null || chance >= 0.95
      ? ''
      : `; with the error of the sensor ${chanceWords(chance)} that it really was`
  return `${reasonWords[because](level)}${parts}${within}${sure}`
}

const reasonWords: Readonly<Record<MeaningReason['because'], (level: string) => string>> = {
  act: (level) => `${level} was passed, at which somebody is wanted`,
  'act-overdue': (level) => `${level} was passed for longer than there is time to act`,
  'act-perhaps': (level) => `${level}, at which somebody is wanted, may have been passed`,
  'limit-without-act': (level) => `its limit of ${level} was passed`,
  limit: (level) => `its limit of ${level} was passed, and no level at which somebody is wanted`,
  'limit-long': (level) => `its limit of ${level} was passed for longer than between two looks`,
  'limit-perhaps': (level) => `its limit of ${level} may have been passed`,
  'holding-band': (level) => `it left the band, to ${level}, in which it waits for a conservator`,
  'holding-band-perhaps': (level) =>
    `it may have left the band, to ${level}, in which it waits for a conservator`,
  preference: (level) => `within its limits, past the ${level} that would be better`,
  'only-from-memory': () =>
    'within its limits, which are known from memory alone: nobody can say that it was well',
  'no-limit-known': () => 'nothing is known of what a part of it bears',
  'kept-wet': () => 'it is kept in water, and dry air says that the water may be gone',
}
