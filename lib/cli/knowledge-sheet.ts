import { compile } from '../knowledge/compile/compile.ts'
import { readContent } from '../knowledge/compile/read.ts'
import { decisionSheet } from '../papers/decision-sheet.ts'
import { decisionSheetText } from '../papers/decision-sheet-text.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'

export const command: Command = {
  usage: 'knowledge sheet DECISION [--format text|json|csv]',
  says: 'Prints a decision as a review table, with a line to initial under every rule.',
  options: { format: { type: 'string' } },
  async run(call, { root, out }) {
    const format = textOption(call, 'format') ?? 'text'
    if (!['text', 'json', 'csv'].includes(format)) throw new WrongCall('The format is text, json or csv.')
    const { knowledge } = compile(readContent(root))
    const [asked, ...more] = call.words
    const decision = knowledge.decisions.find(({ id }) => id === asked)
    if (decision === undefined || more.length > 0) {
      const all = knowledge.decisions.map(({ id }) => id).toSorted().join(', ')
      throw new WrongCall(`${asked === undefined ? 'Name one decision' : `There is no decision "${call.words.join(' ')}"`}. There are: ${all}.`)
    }
    const sheet = decisionSheet(decision, knowledge)
    if (format === 'json') await out(`${JSON.stringify(sheet)}\n`)
    else await out(decisionSheetText(sheet))
    return exit.done
  },
}
