/**
 * The ids so that each stands after all it reads; equals by name. What lies in a circle, or reads one, is left over in
 * `circles`, each told as the way round.
 */
export function inOrder(reads: ReadonlyMap<string, readonly string[]>): {
  readonly order: readonly string[]
  readonly circles: readonly (readonly string[])[]
} {
  const waiting = new Map(
    [...reads].map(([id, before]) => [id, new Set(before.filter((other) => reads.has(other)))]),
  )
  const order: string[] = []
  for (;;) {
    const next = [...waiting]
      .filter(([, before]) => before.size === 0)
      .map(([id]) => id)
      .toSorted()[0]
    if (next === undefined) break
    waiting.delete(next)
    for (const before of waiting.values()) before.delete(next)
    order.push(next)
  }
  return { order, circles: circlesAmong(waiting) }
}

function circlesAmong(waiting: ReadonlyMap<string, ReadonlySet<string>>): string[][] {
  const told = new Set<string>()
  const circles: string[][] = []
  for (const start of [...waiting.keys()].toSorted()) {
    const way: string[] = []
    let at = start
    while (!way.includes(at) && !told.has(at)) {
      way.push(at)
      at = [...waiting.get(at)!].toSorted()[0]!
    }
    if (way.includes(at)) circles.push(way.slice(way.indexOf(at)))
    for (const id of way) told.add(id)
  }
  return circles
}
