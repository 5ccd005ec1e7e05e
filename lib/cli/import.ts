import { isProblem } from '../services/record-source.ts'
import { start } from '../start.ts'
import { countWords } from '../wording/list.ts'
import { stopWords } from '../wording/plan-text.ts'
import { problemWords } from '../wording/problems.ts'
import { actorHelp, actorOf, actorOptions } from './actor.ts'
import { exit, textOption, type Command } from './command.ts'
import { fileArgument } from './file-argument.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { orHindered, projectNamed } from './project.ts'

export const command: Command = {
  usage: 'import FILE [--project NAME] [--dry-run] [--by NAME] [--role ROLE]',
  says: 'Keeps the records of a file in the database: all that could be read, or none.',
  help: `
--project NAME  the project; begun where there is none of that name
--dry-run       only tells what would be kept${actorHelp}

Records that are there already are not kept twice. Rows that could not be read are kept as rows to mend.
Exit code 0: all kept. 1: kept, but something could not be read. 2: nothing could be read or kept, or the call is wrong.`,
  options: { project: { type: 'string' }, 'dry-run': { type: 'boolean' }, ...actorOptions },
  async run(call, surroundings) {
    const { out, err, root, env } = surroundings
    const by = actorOf(call)
    const dryRun = call.options['dry-run'] === true
    const file = fileArgument(call)
    await knowledgeHere(surroundings)
    const services = await start(root, env)
    try {
      const project = await projectNamed(services, textOption(call, 'project'), by)
      const report = orHindered(
        await services.importFile(
          { projectId: project.id, fileName: file.name, bytes: file.content, dryRun },
          by,
        ),
      )
      await out(
        report.stops
          .map(({ find, row, caution }) => `${stopWords(find ?? `row ${row}`, caution)}\n`)
          .join(''),
      )
      for (const problem of report.problems) err(`${problemWords(problem)}\n`)
      const kept = dryRun ? 'would be kept' : 'kept'
      await out(
        `${countWords(report.recordsAdded, 'record')} ${kept} in ${project.name} (${countWords(report.findsNew, 'new find')}), ` +
          `${report.recordsAlreadyThere} there already, ${countWords(report.unreadableRows.length, 'row')} to mend\n`,
      )
      if (report.recordsRead === 0) return exit.wrongCall
      return report.problems.some(isProblem) ? exit.someUnreadable : exit.done
    } finally {
      await services.close()
    }
  },
}
