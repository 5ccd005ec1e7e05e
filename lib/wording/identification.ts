import type { IsoDate } from '../base/calendar.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { dayWords } from './day.ts'
import { explanationName, likelyWords } from './interpretation.ts'

/** Somebody judged from all that is known; nothing was measured. */
export const judgedWords = 'Judged from all that is known'

const noneOfThese = 'none-of-these'

export const noneOfTheseWords = 'none of the explanations listed'

export const methodWords = (method: string, knowledge: Knowledge): string =>
  method === '' ? judgedWords : (knowledge.methods[method]?.label ?? method)

/** What something was found to be, within a sentence. */
export const foundWords = (interpretation: string, knowledge: Knowledge): string =>
  interpretation === noneOfThese ? noneOfTheseWords : explanationName(interpretation, knowledge)

interface Noted {
  readonly component: string
  readonly method: string
  readonly on: IsoDate
  readonly byWhom: string
  readonly reference: string
  readonly words: string
  readonly report: readonly string[]
}

const oneLine = (text: string) => text.replaceAll(/\s+/g, ' ').trim()

/** Where a result came from, as a line among the notes of the record that holds it. */
export function resultNote(
  { component, method, on, byWhom, reference, words, report }: Noted,
  severalParts: boolean,
  knowledge: Knowledge,
): string {
  const whose = severalParts ? ` of ${component}` : ''
  const from = [byWhom, reference, dayWords(on)].map(oneLine).filter((text) => text !== '')
  const said = report.length === 0 ? '' : ` (${report.join('; ')})`
  const more = oneLine(words) === '' ? '' : `: ${oneLine(words)}`
  return `${methodWords(method, knowledge)}${whose}, ${from.join(', ')}${said}${more}`
}

interface Guess {
  readonly interpretation: string
  readonly probability: number
  readonly range: readonly [low: number, high: number]
}

/** What was thought, the likeliest first; what could hardly be is left to the table. */
export function thoughtLines(rivals: readonly Guess[], knowledge: Knowledge): readonly string[] {
  return rivals
    .toSorted((a, b) => b.probability - a.probability)
    .map(
      ({ interpretation, probability, range }) =>
        `${explanationName(interpretation, knowledge)}, ${likelyWords(probability, range)}`,
    )
}

/** Likely enough to be named in a sentence. A house rule. */
const named = 0.1

/** The same in one sentence: `Before, it was thought: tinning, about 6 in 10 (4 to 8); silvering, …`. */
export function beforeWords(rivals: readonly Guess[], knowledge: Knowledge): string {
  const likely = rivals.filter(({ probability }) => probability >= named)
  return `Before, it was thought: ${thoughtLines(likely, knowledge).join('; ')}.`
}

interface Told {
  readonly method: string
  readonly on: IsoDate
  readonly byWhom: string
  readonly reference: string
}

/** How it became known, in a line: `X-ray fluorescence, The laboratory, R 7, 20 November 2026`. */
export const sourceWords = ({ method, on, byWhom, reference }: Told, knowledge: Knowledge): string =>
  [methodWords(method, knowledge), byWhom, reference, dayWords(on)].filter((text) => text !== '').join(', ')

/** Whether what was found stood in front before, in a sentence; the tool is told off as plainly as it is praised. */
export function heldWords(interpretation: string, rivals: readonly Guess[]): string {
  const first = rivals.toSorted((a, b) => b.probability - a.probability)[0]
  if (interpretation === noneOfThese)
    return 'Nobody had it among the explanations: the evidence base needs another look.'
  const was = rivals.find((one) => one.interpretation === interpretation)
  if (first === undefined || was === undefined)
    return 'It is not among the explanations that were weighed then.'
  if (first === was) return 'It stood in front before.'
  return `Something else stood in front before; this was put at ${likelyWords(was.probability, was.range)}.`
}
