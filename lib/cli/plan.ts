import type { Knowledge } from '../knowledge/knowledge.ts'
import type { IsoDate } from '../base/calendar.ts'
import { planCsvHead } from '../services/plan-csv.ts'
import { planFile, type FilePlan } from '../services/plan-file.ts'
import { isProblem } from '../services/record-source.ts'
import { countWords } from '../wording/list.ts'
import { citedText, planText, stopWords } from '../wording/plan-text.ts'
import { problemWords } from '../wording/problems.ts'
import { citing, type Citing } from '../wording/statement.ts'
import { exit, type Command } from './command.ts'
import { fileArgument } from './file-argument.ts'
import { knowledgeHere } from './knowledge-here.ts'
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
    const { out, err } = surroundings
    const format = choiceOption(call, 'format', formats)
    const asOf = dayOption(call, 'on', surroundings.today())
    const file = fileArgument(call)
    const knowledge = await knowledgeHere(surroundings)
    const planned = await planFile(knowledge, file.content, asOf)
    const { stops, problems, records } = await planned.before()

    const loud = stops
      .map(({ find, row, caution }) => `${stopWords(find ?? `row ${row}`, caution)}\n`)
      .join('')
    // Standard output in JSON or CSV holds plans and nothing else; the stops stand in them as well.
    if (format === 'text') await out(loud === '' ? '' : `${loud}\n`)
    else err(loud)
    for (const problem of problems) err(`${problemWords(problem)}\n`)
    if (records === 0) {
      err(`${file.name}: nothing in it could be read as a record, so nothing is planned.\n`)
      return exit.wrongCall
    }
    if (format === 'text') {
      await out(
        `Planned for ${asOf}: ${countWords(records, 'record')} of ${file.name}. Numbers in brackets name the works at the end.\n\n`,
      )
    }
    if (format === 'csv') await out(planCsvHead)
    const cite = citing()
    const how = { knowledge, asOf, root: surroundings.root }
    for await (const text of printed(format, planned, records, cite, how)) await out(text)
    if (format === 'text') await out(`${citedText(cite, knowledge)}\n`)
    return problems.some(isProblem) ? exit.someUnreadable : exit.done
  },
}
