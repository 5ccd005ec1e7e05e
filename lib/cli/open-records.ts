import type { IsoDate } from '../base/calendar.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { planFile, type FilePlan } from '../services/plan-file.ts'
import { isProblem } from '../services/record-source.ts'
import { stopWords } from '../wording/plan-text.ts'
import { problemWords } from '../wording/problems.ts'
import { exit, type Call, type Surroundings } from './command.ts'
import { fileArgument } from './file-argument.ts'

export interface OpenedRecords {
  readonly planned: FilePlan
  readonly records: number
  /** Name of the file, for what is said of it. */
  readonly name: string
  /** How the command ends once the rest of it is done. */
  readonly done: number
}

/**
 * The file of records a command is about, gone through once: stops are told before anything else, then what could not be
 * read. Null where nothing in it is a record; then that is said too, and `so` with it.
 */
export async function openRecords(
  call: Call,
  { out, err }: Surroundings,
  {
    knowledge,
    asOf,
    asText,
    so,
  }: {
    readonly knowledge: Knowledge
    readonly asOf: IsoDate
    /** Standard output in another form than text holds what was asked for and nothing else. */
    readonly asText: boolean
    readonly so: string
  },
): Promise<OpenedRecords | null> {
  const file = fileArgument(call)
  const planned = await planFile(knowledge, file.content, asOf)
  const { stops, problems, records } = await planned.before()
  const loud = stops.map(({ find, row, caution }) => `${stopWords(find ?? `row ${row}`, caution)}\n`).join('')
  if (asText) await out(loud === '' ? '' : `${loud}\n`)
  else err(loud)
  for (const problem of problems) err(`${problemWords(problem)}\n`)
  if (records === 0) {
    err(`${file.name}: nothing in it could be read as a record, so ${so}.\n`)
    return null
  }
  return {
    planned,
    records,
    name: file.name,
    done: problems.some(isProblem) ? exit.someUnreadable : exit.done,
  }
}
