import { hazardsNoticed } from './ids.ts'
import { nameKey, slips } from './likeness.ts'
import { wordList, wordsIn, type TextWord } from './text-words.ts'

export interface HazardWord {
  readonly hazard: string
  /** As it was written, or as the word list has it. */
  readonly word: string
}

const ids: readonly string[] = hazardsNoticed
const compound = ids.filter((id) => id.includes('-'))
const betweenItems = /[;,|/\n]+/
const bearable = (id: string) => (id.length < 6 ? 1 : 2)
const slipOf = (key: string) => (id: string) => slips(key, id, bearable(id)) <= bearable(id)

/**
 * `mould` alone in a cell is the hazard; within a sentence (`mould-made`, `sharp sand`) only the word list decides. Ids of
 * several words are long enough that a slip or two cannot make one out of something else, so these count anywhere.
 */
function hazardsOfItem(item: string, inHazardField: boolean): readonly string[] {
  const key = nameKey(item)
  if (key === '') return []
  if (ids.includes(key)) return [key]
  const inside = compound.filter((id) => `-${key}-`.includes(`-${id}-`))
  if (inHazardField) inside.push(...ids.filter((id) => key.split('-').includes(id)))
  if (inside.length > 0) return inside
  return (inHazardField ? ids : compound).filter(slipOf(key))
}

const remembered = new WeakMap<readonly TextWord[], Map<string, readonly HazardWord[]>>()
const most = 20_000

/** Every hazard that a text names: by id, by a slip of an id, or by a word of the list. */
export function hazardsIn(text: string, words: readonly TextWord[], inHazardField = false): readonly HazardWord[] {
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
