import { fold } from '../base/fold.ts'

/**
 * Colours of gel that has taken up its water, by what it looks like dry: blue turns pink, orange turns green or loses its
 * colour. Half way is not spent: the turning is slow and says little of the humidity.
 */
const spentOf: readonly (readonly [dry: RegExp, spent: RegExp])[] = [
  [/blue|cobalt/, /pink|red|violet|lilac/],
  [/orange|yellow/, /green|colou?rless|white|clear|pale/],
]
const halfWay = /half|partly|edge|some|turning|bit|and/

/** Whether the colour noted is that of spent gel; null where it cannot tell: gel without indicator, a colour not known. */
export function gelSpent(gelKind: string | undefined, colour: string | undefined): boolean | null {
  if (colour === undefined) return null
  const [kind, seen] = [fold(gelKind ?? ''), fold(colour)]
  if (/\bspent\b/.test(seen)) return true
  if (/\bdry\b|\bfresh\b/.test(seen)) return false
  const pair = spentOf.find(([dry]) => dry.test(kind))
  if (!pair || halfWay.test(seen)) return null
  const [dry, spent] = pair
  if (spent.test(seen)) return true
  return dry.test(seen) ? false : null
}
