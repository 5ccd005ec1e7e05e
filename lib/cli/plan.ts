import type { Knowledge } from '../knowledge/knowledge.ts'
import type { IsoDate } from '../base/calendar.ts'
import { planCsvHead } from '../services/plan-csv.ts'
import type { FilePlan } from '../services/plan-file.ts'
import { countWords } from '../wording/list.ts'
import { citedText, planText } from '../wording/plan-text.ts'
import { citing, type Citing } from '../wording/statement.ts'
import { exit, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { openRecords } from './open-records.ts'
import { choiceOption, dayOption } from './options.ts'
import { planLines, worthACrew } from './plan-crew.ts'
import { planLine } from './plan-line.ts'

const formats = ['text', 'json', 'csv'] as const
type Format = (typeof formats)[number]

/** Whatever prints the plans one after another; long files of lines are shared out. */
async function* printed(
  format: Format,
  planned: FilePlan,
  records: number,
  cite: Citing,
  { knowledge, asOf, root }: { readonly knowledge: Knowledge; readonly asOf: IsoDate; readonly root: string },
): AsyncGenerator<string> {
  if (format !== 'text' && records >= worthACrew) {
    yield* planLines(planned.records(), { root, format, asOf })
    return
  }
  for await (const { record, plan } of planned.plans()) {
    yield format === 'text' ? `${planText(record, plan, knowledge, cite)}\n\n` : planLine(format, plan)
  }
}

export const command: Command = {
  usage: 'plan FILE [--format text|json|csv] [--on DATE]',
  says: 'Plans every record of a CSV, XLSX or JSON file: what to do, in order, and how to keep it.',
  help: `
FILE is told apart by its content; - reads standard input.
--format text   to be read (stops first, then a plan a find)
         json   one plan a line, in the order of the file
         csv    one row a find
--on DATE       the day it is planned for, as 2026-11-25; today where left out

Plans go to standard output, problems to standard error.
Exit code 0: all planned. 1: planned, but something could not be read. 2: nothing could be read, or the call is wrong.`,
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
      so: 'nothing is planned',
    })
    if (opened === null) return exit.wrongCall
    const { planned, records, name, done } = opened
    if (format === 'text') {
      await out(
        `Planned for ${asOf}: ${countWords(records, 'record')} of ${name}. Numbers in brackets name the works at the end.\n\n`,
      )
    }
    if (format === 'csv') await out(planCsvHead)
    const cite = citing()
    const how = { knowledge, asOf, root: surroundings.root }
    for await (const text of printed(format, planned, records, cite, how)) await out(text)
    if (format === 'text') await out(`${citedText(cite, knowledge)}\n`)
    return done
  },
}
