import { coverage } from '../analysis/coverage.ts'
import { compile } from '../knowledge/compile/compile.ts'
import { readContent } from '../knowledge/compile/read.ts'
import { coverageText } from '../wording/coverage.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'

export const command: Command = {
  usage: 'knowledge coverage [--format text|json]',
  says: 'Counts works, figures, rules and grades by how they are known, for each decision and matter.',
  options: { format: { type: 'string' } },
  async run(call, { root, out }) {
    const format = textOption(call, 'format') ?? 'text'
    if (format !== 'text' && format !== 'json') throw new WrongCall('The format is text or json.')
    const counts = coverage(compile(readContent(root)).knowledge)
    await out(format === 'json' ? `${JSON.stringify(counts)}\n` : coverageText(counts))
    return exit.done
  },
}
