import type { Cell, Decision, Rule } from '../../lib/knowledge/knowledge.ts'
import { chance } from '../demo/chance.ts'

/**
 * The rule workload: 15 fields (six categorical, five yes/no, four numbers), rules of one to four conditions on distinct
 * fields, each giving one to three of sixty outcomes. Seeded, so that every engine meets the same rules and records.
 */
export const sizes = { material: 40, kind: 25, site: 12, zone: 8, surface: 10, grade: 6 } as const
export const flags = ['b1', 'b2', 'b3', 'b4', 'b5'] as const
const odds = [0.2, 0.15, 0.1, 0.3, 0.25]
export const numbers = { pct: [0, 100], rh: [20, 80], temp: [5, 30], age: [0, 3650] } as const

export type Row = Readonly<Record<string, string | boolean | number>>

export type Condition =
  | { readonly field: string; readonly kind: 'in' | 'notIn'; readonly values: readonly string[] }
  | { readonly field: string; readonly kind: 'is'; readonly value: boolean }
  | { readonly field: string; readonly kind: 'number'; readonly from?: number; readonly below?: number }

export interface BenchRule {
  readonly id: string
  readonly conditions: readonly Condition[]
  readonly outcomes: readonly number[]
}

const name = (field: string, at: number) => `${field}_${String(at).padStart(2, '0')}`

export function rowsOf(count: number, seed = 7): readonly Row[] {
  const { next } = chance(seed)
  const rows = Array.from({ length: count }, () => {
    const row: Record<string, string | boolean | number> = {}
    for (const [field, size] of Object.entries(sizes))
      row[field] = name(field, Math.floor(next() * next() * size))
    flags.forEach((flag, at) => (row[flag] = next() < odds[at]!))
    for (const [field, [low, high]] of Object.entries(numbers))
      row[field] = Math.round((low + next() * (high - low)) * 10) / 10
    return row
  })
  return JSON.parse(JSON.stringify(rows)) as Row[]
}

export function rulesOf(count: number, seed = 42): readonly BenchRule[] {
  const { next, whole, weighted, pick } = chance(seed)
  const grid = (low: number, high: number) => Math.round((low + next() * (high - low)) * 2) / 2
  const condition = (field: string): Condition => {
    if (field in sizes) {
      const size = sizes[field as keyof typeof sizes]
      const values = new Set(
        Array.from({ length: whole(1, Math.floor(size / 3)) }, () => name(field, whole(0, size - 1))),
      )
      return { field, kind: next() < 0.85 ? 'in' : 'notIn', values: [...values] }
    }
    if (field in numbers) {
      const [low, high] = numbers[field as keyof typeof numbers]
      const at = grid(low, high)
      const shape = next()
      if (shape < 0.4) return { field, kind: 'number', from: at }
      if (shape < 0.8) return { field, kind: 'number', below: at }
      return { field, kind: 'number', from: at, below: at + Math.max(0.5, grid(0, (high - low) / 3)) }
    }
    return { field, kind: 'is', value: next() < 0.7 }
  }
  const fields = [...Object.keys(sizes), ...flags, ...Object.keys(numbers)]
  return Array.from({ length: count }, (_, at) => {
    const many = weighted([
      [12, 1],
      [39, 2],
      [54, 3],
      [15, 4],
    ] as const)
    const chosen = new Set<string>()
    while (chosen.size < many) chosen.add(pick(fields))
    const outcomes = new Set(Array.from({ length: whole(1, 3) }, () => whole(0, 59)))
    return { id: `rule-${at}`, conditions: [...chosen].map(condition), outcomes: [...outcomes] }
  })
}

const cellOf = (condition: Condition): Cell => {
  const { field, kind } = condition
  if (kind === 'is') return { fact: field, any: [String(condition.value)] }
  if (kind !== 'number')
    return kind === 'in' ? { fact: field, any: condition.values } : { fact: field, none: condition.values }
  const { from, below } = condition
  return {
    fact: field,
    interval: {
      ...(from === undefined ? {} : { from }),
      ...(below === undefined ? {} : { below }),
      figures: [],
    },
  }
}

/** The same rules as a decision of ours. */
export function decisionOf(rules: readonly BenchRule[]): Decision {
  return {
    id: 'bench',
    asks: 'Which rules fire?',
    each: 'find',
    policy: 'collect',
    fills: null,
    answers: [],
    absent: 'silent',
    calledForBy: [],
    facts: [...Object.keys(sizes), ...flags, ...Object.keys(numbers)],
    notCovered: [],
    rules: rules.map((rule, order): Rule => ({
      id: rule.id,
      title: rule.id,
      when: rule.conditions.map(cellOf),
      then: { kind: 'say', code: rule.id },
      overrides: [],
      strength: 'consider',
      certainty: 'opinion',
      level: null,
      call: null,
      order,
      text: '',
      because: '',
      caution: null,
      sources: [],
      figures: [],
      contested: null,
      retired: null,
      examples: [],
    })),
  }
}
