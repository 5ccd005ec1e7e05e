import { describe, expect, test } from 'vitest'
import { noAnswers } from '../../../lib/logger/read/log-answers.ts'
import { readLog } from '../../../lib/logger/read/read-log.ts'
import { logProblemWords } from '../../../lib/wording/log-problems.ts'
import { clocks } from './clocks.ts'
import { files } from './files.ts'
import { stamps } from './stamps.ts'
import { tables } from './tables.ts'
import { values } from './values.ts'
import { asksOf, bytesOf, readsOf, tellsOf, type Hostile } from './hostile.ts'

const all: readonly Hostile[] = [...files, ...tables, ...stamps, ...clocks, ...values]
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
})
