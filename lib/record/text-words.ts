import { fold } from '../base/fold.ts'

/** A word in free text that must not be overlooked: "grenade" → ammunition-like; "padlock" → object kind. */
export interface TextWord {
  /** Matched as whole words, plural or not, case and accents folded. */
  readonly words: readonly string[]
  /** Phrases around a word that take its meaning away: `oyster shell` for `shell`. */
  readonly not: readonly string[]
  readonly hazard?: string
  readonly objectKind?: string
}

export interface WordHit {
  /** The word as the list has it. */
  readonly word: string
  readonly meaning: TextWord
}

interface Phrase {
  readonly tokens: readonly string[]
  readonly word: string
  readonly meaning: TextWord
  /** Takes the meaning away instead of giving it. */
  readonly denies: boolean
}

/** Phrases by their first token. */
export type WordList = ReadonlyMap<string, readonly Phrase[]>

export const tokensOf = (text: string): readonly string[] =>
  fold(text)
    .replace(/['’]s\b/g, '')
    .match(/[\p{L}\p{N}]+/gu) ?? []

const compiled = new WeakMap<readonly TextWord[], WordList>()

export function wordList(words: readonly TextWord[]): WordList {
  const known = compiled.get(words)
  if (known) return known
  const list = new Map<string, Phrase[]>()
  const put = (word: string, meaning: TextWord, denies: boolean) => {
    const tokens = tokensOf(word)
    const first = tokens[0]
    if (first === undefined) return
    const phrases = list.get(first) ?? []
    phrases.push({ tokens, word, meaning, denies })
    list.set(first, phrases)
  }
  for (const meaning of words) {
    for (const word of meaning.words) put(word, meaning, false)
    for (const word of meaning.not) put(word, meaning, true)
  }
  compiled.set(words, list)
  return list
}

/** The token itself and what it may be the plural of. */
function singulars(token: string): readonly string[] {
  if (!token.endsWith('s')) return [token]
  const forms = [token, token.slice(0, -1)]
  if (token.endsWith('es')) forms.push(token.slice(0, -2))
  if (token.endsWith('ies')) forms.push(`${token.slice(0, -3)}y`)
  return forms
}

const standsAt = (phrase: Phrase, tokens: readonly string[], at: number): boolean =>
  phrase.tokens.every((token, offset) => {
    const found = tokens[at + offset]
    return (
      found === token ||
      (found !== undefined && offset === phrase.tokens.length - 1 && singulars(found).includes(token))
    )
  })

/** Every listed word that stands in the text and is not taken back by its surroundings. */
export function wordsIn(text: string, list: WordList): readonly WordHit[] {
  const tokens = tokensOf(text)
  const found: { phrase: Phrase; from: number; to: number }[] = []
  for (let at = 0; at < tokens.length; at++) {
    for (const first of singulars(tokens[at]!)) {
      for (const phrase of list.get(first) ?? []) {
        if (standsAt(phrase, tokens, at)) found.push({ phrase, from: at, to: at + phrase.tokens.length })
      }
    }
  }
  const denied = found.filter((hit) => hit.phrase.denies)
  const told = found.filter(
    (hit) =>
      !hit.phrase.denies &&
      !denied.some((no) => no.phrase.meaning === hit.phrase.meaning && no.from < hit.to && hit.from < no.to),
  )
  return told.map(({ phrase }) => ({ word: phrase.word, meaning: phrase.meaning }))
}
