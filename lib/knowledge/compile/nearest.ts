/** The id that was probably meant: the nearest by single-letter edits, or null where none is near. */
export function nearest(word: string, among: Iterable<string>): string | null {
  const most = Math.max(1, Math.floor(word.length / 3))
  let best: string | null = null
  let least = most + 1
  for (const other of among) {
    const edits = distance(word, other, least)
    if (edits < least) {
      least = edits
      best = other
    }
  }
  return best
}

function distance(a: string, b: string, giveUpAt: number): number {
  if (Math.abs(a.length - b.length) >= giveUpAt) return giveUpAt
  let row = Array.from({ length: b.length + 1 }, (_, column) => column)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const swap = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)
      next.push(Math.min(swap, row[j]! + 1, next[j - 1]! + 1))
    }
    row = next
  }
  return row[b.length]!
}
