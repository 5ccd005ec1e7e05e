import { hazardsNoticed } from './ids.ts'
import { bearable, nameKey, slips } from './likeness.ts'
import { wordList, wordsIn, type TextWord } from './text-words.ts'

export interface HazardWord {
  readonly hazard: string
  /** As it was written, or as the word list has it. */
  readonly word: string
}

const ids: readonly string[] = hazardsNoticed
const compound = ids.filter((id) => id.includes('-'))
const betweenItems = /[;,|/\n]+/

/** How often each letter stands in a word: two words that differ in many letters need not be compared further. */
function letterCounts(word: string): Int8Array {
  const counts = new Int8Array(27)
  for (let at = 0; at < word.length; at++) {
    const letter = word.charCodeAt(at) - 97
    counts[letter >= 0 && letter < 26 ? letter : 26]!++
  }
  return counts
}

const countsOfIds = new Map(ids.map((id) => [id, letterCounts(id)]))

/** Ids that the word is no more than `most` slips away from. */
function slipsOf(key: string, among: readonly string[], most: number): readonly string[] {
  const counts = letterCounts(key)
  return among.filter((id) => {
    if (Math.abs(id.length - key.length) > most) return false
    const own = countsOfIds.get(id)!
    let apart = 0
    for (let letter = 0; letter < 27; letter++) apart += Math.abs(own[letter]! - counts[letter]!)
    return apart <= 2 * most && slips(key, id, most) <= most
  })
}

const anywhere = new RegExp(`(?<![^-])(?:${compound.join('|')})(?![^-])`, 'g')
const shortest = Math.min(...compound.map((id) => id.length)) - 2

/**
 * `mould` alone in a cell is the hazard; within a sentence (`mould-made`, `sharp sand`) only the word list decides. Ids of
 * several words are long enough that a slip or two cannot make one out of something else, so these count anywhere.
 */
function hazardsOfItem(item: string, inHazardField: boolean): readonly string[] {
  const key = nameKey(item)
  if (key === '') return []
  if (ids.includes(key)) return [key]
  if (!inHazardField && key.length < shortest) return []
  const inside: string[] = key.match(anywhere) ?? []
  // Where hazards are asked for, a lost semicolon or hyphen hides none.
  if (inHazardField)
    inside.push(...ids.filter((id) => key.replaceAll('-', '').includes(id.replaceAll('-', ''))))
  if (inside.length > 0) return inside
  // Where hazards are asked for, whatever is close enough to be suggested counts.
  return inHazardField ? slipsOf(key, ids, Math.max(1, bearable(key))) : slipsOf(key, compound, 2)
}

const remembered = new WeakMap<readonly TextWord[], Map<string, readonly HazardWord[]>>()
const most = 20_000

/** Every hazard that a text names: by id, by a slip of an id, or by a word of the list. */
export function hazardsIn(
  text: string,
  words: readonly TextWord[],
  inHazardField = false,
): readonly HazardWord[] {
  let memory = remembered.get(words)
  if (!memory || memory.size > most) remembered.set(words, (memory = new Map()))
  const key = `${inHazardField ? '!' : ' '}${text}`
  const known = memory.get(key)
  if (known) return known
  const found = new Map<string, string>()
  for (const item of text.split(betweenItems)) {
    for (const hazard of hazardsOfItem(item, inHazardField)) found.set(hazard, item.trim())
  }
  for (const { word, meaning } of wordsIn(text, wordList(words))) {
    if (meaning.hazard && !found.has(meaning.hazard)) found.set(meaning.hazard, word)
  }
  const hazards = [...found].map(([hazard, word]) => ({ hazard, word }))
  memory.set(key, hazards)
  return hazards
}

const denied = /^(?:no|n|none|nil|false|0|absent|not seen|unknown|[-–—?]*)$/i

/** A hazard that has a column of its own, as a list to be ticked has: named by the heading, told by anything but a no. */
export function hazardOfColumn(heading: string, value: unknown): readonly HazardWord[] {
  if (value === false || value === null || (typeof value !== 'object' && denied.test(String(value).trim())))
    return []
  return hazardsIn(heading, noWords)
}

const noWords: readonly TextWord[] = []
