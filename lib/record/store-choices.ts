import { closest, nameKey } from './likeness.ts'
import { boxKinds } from './places.ts'
import {
  couponMetals,
  couponMethods,
  diaryKinds,
  floodCauses,
  lidsSeen,
  moves,
  type DiaryKind,
} from './store-diary.ts'
import { lidStates } from './store-rounds.ts'

type Words = Readonly<Record<string, readonly string[]>>

const noWords: Words = {}

/** Looser words for a lid, as people write them on a round. */
const lidWords: Words = {
  seated: ['yes', 'y', 'ok', 'closed', 'shut', 'on', 'tight', 'fits', 'true', '1'],
  'not-seated': ['no', 'n', 'open', 'loose', 'off', 'ajar', 'lifted', 'unseated', 'not closed', 'false', '0'],
}
const lidSeenWords: Words = {
  ...lidWords,
  'not-seated': lidWords['not-seated']!.filter((word) => word !== 'open'),
}

const events: readonly DiaryKind[] = diaryKinds.filter((kind) => kind !== 'round')

interface Choice {
  readonly ids: readonly string[]
  readonly words: Words
}

/** Columns of the store's tables that take one of few words; the lid of a round and that of an entry differ. */
const choices: Readonly<Record<string, Choice>> = {
  'boxes.kind': { ids: boxKinds, words: { tub: ['water tub'], 'barrier-pack': ['pack', 'barrier bag'] } },
  'rounds.lid': { ids: [...lidStates, 'unknown'], words: lidWords },
  'diary.event': { ids: events, words: { moved: ['move'], 'gel-change': ['gel changed', 'gel'] } },
  'diary.lid': { ids: lidsSeen, words: lidSeenWords },
  'diary.move': { ids: moves, words: { out: ['taken out'], back: ['brought back', 'returned'] } },
  'diary.cause': { ids: floodCauses, words: noWords },
  'diary.metal': {
    ids: couponMetals,
    words: { silver: ['Ag'], copper: ['Cu'], steel: ['iron', 'Fe'], zinc: ['Zn'], lead: ['Pb'] },
  },
  'diary.method': { ids: couponMethods, words: { 'mass-gain': ['gain'], 'mass-loss': ['loss'] } },
}

export type StoreChoice =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly suggestion: string | null }

/** The word of the list that is meant; null where the column takes any text. */
export function readStoreChoice(table: string, column: string, text: string): StoreChoice | null {
  const choice = choices[`${table}.${column}`]
  if (choice === undefined) return null
  const key = nameKey(text)
  const named = choice.ids.flatMap((id) =>
    [id, ...(choice.words[id] ?? [])].map((word) => ({ key: nameKey(word), id })),
  )
  const meant = named.find((one) => one.key === key)
  if (meant) return { ok: true, id: meant.id }
  return { ok: false, suggestion: closest(key, named)?.id ?? null }
}
