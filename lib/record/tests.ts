import * as ids from './ids.ts'
import { closest, nameKey } from './likeness.ts'

/** Results of simple tests and analyses, as `name:result` or `part/name:result` in the field `tests`. */
const choices = {
  'silver-nitrate': ids.silverNitrate,
  magnet: ids.magnet,
  radiograph: ids.radiograph,
  'oxygen-uptake': ids.oxygenUptake,
} as const satisfies Record<string, readonly string[]>

export type ChoiceTest = keyof typeof choices
const listTests = ['xrf', 'xrd', 'raman'] as const
export type ListTest = (typeof listTests)[number]
export type NumberTest = 'residual-chloride-ppm' | 'bath-chloride-mg-l'

export type Test = { readonly part: string | null; readonly written: string } & (
  | { readonly kind: 'choice'; readonly name: ChoiceTest; readonly result: string }
  | { readonly kind: 'list'; readonly name: ListTest; readonly result: readonly string[] | 'unknown' }
  | { readonly kind: 'number'; readonly name: NumberTest; readonly result: number | 'unknown' }
)

export type TestRead =
  | { readonly ok: true; readonly test: Test; readonly asWritten: boolean }
  | {
      readonly ok: false
      readonly code: 'unknown-test' | 'unknown-test-result'
      readonly suggestion?: string
    }

const testNames = [...Object.keys(choices), ...listTests, 'residual-chloride-ppm', 'bath-chloride-mg-l'].map(
  (key) => ({ key }),
)
const named = (key: string) => testNames.some((name) => name.key === key)

const symbols = new Set(
  (
    'H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga Ge As Se Br Kr Rb Sr Y Zr Nb Mo Tc Ru ' +
    'Rh Pd Ag Cd In Sn Sb Te I Xe Cs Ba La Ce Pr Nd Pm Sm Eu Gd Tb Dy Ho Er Tm Yb Lu Hf Ta W Re Os Ir Pt Au Hg Tl Pb Bi Po At Rn ' +
    'Fr Ra Ac Th Pa U Np Pu Am'
  ).split(' '),
)
const symbolOf = (text: string) => text.charAt(0).toUpperCase() + text.slice(1).toLowerCase()

/** `pin/xrf:Fe+Cu` cut into part, name and result; a slash within the result belongs to it. */
function cut(text: string): { part: string | null; name: string; result: string } | null {
  for (let colon = text.indexOf(':'); colon !== -1; colon = text.indexOf(':', colon + 1)) {
    const before = text.slice(0, colon)
    const result = text.slice(colon + 1).trim()
    const slash = before.lastIndexOf('/')
    const name = nameKey(before.slice(slash + 1))
    if (named(name)) return { part: slash === -1 ? null : before.slice(0, slash).trim(), name, result }
  }
  const colon = text.search(/[:=]/)
  if (colon === -1) return null
  const before = text.slice(0, colon)
  const slash = before.lastIndexOf('/')
  return {
    part: slash === -1 ? null : before.slice(0, slash).trim(),
    name: nameKey(before.slice(slash + 1)),
    result: text.slice(colon + 1).trim(),
  }
}

function listOf(name: ListTest, result: string): readonly string[] | null {
  const pieces = result.split(/[+,\s]+/).filter((piece) => piece !== '')
  if (pieces.length === 0) return null
  if (name !== 'xrf') {
    const phases = pieces.map(nameKey).filter((phase) => phase !== '')
    return phases.length === 0 ? null : [...new Set(phases)]
  }
  const elements = pieces.map(symbolOf)
  return elements.every((element) => symbols.has(element)) ? [...new Set(elements)] : null
}

export function readTest(text: string): TestRead {
  const pieces = cut(text)
  if (!pieces) return { ok: false, code: 'unknown-test' }
  const { part, name, result } = pieces
  if (!named(name)) {
    const likely = closest(name, testNames)
    return { ok: false, code: 'unknown-test', ...(likely ? { suggestion: `${likely.key}:${result}` } : {}) }
  }
  const refuse = (suggestion?: string): TestRead => ({
    ok: false,
    code: 'unknown-test-result',
    ...(suggestion === undefined ? {} : { suggestion }),
  })
  const accept = (printed: string, test: DistributedTest): TestRead => {
    const written = `${part === null || part === '' ? '' : `${part}/`}${name}:${printed}`
    return {
      ok: true,
      test: { ...test, part: part === '' ? null : part, written },
      asWritten: written === text.trim(),
    }
  }
  const key = nameKey(result)
  if (name in choices) {
    const allowed: readonly string[] = choices[name as ChoiceTest]
    if (key === 'unknown' || allowed.includes(key))
      return accept(key, { kind: 'choice', name: name as ChoiceTest, result: key })
    const likely = closest(
      key,
      allowed.map((id) => ({ key: id })),
    )
    return refuse(likely ? `${name}:${likely.key}` : `${name}:${allowed.join(' | ')}`)
  }
  const listed = listTests.find((one) => one === name)
  if (listed !== undefined) {
    if (key === 'unknown') return accept(key, { kind: 'list', name: listed, result: 'unknown' })
    const list = listOf(listed, result)
    return list === null ? refuse() : accept(list.join('+'), { kind: 'list', name: listed, result: list })
  }
  const number = name as NumberTest
  if (key === 'unknown') return accept(key, { kind: 'number', name: number, result: 'unknown' })
  const value = /^(\d+(?:[.,]\d+)?(?:e[+-]?\d+)?)\s*(?:ppm|mg\s*\/?\s*l(?:-1|⁻¹)?)?$/i
    .exec(result)?.[1]
    ?.replace(',', '.')
  return value === undefined
    ? refuse()
    : accept(String(Number(value)), { kind: 'number', name: number, result: Number(value) })
}

type DistributedTest = Test extends infer One
  ? One extends Test
    ? Omit<One, 'part' | 'written'>
    : never
  : never
