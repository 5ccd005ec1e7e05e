import { logProblem, type LogProblem, type LogProblemCode } from '../log-problem.ts'

/** Collects problems as lines go by: the same fault in the same column is one entry, with its first line and a count. */
export interface ProblemBook {
  readonly note: (
    code: LogProblemCode,
    line: number | null,
    found: string,
    column?: string | null,
    count?: number,
  ) => void
  readonly count: (code: LogProblemCode) => number
  /** By place in the file; what concerns the whole file first. */
  readonly list: () => readonly LogProblem[]
}

/** Words a sensor writes instead of a value are told one by one, up to this many. */
const mostWords = 12

export function openProblemBook(): ProblemBook {
  const entries = new Map<string, LogProblem>()
  let words = 0
  const keyOf = (code: LogProblemCode, column: string | null, found: string) => {
    const plain = `${code}\u0000${column ?? ''}`
    if (code !== 'sensor-error') return plain
    const own = `${plain}\u0000${found}`
    if (!entries.has(own) && words++ >= mostWords) return plain
    return own
  }
  return {
    note(code, line, found, column = null, count = 1) {
      if (count === 0) return
      const key = keyOf(code, column, found)
      const known = entries.get(key)
      if (!known) {
        entries.set(key, logProblem(code, line, found, column, count))
      } else if (line !== null && known.line !== null && line < known.line) {
        entries.set(key, logProblem(code, line, found, column, known.count + count))
      } else {
        entries.set(key, { ...known, count: known.count + count })
      }
    },
    count: (code) =>
      [...entries.values()].reduce((sum, entry) => sum + (entry.code === code ? entry.count : 0), 0),
    list: () => [...entries.values()].toSorted((a, b) => (a.line ?? 0) - (b.line ?? 0)),
  }
}
