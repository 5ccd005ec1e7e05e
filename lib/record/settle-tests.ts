import { closest, nameKey } from './likeness.ts'
import type { NamedPart } from './name-parts.ts'
import { problem, type Problem } from './problem.ts'
import { whereOf, type RowRead } from './read-row.ts'
import type { Component } from './record.ts'
import { readTest, type Test } from './tests.ts'

export interface SettledTests {
  readonly tests: readonly string[] | null
  readonly problems: readonly Problem[]
}

const shows: Readonly<Record<string, string>> = {
  'core-solid': 'solid',
  'core-partial': 'partial',
  'no-core': 'none',
}

/** The component a test names, in the component's own spelling. */
function partNamed(part: string, names: readonly string[]): string | null {
  if (names.includes(part)) return part
  const alike = names.filter((name) => nameKey(name) === nameKey(part))
  return alike.length === 1 ? alike[0]! : null
}

/** Tests are written for the whole find; each is tied to its part, and what two of them, or a test and a field, say apart is said. */
export function settleTests(
  written: readonly string[] | undefined,
  parts: readonly NamedPart[],
  components: readonly Component[],
  rows: readonly RowRead[],
): SettledTests {
  if (!written) return { tests: null, problems: [] }
  const names = parts.map((part) => part.name)
  const from = whereOf(rows.find((row) => row.values.has('tests')) ?? rows[0]!, 'tests')
  const problems: Problem[] = []
  const settled: Test[] = written.flatMap((text) => {
    const read = readTest(text)
    if (!read.ok) return []
    const { test } = read
    if (test.part === null) return [test]
    const part = partNamed(test.part, names)
    if (part !== null)
      return [{ ...test, part, written: `${part}/${test.written.slice(test.part.length + 1)}` }]
    const likely = closest(
      nameKey(test.part),
      names.map((name) => ({ key: nameKey(name), name })),
    )
    problems.push(problem('no-such-part', from, test.written, likely?.name ?? names.join(' | ')))
    return [test]
  })
  for (const [index, component] of components.entries()) {
    const own = settled.filter(
      (test) => test.part === component.component || (test.part === null && components.length === 1),
    )
    for (const [name, group] of Map.groupBy(own, (test) => test.name)) {
      const results = new Set(
        group.map((test) => String(name === 'radiograph' ? (shows[String(test.result)] ?? '') : test.result)),
      )
      results.delete('')
      results.delete('unknown')
      if (group[0]!.kind === 'choice' && results.size > 1) {
        problems.push(problem('tests-disagree', from, group.map((test) => test.written).join('; ')))
      }
    }
    const core = component.core
    const shown = own.flatMap((test) => shows[String(test.result)] ?? [])
    const other =
      core === undefined || core === 'unknown' ? undefined : shown.find((amount) => amount !== core)
    if (other !== undefined)
      problems.push(problem('core-disagrees', whereOf(parts[index]!.row, 'core'), core!, other))
  }
  return { tests: [...new Set(settled.map((test) => test.written))], problems }
}
