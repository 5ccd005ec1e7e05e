/** Numbers in [0, 1), the same for the same seed: a search that draws must still give one answer to one question. */
export type Draw = () => number

/** mulberry32, a generator of 32 bits of state in the public domain. */
export function drawsFrom(seed: number): Draw {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

export const below = (draw: Draw, count: number): number => Math.floor(draw() * count)
