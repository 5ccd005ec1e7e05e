import { compile } from '../knowledge/compile/compile.ts'
import { readContent } from '../knowledge/compile/read.ts'
import type { Flaw } from '../knowledge/flaw.ts'
import { checkKnowledge } from '../services/check-knowledge.ts'
import { flawLine, flawSentence } from '../wording/flaws.ts'
import { countWords } from '../wording/list.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'

const formats = ['text', 'json']

export const command: Command = {
  usage: 'knowledge check [PART-OF-FILE-NAME …] [--errors] [--format text|json]',
  says: 'Lists every flaw of content/, with file and line.',
  help: `Every rule, figure, work and word is looked at. With a part of a file's name only the flaws of those files are
listed; --errors leaves out the warnings. Exit code 1: there are errors among those listed.`,
  options: { format: { type: 'string' }, errors: { type: 'boolean' } },
  async run(call, { root, out }) {
    const format = textOption(call, 'format') ?? 'text'
    if (!formats.includes(format)) throw new WrongCall('The format is text or json.')
    const compiled = compile(readContent(root))
    const wanted = (flaw: Flaw): boolean =>
      (call.options['errors'] !== true || flaw.severity === 'error') &&
      (call.words.length === 0 || call.words.some((word) => flaw.file.includes(word)))
    const flaws = checkKnowledge(compiled).filter(wanted)
    for (const flaw of flaws) {
      await out(
        format === 'json'
          ? `${JSON.stringify({ ...flaw, says: flawSentence(flaw) })}\n`
          : `${flawLine(flaw)}\n`,
      )
    }
    const errors = flaws.filter(({ severity }) => severity === 'error').length
    if (format === 'text') {
      const { works, figures, decisions, matters, questions } = compiled.knowledge
      const size = [
        countWords(Object.keys(works).length, 'work'),
        countWords(Object.keys(figures).length, 'figure'),
        countWords(decisions.length, 'decision'),
        countWords(decisions.flatMap(({ rules }) => rules).length, 'rule'),
        countWords(Object.keys(matters).length, 'matter'),
        countWords(Object.keys(questions).length, 'question'),
      ].join(', ')
      await out(`${size}: ${countWords(errors, 'error')}, ${countWords(flaws.length - errors, 'warning')}\n`)
    }
    return errors > 0 ? exit.someUnreadable : exit.done
  },
}
