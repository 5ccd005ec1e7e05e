import type { IsoDate } from '../base/calendar.ts'
import { readLook } from '../record/look.ts'
import type { Component, ConditionRecord } from '../record/record.ts'
import { readTest, type Test } from '../record/tests.ts'

/** What a laboratory reported of one part, as the record holds it: `xrf:Cu+Sn`, `skin-section:intermetallic-layers`. */
export interface Reported {
  readonly component: string
  readonly report: readonly string[]
}

const inVain = (result: Test['result']) => result === 'unknown'

/** Whose part a test of the record speaks of; a test without a part belongs to the only one there is. */
const isOf = (record: ConditionRecord, component: string, { part }: Test) =>
  part === component || (part === null && record.components.length === 1)

/**
 * Results that tell something take the place of `could not be told` before them; a result that tells nothing takes
 * nothing away. Two results that tell different things stand side by side.
 */
function withTests(
  record: ConditionRecord,
  { component, report }: Reported,
): ConditionRecord['tests'] | undefined {
  const fresh = report.flatMap((text) => {
    const read = readTest(text)
    return read.ok ? [read.test] : []
  })
  if (fresh.length === 0) return record.tests
  const before = (record.tests ?? []).map((text) => {
    const read = readTest(text)
    return { text, test: read.ok && isOf(record, component, read.test) ? read.test : null }
  })
  const told = new Set(fresh.filter(({ result }) => !inVain(result)).map(({ name }) => name))
  const known = new Set(before.flatMap(({ test }) => (test && !inVain(test.result) ? [test.name] : [])))
  const kept = before.filter(({ test }) => !(test && inVain(test.result) && told.has(test.name)))
  const written = new Set(kept.flatMap(({ test }) => (test ? [`${test.name} ${String(test.result)}`] : [])))
  const added = fresh
    .filter(({ name, result }) => !(inVain(result) && known.has(name)))
    .filter(({ name, result }) => !written.has(`${name} ${String(result)}`))
  const named = record.components.length === 1 ? '' : `${component}/`
  return [...kept.map(({ text }) => text), ...added.map((test) => `${named}${test.written}`)]
}

/** The last answer to a question is the one that counts: two would leave nobody knowing which was meant. */
function withLooks(part: Component, report: readonly string[]): Component {
  const before = part.looked ?? []
  const looked = report.reduce((sofar: readonly string[], text) => {
    const read = readLook(text)
    if (!read.ok) return sofar
    const { question, answer, written } = read.look
    const same = (other: string) => {
      const known = readLook(other)
      return known.ok && known.look.question === question
    }
    if (answer === 'unknown' && sofar.some(same)) return sofar
    return [...sofar.filter((other) => !same(other)), written]
  }, before)
  return looked === before ? part : { ...part, looked }
}

export interface Occasion {
  readonly on: IsoDate
  /** Who writes it down. */
  readonly by: string
  /** Where the find lay on that day; a record without a box moves nothing. */
  readonly box: string | null
  /** Whence the result is, in a line: it stands among the notes. */
  readonly note: string
}

/**
 * The record that is kept when a result comes in: all that the one before says, of the day on which more was known. Null
 * where the one before holds this very result.
 */
export function recordWithResult(
  before: ConditionRecord,
  reported: Reported,
  { on, by, box, note }: Occasion,
): ConditionRecord | null {
  const notes = before.notes ?? ''
  if (notes.includes(note)) return null
  const { box: _before, ...rest } = before
  const tests = withTests(before, reported)
  return {
    ...rest,
    ...(box === null ? {} : { box }),
    ...(tests === undefined ? {} : { tests }),
    recorded_by: by,
    // A report may be older than the last look at the find; what it adds must not be hidden behind that.
    recorded_on: before.recorded_on !== undefined && before.recorded_on > on ? before.recorded_on : on,
    notes: notes === '' ? note : `${notes}\n${note}`,
    components: before.components.map((part) =>
      part.component === reported.component ? withLooks(part, reported.report) : part,
    ),
  }
}
