import path from 'node:path'
import { parseArgs } from 'node:util'
import { Temporal } from 'temporal-polyfill'
import { isoDate } from '../base/calendar.ts'
import { exit, Hindered, WrongCall, type Call, type Command, type Surroundings } from './command.ts'
import { commands } from './commands.ts'

const program = 'npm run -s quietmetal --'

/** Finds the command by its first one or two words, so that `knowledge check` is a name of its own. */
function nameOf(words: readonly string[]): string | null {
  const two = words.slice(0, 2).join(' ')
  if (Object.hasOwn(commands, two)) return two
  const one = words[0] ?? ''
  return Object.hasOwn(commands, one) ? one : null
}

async function overview(): Promise<string> {
  const lines = await Promise.all(
    Object.entries(commands).map(async ([, load]) => {
      const { command } = await load()
      return `  ${command.usage}\n      ${command.says}`
    }),
  )
  return `Use: ${program} COMMAND\n\n${lines.join('\n')}\n\n${program} COMMAND --help says more.\n`
}

function helpOf(command: Command): string {
  const more = command.help === undefined ? '' : `\n${command.help.trim()}\n`
  return `Use: ${program} ${command.usage}\n\n${command.says}\n${more}`
}

/** `--temperature-c -5` is a temperature, not a second option: parseArgs wants such a value behind a `=`. */
function withNegatives(command: Command, rest: readonly string[]): string[] {
  const args: string[] = []
  for (const word of rest) {
    const name = args.at(-1)
    const takesValue = name?.startsWith('--') && command.options[name.slice(2)]?.type === 'string'
    if (takesValue && /^-[\d.,]/.test(word)) args[args.length - 1] = `${name}=${word}`
    else args.push(word)
  }
  return args
}

function read(command: Command, rest: readonly string[]): Call {
  try {
    const { values, positionals } = parseArgs({
      args: withNegatives(command, rest),
      options: { ...command.options, help: { type: 'boolean', short: 'h' } },
      allowPositionals: true,
      strict: true,
    })
    return { words: positionals, options: values }
  } catch (flaw) {
    throw new WrongCall(flaw instanceof Error ? flaw.message : String(flaw))
  }
}

export async function main(args: readonly string[], surroundings: Surroundings): Promise<number> {
  const name = nameOf(args)
  if (name === null) {
    const asked = args.length === 0 || args[0] === '--help' || args[0] === '-h' || args[0] === 'help'
    if (asked) {
      await surroundings.out(await overview())
      return args.length === 0 ? exit.wrongCall : exit.done
    }
    surroundings.err(`There is no command "${args[0]}".\n\n${await overview()}`)
    return exit.wrongCall
  }
  const { command } = await commands[name]!()
  try {
    const call = read(command, args.slice(name.split(' ').length))
    if (call.options['help'] === true) {
      await surroundings.out(helpOf(command))
      return exit.done
    }
    return await command.run(call, surroundings)
  } catch (flaw) {
    if (flaw instanceof WrongCall) surroundings.err(`${flaw.message}\n\n${helpOf(command)}`)
    else if (flaw instanceof Hindered) surroundings.err(`${flaw.message}\n`)
    else throw flaw
    return exit.wrongCall
  }
}

/** A reader that went away (`| head`) is no fault: the rest is not wanted. */
function write(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(text, (flaw) => (flaw ? reject(flaw) : resolve()))
  })
}

if (import.meta.main) {
  process.stdout.on('error', (flaw: NodeJS.ErrnoException) =>
    process.exit(flaw.code === 'EPIPE' ? exit.done : exit.fault),
  )
  const surroundings: Surroundings = {
    out: write,
    err: (text) => void process.stderr.write(text),
    env: process.env,
    today: () => isoDate(Temporal.Now.plainDateISO().toString())!,
    root: path.resolve(import.meta.dirname, '../..'),
  }
  try {
    process.exitCode = await main(process.argv.slice(2), surroundings)
  } catch (fault) {
    surroundings.err(
      `The tool itself failed; nothing you typed is to blame.\n${fault instanceof Error ? fault.stack : String(fault)}\n`,
    )
    process.exitCode = exit.fault
  }
}
