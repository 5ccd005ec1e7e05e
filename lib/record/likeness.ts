import { fold } from '../base/fold.ts'

/** What is left of a heading, id or label when spelling habits are taken away: `Stored RH (%)` → `stored-rh-percent`. */
export function nameKey(text: string): string {
  return fold(text)
    .replace(/%/g, ' percent ')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
}

/** How many slips of the finger lie between two words (a letter missing, added, changed, or two swapped); beyond `most`, one more than it. */
export function slips(a: string, b: string, most: number): number {
  if (a === b) return 0
  if (Math.abs(a.length - b.length) > most) return most + 1
  let older: number[] = []
  let row = Array.from({ length: b.length + 1 }, (_, at) => at)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      let least = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (same ? 0 : 1))
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, older[j - 2]! + 1)
      next.push(least)
    }
    if (Math.min(...next) > most) return most + 1
    older = row
    row = next
  }
  return Math.min(row[b.length]!, most + 1)
}

/** As many slips as a word of this length can bear and still be known again. */
export const bearable = (word: string): number =>
  word.length < 4 ? 0 : word.length < 8 ? 1 : word.length < 14 ? 2 : 3

/** The likeliest of `names` that `key` was meant to be, or null. Equal slips: the one named first. */
export function closest<Name extends { readonly key: string }>(
  key: string,
  names: readonly Name[],
): Name | null {
  const most = bearable(key)
  let best: Name | null = null
  let least = most + 1
  for (const name of names) {
    const distance = slips(key, name.key, least - 1)
    if (distance < least) {
      best = name
      least = distance
    }
    if (least === 0) break
  }
  return best
}
