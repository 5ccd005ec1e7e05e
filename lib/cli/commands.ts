import type { Command } from './command.ts'

/** Every command by the words that call it. Loaded when called, so that one command does not pay for another. */
export const commands: Readonly<Record<string, () => Promise<{ readonly command: Command }>>> = {
}
