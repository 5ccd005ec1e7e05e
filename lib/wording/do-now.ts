import type { Knowledge } from '../knowledge/knowledge.ts'
import { bandWords } from './band.ts'
import { codeLabel } from './fact.ts'
import { countWords, listWords } from './list.ts'
import { urgencyWords } from './marks.ts'
import type { DoNow } from '../field/do-now.ts'

export interface DoNowLine {
  readonly key: string
  readonly name: string
  readonly says: string
}

const namedAtMost = 8

/** `TW-1, TW-2 and TW-3`; of many, the first and how many more. */
export function findsWords(finds: readonly string[]): string {
  if (finds.length <= namedAtMost) return listWords(finds)
  const more = finds.length - namedAtMost + 1
  return `${finds.slice(0, namedAtMost - 1).join(', ')} and ${countWords(more, 'other')}`
}

/** What the bag asks now, a line each; stops are not among them, they stand by themselves above. */
export function doNowLines(now: DoNow, knowledge: Knowledge): readonly DoNowLine[] {
  return [
    ...now.call.map(({ contact, who, finds }) => ({
      key: `call ${contact}`,
      name: 'Phone',
      says: `${who}, about ${findsWords(finds)}`,
    })),
    ...(now.keepWet.length === 0 ? [] : [{ key: 'wet', name: 'Keep wet', says: findsWords(now.keepWet) }]),
    ...now.pressing.map(({ urgency, finds }) => ({
      key: urgency,
      name: urgencyWords[urgency].label,
      says: findsWords(finds),
    })),
    ...now.packTogether.map(({ band, finds }, at) => ({
      key: `together ${at}`,
      name: 'Pack together',
      says: `${findsWords(finds)}: ${bandWords(band)} relative humidity`,
    })),
    ...now.keepApart.map(({ code, finds }) => ({
      key: code,
      name: codeLabel(code, knowledge),
      says: findsWords(finds),
    })),
  ]
}
