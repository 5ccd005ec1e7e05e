import { chance, type Point } from './chance.ts'

/** Short numbers keep a drawing small. */
export const short = (value: number): string => String(Math.round(value * 10) / 10)
const pair = ([x, y]: Point): string => `${short(x)} ${short(y)}`

/** A stroke of no length with round ends: a dot. Many of them make one path. */
export function dots(points: readonly Point[]): string {
  let [x, y] = [0, 0]
  let d = ''
  for (const at of points) {
    const [dx, dy] = [Math.round(at[0]) - x, Math.round(at[1]) - y]
    d += `m${dx}${dy < 0 ? '' : ' '}${dy}h0`
    ;[x, y] = [x + dx, y + dy]
  }
  return d
}

export const straight = (points: readonly Point[]): string =>
  points.map((at, index) => `${index === 0 ? 'M' : 'L'}${pair(at)}`).join('')

/** A soft line through the middles of its steps, for the path it continues. */
function soft(points: readonly Point[]): string {
  return points
    .slice(1, -1)
    .map((at, index) => {
      const next = points[index + 2] ?? at
      return `Q${pair(at)} ${pair([(at[0] + next[0]) / 2, (at[1] + next[1]) / 2])}`
    })
    .join('')
}

/** Points of an uneven level line. */
export function uneven(word: string, y: number, by: number, from = 52, to = 160, step = 12): Point[] {
  const next = chance(word)
  const points: Point[] = []
  for (let x = from; x <= to; x += step) points.push([x, y + (next() - 0.5) * 2 * by])
  return points
}

export function softLine(points: readonly Point[]): string {
  const [first, last] = [points[0], points.at(-1)]
  return first === undefined || last === undefined ? '' : `M${pair(first)}${soft(points)}L${pair(last)}`
}

/** What lies between two level lines. */
export function between(upper: readonly Point[], lower: readonly Point[]): string {
  const back = [...lower].reverse()
  return `${softLine(upper)}${softLine(back).replace('M', 'L')}Z`
}

/** A closed uneven outline; `by` is how far it strays, as a share. */
export function blot(word: string, at: Point, across: number, up: number, by = 0.18, corners = 11): string {
  const ring = outline(word, at, across, up, by, corners)
  const first = ring[0] ?? at
  const second = ring[1] ?? at
  const start: Point = [(first[0] + second[0]) / 2, (first[1] + second[1]) / 2]
  return `M${pair(start)}${soft([first, ...ring.slice(1), first, second])}Z`
}

/** The same with sharp corners: what breaks. */
export const shard = (word: string, at: Point, across: number, up: number, by = 0.25, corners = 8): string =>
  `${straight(outline(word, at, across, up, by, corners))}Z`

function outline(
  word: string,
  [x, y]: Point,
  across: number,
  up: number,
  by: number,
  corners: number,
): Point[] {
  const next = chance(word)
  return Array.from({ length: corners }, (_, index) => {
    const turn = (index / corners) * 2 * Math.PI
    const reach = 1 + (next() - 0.5) * 2 * by
    return [x + Math.cos(turn) * across * reach, y + Math.sin(turn) * up * reach] as const
  })
}

/** A line that breaks its way from one point to another. */
export function cracked(word: string, from: Point, to: Point, by = 3, steps = 6): string {
  const next = chance(word)
  const points: Point[] = [from]
  for (let at = 1; at < steps; at += 1) {
    const share = at / steps
    points.push([
      from[0] + (to[0] - from[0]) * share + (next() - 0.5) * 2 * by,
      from[1] + (to[1] - from[1]) * share + (next() - 0.5) * 2 * by,
    ])
  }
  return straight([...points, to])
}
