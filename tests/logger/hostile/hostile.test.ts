import { describe, expect, test } from 'vitest'
import { logProblemCodes } from '../../../lib/logger/log-problem.ts'
import { noAnswers } from '../../../lib/logger/read/log-answers.ts'
import { readLog } from '../../../lib/logger/read/read-log.ts'
import { logProblemWords } from '../../../lib/wording/log-problems.ts'
import { everything as all } from './everything.ts'
import { asksOf, bytesOf, readsOf, tellsOf, type Hostile } from './hostile.ts'

const answersFor = ({ answers }: Hostile) => ({ ...noAnswers, timeZone: 'UTC', ...answers })

describe('a hostile logger file', () => {
  test.each(all)('$name', (given) => {
    const read = readLog(bytesOf(given.file), answersFor(given))
    expect({
      reads: readsOf(read),
      tells: tellsOf(read).toSorted(),
      asks: asksOf(read),
      unreadable: read.rows.unreadable,
    }).toEqual({
      reads: given.reads,
      tells: given.tells.toSorted(),
      asks: given.asks ?? [],
      unreadable: given.unreadable ?? 0,
    })
    for (const problem of read.problems) expect(logProblemWords(problem)).toMatch(/^[\p{L}].{20,}[.]$/u)
  })

  test('is of at least sixty kinds, each with its own name', () => {
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length)
    expect(all.length).toBeGreaterThanOrEqual(60)
  })

  test('tells, all of them together, everything that can be told', () => {
    const told = new Set(all.flatMap(({ tells }) => tells.map((tell) => tell.split(' ')[0])))
    expect(logProblemCodes.filter((code) => !told.has(code))).toEqual([])
  })
})
