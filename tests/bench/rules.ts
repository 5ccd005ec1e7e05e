import { contenders, type Contender } from './rules-engines.ts'
import { rowsOf, rulesOf, type Row } from './rules-workload.ts'

/** Rule matching against general-purpose engines: same rules, same rows, rounds interleaved, medians and ratios. */
const rounds = 5

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]!

async function round({ fire, rows }: Contender, all: readonly Row[]): Promise<number> {
  const start = performance.now()
  for (let at = 0; at < rows; at++) {
    const fired = fire(all[at % all.length]!)
    if (fired instanceof Promise) await fired
  }
  return (rows / (performance.now() - start)) * 1000
}

/** Every engine must fire the same rules, or its speed says nothing. */
async function agree(all: readonly Contender[], rows: readonly Row[]): Promise<void> {
  for (const row of rows.slice(0, 200)) {
    const [expected, ...others] = await Promise.all(all.map(async ({ fire }) => (await fire(row)).join()))
    others.forEach((said, at) => {
      if (said !== expected)
        throw new Error(`${all[at + 1]!.name} fires other rules than the hand-written code`)
    })
  }
}

export interface RuleFigure {
  readonly rules: number
  readonly name: string
  readonly perSecond: number
  readonly ratio: number
}

async function at(count: number, names: (name: string) => boolean): Promise<readonly RuleFigure[]> {
  const rows = rowsOf(50_000)
  const all = (await contenders(rulesOf(count))).filter(({ name }) => names(name))
  await agree(all, rows)
  const seen = new Map(all.map(({ name }) => [name, [] as number[]]))
  for (let turn = 0; turn <= rounds; turn++) {
    for (const contender of all) {
      const perSecond = await round(contender, rows)
      // The first turn warms up.
      if (turn > 0) seen.get(contender.name)!.push(perSecond)
    }
  }
  const base = median(seen.get('hand-written if')!)
  return all.map(({ name }) => ({
    rules: count,
    name,
    perSecond: median(seen.get(name)!),
    ratio: median(seen.get(name)!) / base,
  }))
}

export async function ruleFigures(): Promise<readonly RuleFigure[]> {
  const own = (name: string) => name.startsWith('Quietmetal') || name.startsWith('hand')
  return [...(await at(120, () => true)), ...(await at(500, own)), ...(await at(1000, own))]
}
