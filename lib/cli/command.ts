import type { ParseArgsOptionsConfig } from 'node:util'
import type { IsoDate } from '../base/calendar.ts'

/** Exit codes of the contract; `fault` is ours: the tool itself broke. */
export const exit = { done: 0, someUnreadable: 1, wrongCall: 2, fault: 3 } as const

/** What a command may touch of the outside; tests hand in their own. */
export interface Surroundings {
  /** Standard output: results only. Waits while the reader of a pipe is behind. */
  readonly out: (text: string) => Promise<void>
  /** Standard error: problems, progress, usage. */
  readonly err: (text: string) => void
  readonly env: Readonly<Record<string, string | undefined>>
  readonly today: () => IsoDate
  /** The project's folder, where content/ lies. */
  readonly root: string
}

export interface Call {
  /** What stands after the command's name, options taken out. */
  readonly words: readonly string[]
  /** The options given, by name, as node:util parseArgs reads them. */
  readonly options: Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>
}

/** One command a file, exported as `command`; the table is commands.ts. */
export interface Command {
  /** As typed: `plan FILE [--format text|json|csv] [--on DATE]`. */
  readonly usage: string
  /** What it does, in one line of the overview. */
  readonly says: string
  /** Further lines for `--help`. */
  readonly help?: string
  readonly options: ParseArgsOptionsConfig
  /** Gives the exit code. A `WrongCall` ends as usage and exit code 2; any other throw is a fault of ours. */
  readonly run: (call: Call, surroundings: Surroundings) => Promise<number>
}

/** The call itself is wrong: the sentence says what to type instead. */
export class WrongCall extends Error {}

/** Something outside is in the way (the database, a file that changed): told as a sentence, ends with exit code 2. */
export class Hindered extends Error {}

/** The option's text, or null where it was not given. */
export function textOption(call: Call, name: string): string | null {
  const value = call.options[name]
  return typeof value === 'string' ? value : null
}
