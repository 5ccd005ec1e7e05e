import type { BinProblem, Packing } from '../../lib/boxes/bin-problem.ts'

/** What a packing breaks of all that its problem asks, read off the two and nothing else. */
export function breaches(problem: BinProblem, { bins, left }: Packing): readonly string[] {
  const found: string[] = []
  const times = new Map<number, number>()
  for (const item of [...bins.flatMap(({ items }) => items), ...left])
    times.set(item, (times.get(item) ?? 0) + 1)
  problem.items.forEach((_, item) => {
    if (times.get(item) !== 1) found.push(`item ${item} is there ${times.get(item) ?? 0} times`)
  })
  bins.forEach(({ kind, opened, items }, bin) => {
    const fixed = opened === null ? [] : problem.opened[opened]!.items
    const moved = items.filter((item) => !fixed.includes(item))
    if (fixed.some((item) => !items.includes(item))) found.push(`bin ${bin} lost what stays in it`)
    if (opened !== null && problem.opened[opened]!.kind !== kind) found.push(`bin ${bin} became another`)
    for (const size of ['first', 'second'] as const) {
      const load = items.reduce((all, item) => all + problem.items[item]![size], 0)
      if (moved.length > 0 && load > problem.kinds[kind]![size])
        found.push(`bin ${bin} is over its ${size} size`)
    }
    for (const item of moved)
      if (!problem.items[item]!.kinds.includes(kind)) found.push(`item ${item} does not go into kind ${kind}`)
    for (const a of items)
      for (const b of items) {
        const [one, other] = [problem.items[a]!.sort, problem.items[b]!.sort]
        if (a < b && problem.mayShare[one * problem.sorts.length + other] === 0)
          found.push(`${a} and ${b} share bin ${bin}`)
      }
  })
  problem.kinds.forEach(({ count }, kind) => {
    const fresh = bins.filter((bin) => bin.kind === kind && bin.opened === null).length
    if (fresh > count) found.push(`${fresh} bins of kind ${kind}, of which there are ${count}`)
  })
  if (bins.some(({ items }) => items.length === 0)) found.push('an empty bin')
  return found
}
