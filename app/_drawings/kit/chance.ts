export type Point = readonly [x: number, y: number]
export type Box = readonly [x: number, y: number, width: number, height: number]

/** Numbers from 0 to 1 that are the same for the same word, on the server and in any browser. */
export function chance(word: string): () => number {
  let state = 2166136261
  for (let at = 0; at < word.length; at += 1) state = Math.imul(state ^ word.charCodeAt(at), 16777619)
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** Points strewn over a box, no two nearer than `apart` where that can be had. */
export function strewn(word: string, count: number, [x, y, width, height]: Box, apart = 0): Point[] {
  const next = chance(word)
  const points: Point[] = []
  for (let tries = 0; points.length < count && tries < count * 12; tries += 1) {
    const at: Point = [x + next() * width, y + next() * height]
    if (points.every(([px, py]) => Math.abs(px - at[0]) + Math.abs(py - at[1]) >= apart)) points.push(at)
  }
  return points
}

/** Points that lie close in the middle of a heap and loose beyond its edge. */
export function heaped(word: string, count: number, [x, y]: Point, across: number, up = across): Point[] {
  const next = chance(word)
  const middling = () => (next() + next() + next()) / 1.5 - 1
  return Array.from({ length: count }, () => [x + middling() * across, y + middling() * up] as const)
}
