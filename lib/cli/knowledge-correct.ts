import fs from 'node:fs'
import path from 'node:path'
import { readContent } from '../knowledge/compile/read.ts'
import { correctEvidence } from '../services/correct-evidence.ts'
import { correctionFaultWords, correctionWords } from '../wording/corrections.ts'
import { flawLine } from '../wording/flaws.ts'
import { countWords, listWords } from '../wording/list.ts'
import { exit, WrongCall, type Command } from './command.ts'
import { fileArgument } from './file-argument.ts'

export const command: Command = {
  usage: 'knowledge correct FILE [--dry-run]',
  says: 'Takes grades that a specialist corrected in a review table into content/evidence.',
  help: `
FILE       a CSV file as "knowledge sheet evidence/MATTER --format csv" prints it. Change the column grade, and fill in
           because, by and on in those rows; work, place and known name the source of the new grade.
--dry-run  only tells what would change

Rows left alone change nothing, and a file taken twice changes nothing the second time. With anything wrong in any row
nothing at all is written. Exit code 0: taken. 1: refused, each reason named.`,
  options: { 'dry-run': { type: 'boolean' } },
  async run(call, { root, out, err }) {
    const given = fileArgument(call)
    const dryRun = call.options['dry-run'] === true
    const made = correctEvidence(readContent(root), fs.readFileSync(given.path))
    if (!made.ok) {
      if (made.missing.length > 0)
        throw new WrongCall(`${given.name}: There is no column ${listWords(made.missing, 'or')}.`)
      for (const row of made.broken) err(`Row ${row}: The quotes of this row do not close.\n`)
      for (const fault of made.faults) err(`${correctionFaultWords(fault)}\n`)
      for (const flaw of made.flaws) err(`${flawLine(flaw)}\n`)
      err('Nothing was written.\n')
      return exit.someUnreadable
    }
    for (const change of made.changes) await out(`${correctionWords(change)}\n`)
    if (!dryRun) for (const { file, text } of made.files) writeAside(path.join(root, file), text)
    const would = dryRun ? 'would be corrected' : 'corrected'
    await out(
      `${countWords(made.changes.length, 'grade')} ${would} in ${countWords(made.files.length, 'file')}\n`,
    )
    return exit.done
  },
}

/** Written beside and moved into place, so that a reader never finds half a file. */
function writeAside(file: string, text: string): void {
  const aside = `${file}.${process.pid}`
  fs.writeFileSync(aside, text)
  fs.renameSync(aside, file)
}
