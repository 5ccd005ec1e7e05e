import { readdirSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { countsByKnown } from '../../lib/knowledge/known.ts'
import { checks, unfounded } from './printed.ts'
import { figure } from '../said.ts'

const folder = path.join(import.meta.dirname, 'checks')
for (const file of readdirSync(folder).toSorted()) await import(path.join(folder, file))

describe('what a check may claim', () => {
  const read = figure('iron-chloride-rh-ceiling')
  const claim = { work: 'watkinson-lewis-2005', place: 'abstract', known: 'read' } as const

  test('a claim that stands on what it compared is founded', () => {
    expect(unfounded(claim, [read])).toBeNull()
    expect(unfounded({ ...claim, known: 'memory' }, [read])).toBeNull()
  })

  test('a work that the knowledge does not have is not', () => {
    expect(unfounded({ ...claim, work: 'nobody-1900' }, [read])).toMatch(/no work/)
  })

  test('a place that nothing compared rests on is not', () => {
    expect(unfounded({ ...claim, place: 'p. 1' }, [read])).toMatch(/nothing compared/)
    expect(unfounded(claim, [figure('nails-tested')])).toMatch(/nothing compared/)
  })

  test('a better mark than the figure, or the work, has in the knowledge is not', () => {
    const remembered = figure('first-aid-iron-rh')
    expect(unfounded({ work: 'watkinson-neal-1998', place: null, known: 'read' }, [remembered])).toMatch(
      /better/,
    )
    expect(
      unfounded({ work: 'turgoose-1982', place: null, known: 'read' }, [
        { sources: [{ work: 'turgoose-1982', place: null, known: 'read' }] },
      ]),
    ).toMatch(/better/)
  })
})

describe('the checks together', () => {
  test('each is named once', () => {
    expect(new Set(checks.map(({ check }) => check)).size).toBe(checks.length)
  })

  test('there are ninety at least, seventy of them not from memory', () => {
    const counts = countsByKnown(checks)
    expect(checks.length).toBeGreaterThanOrEqual(90)
    expect(counts.read + counts['second-hand'] + counts['common-practice']).toBeGreaterThanOrEqual(70)
  })
})
