import { compile } from '../knowledge/compile/compile.ts'
import { readContent } from '../knowledge/compile/read.ts'
import { knowledgeSheet, sheetFormats } from '../services/knowledge-sheet.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'

export const command: Command = {
  usage: 'knowledge sheet DECISION [--format text|json|csv]',
  says: 'Prints a decision as a review table, with a line to initial under every rule.',
  options: { format: { type: 'string' } },
  async run(call, { root, out }) {
    const asked = textOption(call, 'format') ?? 'text'
    const format = sheetFormats.find((one) => one === asked)
    if (format === undefined) throw new WrongCall('The format is text, json or csv.')
    const { knowledge } = compile(readContent(root))
    const [name, ...more] = call.words
    const decision = knowledge.decisions.find(({ id }) => id === name)
    if (decision === undefined || more.length > 0) {
      const all = knowledge.decisions
        .map(({ id }) => id)
        .toSorted()
        .join(', ')
      const wrong =
        name === undefined ? 'Name one decision' : `There is no decision "${call.words.join(' ')}"`
      throw new WrongCall(`${wrong}. There are: ${all}.`)
    }
    await out(knowledgeSheet(decision, knowledge, format))
    return exit.done
  },
}
