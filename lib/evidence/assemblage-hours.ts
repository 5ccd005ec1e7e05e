import { given, refused, type Outcome } from '../base/outcome.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { closest, nameKey, slips } from '../record/likeness.ts'
import type { Allowance } from './assemblage.ts'

/** What is wrong with the hours somebody gave; every one of them, so that all can be mended at once. */
export type HoursFlaw =
  | { readonly flaw: 'nothing-given' }
  | { readonly flaw: 'no-method'; readonly given: string; readonly meant: readonly string[] }
  | { readonly flaw: 'no-number'; readonly method: string; readonly given: string }
  | { readonly flaw: 'too-many'; readonly method: string; readonly given: string }
  | { readonly flaw: 'twice'; readonly method: string }

/** A year of one instrument, day and night: more is a slip. */
export const mostHours = 8_760
const mostPlaces = 100_000

const amount = /^(\d+(?:[.,]\d*)?|[.,]\d+)\s*(h|hours?|slots?|places?)?$/i

function readOne(method: string, text: string): Allowance | HoursFlaw {
  const read = amount.exec(text)
  if (read === null) return { flaw: 'no-number', method, given: text }
  const number = Number(read[1]!.replace(',', '.'))
  if (!/^[sp]/i.test(read[2] ?? ''))
    return number > mostHours
      ? { flaw: 'too-many', method, given: text }
      : { method, hours: number, slots: null }
  if (!Number.isInteger(number)) return { flaw: 'no-number', method, given: text }
  return number > mostPlaces
    ? { flaw: 'too-many', method, given: text }
    : { method, hours: null, slots: number }
}

/**
 * Methods that may have been meant: a slip of the finger away, or of which it is a part. Short names lie so close together
 * that one slip may mean two of them.
 */
function meantBy(
  wanted: string,
  names: readonly { readonly key: string; readonly id: string }[],
): readonly string[] {
  const near = closest(wanted, names)
  const found =
    near === null
      ? names.filter(({ key }) => slips(wanted, key, 1) <= 1 || (wanted.length > 3 && key.includes(wanted)))
      : [near]
  return [...new Set(found.map(({ id }) => id))]
}

/** A method by its id or its name, however it is spelt. */
function methodNamed(text: string, knowledge: Knowledge): string | HoursFlaw {
  const wanted = nameKey(text)
  const names = Object.values(knowledge.methods).flatMap(({ id, label }) => [
    { key: id, id },
    { key: nameKey(label), id },
  ])
  const found = names.find(({ key }) => key === wanted)
  if (found !== undefined) return found.id
  return { flaw: 'no-method', given: text, meant: meantBy(wanted, names) }
}

/** Hours as typed, a method and its amount each: as pairs of a form, or as `xrf=6,ct=4slots` in one line. */
export function readHours(
  pairs: readonly (readonly [method: string, amount: string])[],
  knowledge: Knowledge,
): Outcome<readonly Allowance[], readonly HoursFlaw[]> {
  const flaws: HoursFlaw[] = []
  const read = new Map<string, Allowance>()
  if (pairs.length === 0) flaws.push({ flaw: 'nothing-given' })
  for (const [name, text] of pairs) {
    const method = methodNamed(name.trim(), knowledge)
    if (typeof method !== 'string') {
      flaws.push(method)
      continue
    }
    const one = readOne(method, text.trim())
    if ('flaw' in one) flaws.push(one)
    else if (read.has(method)) flaws.push({ flaw: 'twice', method })
    else read.set(method, one)
  }
  return flaws.length > 0 ? refused(flaws) : given([...read.values()])
}

/** `xrf=6,x-radiography=10` as pairs; a bare word has no amount. */
export function hoursInLine(line: string): readonly (readonly [string, string])[] {
  return line
    .split(',')
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
    .map((piece) => {
      const at = piece.indexOf('=')
      return at === -1 ? ([piece, ''] as const) : ([piece.slice(0, at), piece.slice(at + 1)] as const)
    })
}
