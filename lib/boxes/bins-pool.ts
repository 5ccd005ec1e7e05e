import { below, type Draw } from './bins-chance.ts'
import { put, take, takes, type Load, type Loading } from './bins-load.ts'

/** Items without a bin, to be brought in by letting smaller ones out, and those by still smaller ones. */
export interface Pool {
  readonly loading: Loading
  /** Only these bins are changed. */
  readonly loads: readonly Load[]
  readonly items: number[]
  readonly scarce: Scarcity
  readonly draw: Draw
  /** How much an item weighs while it is left out. */
  readonly weight: Float64Array
  /** The step until which an item that was brought in stays in. */
  readonly keep: Int32Array
  step: number
}

/** Bins looked at for one item in one step; with more there are, some are drawn. */
const binsAStep = 24
/** Beyond so many items a bin is searched for single items to let out, no longer for pairs. */
const pairsUpTo = 14

export function poolOf(loading: Loading, loads: readonly Load[], items: readonly number[], draw: Draw): Pool {
  const { problem } = loading
  const scarce = scarcityOf(loading, loads, items)
  const weight = Float64Array.from(
    problem.items,
    ({ first, second }) => 0.001 + first * scarce.first + second * scarce.second,
  )
  return {
    loading,
    loads,
    items: [...items],
    scarce,
    draw,
    weight,
    keep: new Int32Array(weight.length),
    step: 0,
  }
}

/** What a unit of each size weighs: much where the bins are all but full of it, little where there is room. */
function scarcityOf({ problem }: Loading, loads: readonly Load[], items: readonly number[]): Scarcity {
  const of = (size: 'first' | 'second'): number => {
    const holds = loads.reduce((sum, { kind }) => sum + problem.kinds[kind]![size], 0)
    if (holds <= 0 || !Number.isFinite(holds)) return 0
    const asked =
      loads.reduce((sum, load) => sum + load[size], 0) +
      items.reduce((sum, item) => sum + problem.items[item]![size], 0)
    return loads.length / holds / (1.03 - Math.min(1, asked / holds))
  }
  return { first: of('first'), second: of('second') }
}

interface Scarcity {
  readonly first: number
  readonly second: number
}

/**
 * One step: whatever goes in goes in; else one item takes the place of one or two that weigh less, or, where there are
 * none such, of what weighs least more. What was brought in stays for a while, so that the search does not go in circles.
 */
export function stepOf(pool: Pool): void {
  pool.step += 1
  const near = someOf(pool)
  if (bringIn(pool, near) || pool.items.length === 0) return
  const item = pool.items[below(pool.draw, pool.items.length)]!
  const exchange = bestExchange(pool, item, near)
  if (exchange !== null) {
    for (const out of exchange.out) {
      take(pool.loading, out)
      pool.items.push(out)
    }
    enter(pool, item, exchange.load)
  }
  shift(pool)
}

/** Puts in all that fits as it is, the heaviest first. */
function bringIn(pool: Pool, near: readonly Load[]): boolean {
  let any = false
  for (const item of pool.items.toSorted((a, b) => pool.weight[b]! - pool.weight[a]! || a - b)) {
    const load = near.find((one) => takes(pool.loading, item, one))
    if (load === undefined) continue
    enter(pool, item, load)
    any = true
  }
  return any
}

function enter(pool: Pool, item: number, load: Load): void {
  put(pool.loading, item, load)
  pool.items.splice(pool.items.indexOf(item), 1)
  pool.keep[item] = pool.step + 3 + below(pool.draw, 3 + Math.ceil(pool.items.length / 2))
}

function someOf({ loads, draw }: Pool): readonly Load[] {
  if (loads.length <= binsAStep) return loads
  const from = below(draw, loads.length)
  return Array.from({ length: binsAStep }, (_, at) => loads[(from + at) % loads.length]!)
}

interface Exchange {
  readonly load: Load
  readonly out: readonly number[]
  readonly gain: number
}

function bestExchange(pool: Pool, item: number, near: readonly Load[]): Exchange | null {
  const { loading, weight, draw } = pool
  const { problem } = loading
  const { sort, kinds } = problem.items[item]!
  let best: Exchange | null = null
  let ties = 1
  for (const load of near) {
    if (!kinds.includes(load.kind)) continue
    const size = problem.kinds[load.kind]!
    const overFirst = load.first + problem.items[item]!.first - size.first
    const overSecond = load.second + problem.items[item]!.second - size.second
    const loose = load.items.slice(load.fixed).filter((one) => pool.keep[one]! < pool.step)
    const foes = load.blocked[sort] === 0 ? [] : load.items.filter((one) => foe(loading, sort, one))
    if (foes.length > 2 || foes.some((one) => !loose.includes(one))) continue
    for (const out of choices(loose, foes)) {
      let first = 0
      let second = 0
      let gain = weight[item]!
      for (const one of out) {
        first += problem.items[one]!.first
        second += problem.items[one]!.second
        gain -= weight[one]!
      }
      if (first < overFirst || second < overSecond || (best !== null && gain < best.gain)) continue
      ties = best !== null && gain === best.gain ? ties + 1 : 1
      if (ties === 1 || draw() * ties < 1) best = { load, out, gain }
    }
  }
  return best
}

function foe({ problem }: Loading, sort: number, item: number): boolean {
  return problem.mayShare[sort * problem.sorts.length + problem.items[item]!.sort] === 0
}

/** One or two items to let out, all that may not stay among them. */
function* choices(loose: readonly number[], foes: readonly number[]): Generator<readonly number[]> {
  if (foes.length === 2) {
    yield foes
    return
  }
  if (foes.length === 1) {
    yield foes
    for (const one of loose) if (one !== foes[0]) yield [foes[0]!, one]
    return
  }
  for (const one of loose) yield [one]
  if (loose.length > pairsUpTo) return
  for (let a = 0; a < loose.length; a += 1)
    for (let b = a + 1; b < loose.length; b += 1) yield [loose[a]!, loose[b]!]
}

/** Moves an item, or exchanges two, so that room gathers in one bin instead of lying about in all. */
function shift({ loading, loads, scarce, draw }: Pool): void {
  if (loads.length < 2) return
  const a = loads[below(draw, loads.length)]!
  const b = loads[below(draw, loads.length)]!
  if (a === b || a.items.length <= a.fixed) return
  const one = a.items[a.fixed + below(draw, a.items.length - a.fixed)]!
  if (takes(loading, one, b)) {
    if (b.first >= a.first - loading.problem.items[one]!.first) exchange(loading, scarce, one, a, null, b)
    return
  }
  if (b.items.length <= b.fixed) return
  exchange(loading, scarce, one, a, b.items[b.fixed + below(draw, b.items.length - b.fixed)]!, b)
}

/** The exchange, undone where it does not go or leaves the two bins more alike than before. */
function exchange(
  loading: Loading,
  scarce: Scarcity,
  one: number,
  a: Load,
  other: number | null,
  b: Load,
): void {
  const uneven = () =>
    scarce.first ** 2 * (a.first ** 2 + b.first ** 2) + scarce.second ** 2 * (a.second ** 2 + b.second ** 2)
  const before = uneven()
  take(loading, one)
  if (other !== null) take(loading, other)
  const goes = takes(loading, one, b) && (other === null || takes(loading, other, a))
  if (goes) {
    put(loading, one, b)
    if (other !== null) put(loading, other, a)
    if (uneven() >= before) return
    take(loading, one)
    if (other !== null) take(loading, other)
  }
  put(loading, one, a)
  if (other !== null) put(loading, other, b)
}
