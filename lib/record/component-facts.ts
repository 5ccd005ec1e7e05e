import { couldNotTell, measured, stated, type Fact } from './fact.ts'
import { fields } from './fields.ts'
import { radiograph } from './ids.ts'
import { lookedFacts } from './looked-facts.ts'
import type { Component, ConditionRecord } from './record.ts'
import { readTest, type Test } from './tests.ts'

type Loose = Readonly<Record<string, unknown>>

/** A closed choice as a fact; a list of which part was not understood is left open at its end. */
export function choiceFact(values: readonly string[], partlyUnread: boolean): Fact {
  const open = partlyUnread || values.includes('unknown')
  if (values.length === 1 && values[0] === 'unknown') return couldNotTell
  return open ? { has: values, may: 'any', said: 'stated' } : stated(...values)
}

const componentChoices = Object.entries(fields).flatMap(([name, field]) =>
  field.level === 'component' && (field.kind === 'choice' || field.kind === 'choices')
    ? [{ name, many: field.kind === 'choices' }]
    : [],
)

const testFact: Readonly<Record<Test['name'], string>> = {
  'silver-nitrate': 'silver_nitrate',
  magnet: 'magnet',
  radiograph: 'radiograph',
  'oxygen-uptake': 'oxygen_uptake',
  xrf: 'xrf',
  xrd: 'xrd',
  raman: 'raman',
  'residual-chloride-ppm': 'residual_chloride_ppm',
  'bath-chloride-mg-l': 'bath_chloride_mg_l',
}

/** The tests of a record that can be read; the others are problems of the reader and count as absent. */
export function testsOf(record: ConditionRecord): readonly Test[] {
  return (record.tests ?? []).flatMap((text) => {
    const read = readTest(text)
    return read.ok ? [read.test] : []
  })
}

const resultsOf = (test: Test): readonly string[] =>
  Array.isArray(test.result) ? test.result : [String(test.result)]

/** What was not printed on a radiograph may still be there, but not a second kind of core. */
function openRadiograph(has: readonly string[]): readonly string[] {
  const cored = has.some((value) => value.includes('core'))
  return radiograph.filter((value) => !has.includes(value) && !(cored && value.includes('core')))
}

/** One test's results for one part. Two results that exclude each other: either may hold, and neither is certain. */
function testResult(name: Test['name'], tests: readonly Test[]): Fact {
  const values = [...new Set(tests.flatMap(resultsOf))]
  const known = values.filter((value) => value !== 'unknown')
  const from = tests.map((test) => test.written).join('; ')
  if (known.length === 0) return { ...couldNotTell, from }
  if (tests[0]!.kind === 'number') {
    // The higher chloride is the one that asks for care.
    return { ...measured(Math.max(...known.map(Number))), from }
  }
  if (tests[0]!.kind === 'list') return { has: known, may: 'any', said: 'stated', from }
  if (name === 'radiograph') return { has: known, may: openRadiograph(known), said: 'stated', from }
  if (known.length > 1) return { has: [], may: known, said: 'stated', from }
  return values.length > 1 ? { has: [], may: 'any', said: 'stated', from } : { ...stated(...known), from }
}

const metalLeft = ['solid', 'partial', 'none']
const coreOnRadiograph: Readonly<Record<string, string>> = {
  'core-solid': 'solid',
  'core-partial': 'partial',
  'no-core': 'none',
}

/** How much metal is left: as stated, else as the radiograph shows; where they disagree, the most that either says. */
function coreFact(field: string | undefined, radiographed: Fact | undefined): Fact | undefined {
  const shown = (radiographed?.has ?? []).flatMap((value) => coreOnRadiograph[value] ?? [])
  if (shown.length === 0) return field === undefined ? undefined : choiceFact([field], false)
  const most = metalLeft.find((amount) => shown.includes(amount) || field === amount)!
  if (field === most) return stated(most)
  return { has: [most], may: [], said: 'derived', from: radiographed!.from ?? 'radiograph' }
}

/** Tests by the part they speak of; `null` holds those of which nobody can say which part was meant. */
function share(record: ConditionRecord, tests: readonly Test[]): ReadonlyMap<string | null, readonly Test[]> {
  const names = record.components.map((component) => component.component)
  const only = names.length === 1 ? names[0]! : null
  return Map.groupBy(tests, (test) =>
    test.part === null ? only : names.includes(test.part) ? test.part : null,
  )
}

function factsOfTests(tests: readonly Test[], nobodys: readonly Test[]): Record<string, Fact> {
  const facts: Record<string, Fact> = {}
  // Nobody can say which part it was done on: for each it is as open as if it had not been done, but it is on record.
  for (const [name, group] of Map.groupBy(nobodys, (test) => test.name)) {
    if (group[0]!.kind === 'number') continue
    facts[testFact[name]] = {
      has: [],
      may: 'any',
      said: 'stated',
      from: group.map((test) => `${test.written} (part not known)`).join('; '),
    }
  }
  for (const [name, group] of Map.groupBy(tests, (test) => test.name))
    facts[testFact[name]] = testResult(name, group)
  return facts
}

function factsOfComponent(
  component: Component,
  tests: readonly Test[],
  nobodys: readonly Test[],
): Record<string, Fact> {
  const facts: Record<string, Fact> = {}
  const loose = component as unknown as Loose
  for (const { name, many } of componentChoices) {
    const value = loose[name]
    if (value === undefined) continue
    const partlyUnread = many && component.unread?.[name] !== undefined
    facts[name] = choiceFact(many ? (value as readonly string[]) : [value as string], partlyUnread)
  }
  Object.assign(facts, factsOfTests(tests, nobodys), lookedFacts(component))
  const core = coreFact(component.core, facts['radiograph'])
  if (core) facts['core'] = core
  return facts
}

export function componentFacts(
  record: ConditionRecord,
): readonly { readonly name: string; readonly facts: Record<string, Fact> }[] {
  const shared = share(record, testsOf(record))
  const nobodys = shared.get(null) ?? []
  return record.components.map((component) => ({
    name: component.component,
    facts: factsOfComponent(component, shared.get(component.component) ?? [], nobodys),
  }))
}
