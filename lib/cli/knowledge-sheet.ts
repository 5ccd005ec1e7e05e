import { compile } from '../knowledge/compile/compile.ts'
import { readContent } from '../knowledge/compile/read.ts'
import { knowledgeSheet, matterSheet, sheetFormats } from '../services/knowledge-sheet.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'

/** Matters are named by their folder. */
const evidence = 'evidence/'

export const command: Command = {
  usage: 'knowledge sheet DECISION|evidence/MATTER [--format text|json|csv]',
  says: 'Prints a decision or a matter as a review table, with a line to initial under every rule or group.',
  options: { format: { type: 'string' } },
  async run(call, { root, out }) {
    const asked = textOption(call, 'format') ?? 'text'
    const format = sheetFormats.find((one) => one === asked)
    if (format === undefined) throw new WrongCall('The format is text, json or csv.')
    const { knowledge } = compile(readContent(root))
    const [name = '', ...more] = call.words
    const decision = knowledge.decisions.find(({ id }) => id === name)
    const matter = name.startsWith(evidence) ? knowledge.matters[name.slice(evidence.length)] : undefined
    if (more.length === 0 && decision !== undefined) await out(knowledgeSheet(decision, knowledge, format))
    else if (more.length === 0 && matter !== undefined) await out(matterSheet(matter, knowledge, format))
    else {
      const decisions = knowledge.decisions.map(({ id }) => id).toSorted()
      const matters = Object.keys(knowledge.matters).map((id) => `${evidence}${id}`)
      const all = [...decisions, ...matters].join(', ')
      const what = name.startsWith(evidence) ? 'matter' : 'decision'
      const wrong =
        name === '' ? 'Name one decision or matter' : `There is no ${what} "${call.words.join(' ')}"`
      throw new WrongCall(`${wrong}. There are: ${all}.`)
    }
    return exit.done
  },
}
