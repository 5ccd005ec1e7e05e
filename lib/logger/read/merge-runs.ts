/**
 * Sorts places by their moment, in time that depends on how far they are from sorted: stretches that run forward are found and
 * merged two by two. Places of one moment stay in the order of the file.
 */
export function sortPlaces(places: Uint32Array, atMs: Float64Array): Uint32Array {
  const starts: number[] = []
  for (let at = 0; at < places.length; at++) {
    if (at === 0 || atMs[places[at]!]! < atMs[places[at - 1]!]!) starts.push(at)
  }
  let from = places
  let to = new Uint32Array(places.length)
  let bounds = [...starts, places.length]
  while (bounds.length > 2) {
    const merged: number[] = []
    for (let run = 0; run < bounds.length - 1; run += 2) {
      const low = bounds[run]!
      const middle = bounds[run + 1]!
      const high = bounds[run + 2] ?? middle
      merge(from, to, low, middle, high, atMs)
      merged.push(low)
    }
    bounds = [...merged, places.length]
    ;[from, to] = [to, from as Uint32Array<ArrayBuffer>]
  }
  return from
}

function merge(
  from: Uint32Array,
  to: Uint32Array,
  low: number,
  middle: number,
  high: number,
  atMs: Float64Array,
): void {
  let left = low
  let right = middle
  for (let at = low; at < high; at++) {
    const takeLeft = left < middle && (right >= high || atMs[from[left]!]! <= atMs[from[right]!]!)
    to[at] = takeLeft ? from[left++]! : from[right++]!
  }
}
