import type { BinProblem, PackedBin, Packing } from './bin-problem.ts'

/**
 * The same problem as a model in LP text, for an exact solver: every item of `items` into one bin, bins as few as can be,
 * or, among at most `mostBins`, with the least upkeep. Small cases only: it has a variable for every item and bin.
 */
export interface BinModel {
  readonly text: string
  readonly read: (values: ReadonlyMap<string, number>) => Packing
}

interface Slot {
  readonly kind: number
  readonly opened: number | null
}

export function binModel(
  problem: BinProblem,
  items: readonly number[],
  mostBins: number,
  aim: 'bins' | 'upkeep',
): BinModel {
  const slots = slotsOf(problem, mostBins)
  const staying = new Map(
    problem.opened.flatMap((bin, opened) => bin.items.map((item) => [item, opened] as const)),
  )
  const falling = items.toSorted((a, b) => problem.items[b]!.first - problem.items[a]!.first || a - b)
  const alike = problem.kinds.length === 1 && problem.opened.length === 0
  const goes = falling.map((item, place) =>
    slots.map(({ kind, opened }, slot) => {
      const home = staying.get(item)
      if (home !== undefined) return opened === home
      // Bins that are alike have no names: the item in place p opens bin p at the latest.
      return problem.items[item]!.kinds.includes(kind) && !(alike && slot > place)
    }),
  )
  const x = (place: number, slot: number) => `x_${place}_${slot}`
  const places = falling.map((_, place) => place)
  const within = (slot: number) => places.filter((place) => goes[place]![slot])
  const rows: string[] = []
  for (const place of places)
    rows.push(`${sum(slots.flatMap((_, slot) => (goes[place]![slot] ? [x(place, slot)] : [])))} = 1`)
  slots.forEach(({ kind, opened }, slot) => {
    const used = opened === null ? `y_${slot}` : null
    for (const size of ['first', 'second'] as const) {
      const fixed = opened === null ? [] : problem.opened[opened]!.items
      const load = fixed.reduce((all, item) => all + problem.items[item]![size], 0)
      const capacity = Math.max(problem.kinds[kind]![size], load)
      const terms = within(slot).flatMap((place) =>
        weighed(problem.items[falling[place]!]![size], x(place, slot)),
      )
      if (terms.length > 0 && Number.isFinite(capacity)) rows.push(atMost(terms, capacity, used))
    }
    for (const group of exclusive(problem, within(slot), falling))
      rows.push(
        atMost(
          group.map((place) => x(place, slot)),
          1,
          used,
        ),
      )
    if (used !== null) for (const place of within(slot)) rows.push(`${x(place, slot)} - ${used} <= 0`)
    const next = slots[slot + 1]
    if (used !== null && next?.opened === null && next.kind === kind)
      rows.push(`${used} - y_${slot + 1} >= 0`)
  })
  const bought = slots.flatMap(({ opened }, slot) => (opened === null ? [`y_${slot}`] : []))
  if (bought.length > 0) rows.push(`${sum(bought)} <= ${mostBins - problem.opened.length}`)
  const priced =
    aim === 'upkeep' ? prices(problem, falling, slots, within) : { terms: [], rows: [], binaries: [] }
  const names = [
    ...bought,
    ...places.flatMap((place) => slots.flatMap((_, slot) => (goes[place]![slot] ? [x(place, slot)] : []))),
  ]
  const goal = aim === 'bins' ? bought : priced.terms
  const text = [
    'Minimize',
    ` goal: ${goal.length > 0 ? sum(goal) : `0 ${names[0] ?? 'none'}`}`,
    'Subject To',
    ...[...rows, ...priced.rows].map((row, at) => ` c${at}: ${row}`),
    'Binaries',
    ...[...names, ...priced.binaries].map((name) => ` ${name}`),
    'End',
  ].join('\n')
  const read = (values: ReadonlyMap<string, number>): Packing => {
    const bins = slots.map(({ kind, opened }, slot): PackedBin => ({
      kind,
      opened,
      items: within(slot)
        .filter((place) => (values.get(x(place, slot)) ?? 0) > 0.5)
        .map((place) => falling[place]!)
        .toSorted((a, b) => a - b),
    }))
    const chosen = new Set(items)
    return {
      bins: bins.filter((bin) => bin.items.length > 0),
      left: problem.items.flatMap((_, item) => (chosen.has(item) ? [] : [item])),
    }
  }
  return { text, read }
}

function slotsOf({ kinds, opened }: BinProblem, mostBins: number): readonly Slot[] {
  const own = opened.map(({ kind }, at): Slot => ({ kind, opened: at }))
  const more = kinds.flatMap(({ count }, kind) =>
    Array.from({ length: Math.min(count, mostBins - opened.length) }, (): Slot => ({ kind, opened: null })),
  )
  return [...own, ...more]
}

/** Items of which a bin takes one at most: pairs that may not share, and all of a sort that lies alone. */
function exclusive(
  problem: BinProblem,
  places: readonly number[],
  falling: readonly number[],
): readonly (readonly number[])[] {
  const count = problem.sorts.length
  const sortOf = (place: number) => problem.items[falling[place]!]!.sort
  const apart = (a: number, b: number) => problem.mayShare[a * count + b] === 0
  const groups: number[][] = []
  for (let sort = 0; sort < count; sort += 1) {
    const own = places.filter((place) => sortOf(place) === sort)
    if (own.length > 1 && apart(sort, sort)) groups.push(own)
  }
  for (const a of places)
    for (const b of places)
      if (a < b && sortOf(a) !== sortOf(b) && apart(sortOf(a), sortOf(b))) groups.push([a, b])
  return groups
}

/** Each bin is kept in one band, which every item in it bears; what that takes is the price. */
function prices(
  problem: BinProblem,
  falling: readonly number[],
  slots: readonly Slot[],
  within: (slot: number) => readonly number[],
): {
  readonly terms: readonly string[]
  readonly rows: readonly string[]
  readonly binaries: readonly string[]
} {
  const sortsIn = new Set(falling.map((item) => problem.items[item]!.sort))
  const own = [...sortsIn].map((sort) => problem.sorts[sort]!)
  const bands = [...new Set(own.map(({ low }) => low))].flatMap((low) =>
    [...new Set(own.map(({ high }) => high))].filter((high) => high > low).map((high) => ({ low, high })),
  )
  const terms: string[] = []
  const rows: string[] = []
  const binaries: string[] = []
  slots.forEach(({ kind, opened }, slot) => {
    const z = (band: number) => `z_${slot}_${band}`
    bands.forEach(({ low, high }, band) => {
      binaries.push(z(band))
      terms.push(...weighed(problem.upkeep(kind, low, high), z(band)))
    })
    const all = bands.map((_, band) => z(band))
    rows.push(opened === null ? `${sum(all)} - y_${slot} = 0` : `${sum(all)} <= 1`)
    for (const place of within(slot)) {
      const { low, high } = problem.sorts[problem.items[falling[place]!]!.sort]!
      const borne = all.filter((_, band) => bands[band]!.low >= low && bands[band]!.high <= high)
      rows.push(`x_${place}_${slot} - ${borne.join(' - ')} <= 0`)
    }
  })
  return { terms, rows, binaries }
}

const weighed = (weight: number, name: string): readonly string[] =>
  weight === 0 ? [] : [`${weight} ${name}`]
const sum = (terms: readonly string[]): string => terms.join(' + ')
const atMost = (terms: readonly string[], most: number, used: string | null): string =>
  used === null ? `${sum(terms)} <= ${most}` : `${sum(terms)} - ${most} ${used} <= 0`
