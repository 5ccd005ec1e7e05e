import { planFile } from '../services/plan-file.ts'
import { explainText } from '../wording/explain-text.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'
import { fileArgument } from './file-argument.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { choiceOption, dayOption } from './options.ts'

const formats = ['text', 'json'] as const

export const command: Command = {
  usage: 'explain FILE --find NUMBER [--format text|json] [--on DATE]',
  says: 'Tells for every line of one plan why: the rule, the facts it used, the figures, the works.',
  help: `
--find NUMBER   the find to explain; all its records in the file are
--format json   the plan itself, which carries rule, facts, figures and sources in every line
--on DATE       the day it is planned for; today where left out

Exit code 0: explained. 2: the file has no such find, or the call is wrong.`,
  options: { find: { type: 'string' }, format: { type: 'string' }, on: { type: 'string' } },
  async run(call, surroundings) {
    const find = textOption(call, 'find')
    if (find === null) throw new WrongCall('Say which find: --find NUMBER.')
    const format = choiceOption(call, 'format', formats)
    const asOf = dayOption(call, 'on', surroundings.today())
    const file = fileArgument(call)
    const knowledge = await knowledgeHere(surroundings)
    const { plansOf } = await planFile(knowledge, file.content, asOf)
    let explained = 0
    for await (const { record, plan } of plansOf(find)) {
      explained += 1
      await surroundings.out(
        format === 'json' ? `${JSON.stringify(plan)}\n` : `${explainText(record, plan, knowledge)}\n\n`,
      )
    }
    if (explained > 0) return exit.done
    surroundings.err(`${file.name} has no find ${find} that could be read.\n`)
    return exit.wrongCall
  },
}
