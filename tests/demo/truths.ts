import { readFileSync } from 'node:fs'
import type { IsoDate } from '../../lib/base/calendar.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'

/**
 * What some of the invented finds are in truth, and what was therefore seen and measured of them. Drawn once from the
 * evidence base (`write-truths.ts`) and kept as it was drawn: the demo does not move when somebody corrects a grade.
 */
export interface Truth {
  readonly find: string
  readonly component: string
  readonly matter: string
  readonly truth: string
  /** Answers to questions, by eye and by method. */
  readonly looked: readonly string[]
  readonly tests: readonly string[]
  /** How it came out; null where nobody has found out yet. */
  readonly found: {
    readonly method: string
    readonly on: IsoDate
    readonly by: string
    readonly reference: string
    readonly words: string
  } | null
}

export const truthsFile = new URL('truths.jsonl', import.meta.url)

export const truths: readonly Truth[] = readFileSync(truthsFile, 'utf8')
  .split('\n')
  .filter((line) => line !== '')
  .map((line) => JSON.parse(line) as Truth)

const joined = (before: readonly string[] | undefined, more: readonly string[]) => [
  ...new Set([...(before ?? []), ...more]),
]

/** The record with what was seen and measured of its truth; the lists that get nothing stay away. */
export function withTruth(record: ConditionRecord, { component, looked, tests }: Truth): ConditionRecord {
  const named = record.components.length === 1 ? '' : `${component}/`
  return {
    ...record,
    ...(tests.length === 0
      ? {}
      : {
          tests: joined(
            record.tests,
            tests.map((test) => `${named}${test}`),
          ),
        }),
    components: record.components.map((part): Component =>
      part.component !== component || looked.length === 0
        ? part
        : { ...part, looked: joined(part.looked, looked) },
    ),
  }
}

const ofFind = new Map(truths.map((one) => [one.find, one]))

/** Every record of a find with a truth shows it. */
export const showingTruths = (records: readonly ConditionRecord[]): readonly ConditionRecord[] =>
  records.map((record) => {
    const truth = ofFind.get(record.find_number)
    return truth ? withTruth(record, truth) : record
  })

const inOrder = truths.toSorted((a, b) => ((a.found?.on ?? '') < (b.found?.on ?? '') ? -1 : 1))

/** What was found out, as the table that the demo is loaded from. */
export const identifications = (): readonly Readonly<Record<string, string>>[] =>
  inOrder.flatMap(({ find, component, matter, truth, found }) =>
    found === null
      ? []
      : [
          {
            site_code: 'TW',
            find_number: find,
            component,
            matter,
            interpretation: truth,
            method: found.method,
            on: found.on,
            by_whom: found.by,
            reference: found.reference,
            words: found.words,
            known: 'invented',
          },
        ],
  )
