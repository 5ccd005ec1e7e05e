import { interpretationsCsvHead, interpretationsCsvRows } from '../services/interpretations-csv.ts'
import { tellInterpretations } from '../services/tell-interpretations.ts'
import { interpretationsText } from '../wording/interpretations-text.ts'
import { countWords } from '../wording/list.ts'
import { exit, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { openRecords } from './open-records.ts'
import { choiceOption, dayOption } from './options.ts'

const formats = ['text', 'json', 'csv'] as const

export const command: Command = {
  usage: 'interpretations FILE [--format text|json|csv] [--on DATE]',
  says: 'Tells what the things seen on every find of a file may be, and how likely each explanation is.',
  help: `
FILE is a CSV, XLSX or JSON file of records, told apart by its content; - reads standard input.
--format text   to be read: what leads, how sure that is, and what cannot be ruled out
         json   one object a find, in the order of the file: find, asOf, knowledge, interpretations
         csv    one row an interpretation
--on DATE       the day it is told for, as 2026-11-25; today where left out

A probability stands with its range: between its ends lie eight in ten of the plausible readings of the
words it rests on. What is seen is no diagnosis; a conservator decides.
Exit code 0: done. 1: something could not be read. 2: nothing could be read, or the call is wrong.`,
  options: { format: { type: 'string' }, on: { type: 'string' } },
  async run(call, surroundings) {
    const { out } = surroundings
    const format = choiceOption(call, 'format', formats)
    const asOf = dayOption(call, 'on', surroundings.today())
    const knowledge = await knowledgeHere(surroundings)
    const asText = format === 'text'
    const opened = await openRecords(call, surroundings, {
      knowledge,
      asOf,
      asText,
      so: 'nothing is told of it',
    })
    if (opened === null) return exit.wrongCall
    const { planned, records, done } = opened
    if (format === 'csv') await out(interpretationsCsvHead)
    let plain = 0
    for await (const batch of planned.records()) {
      for (const record of batch) {
        const interpretations = tellInterpretations(record, knowledge, asOf)
        const find = record.find_number
        if (format === 'json')
          await out(`${JSON.stringify({ find, asOf, knowledge: knowledge.hash, interpretations })}\n`)
        else if (format === 'csv') await out(interpretationsCsvRows(find, asOf, interpretations))
        else if (interpretations.length > 0)
          await out(`${interpretationsText(record, interpretations, knowledge)}\n\n`)
        else plain += 1
      }
    }
    if (format === 'text' && plain > 0)
      await out(
        `On ${countWords(plain, 'record')} of ${records.toLocaleString('en-GB')} nothing is recorded that has more than one explanation.\n`,
      )
    return done
  },
}
