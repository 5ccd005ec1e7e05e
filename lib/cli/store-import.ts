import fs from 'node:fs'
import { isProblem } from '../services/record-source.ts'
import { start } from '../start.ts'
import { countWords } from '../wording/list.ts'
import { stopWords } from '../wording/plan-text.ts'
import { problemWords } from '../wording/problems.ts'
import { actorHelp, actorOf, actorOptions } from './actor.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { orHindered, projectNamed } from './project.ts'

export const command: Command = {
  usage: 'store import FILE… [--project NAME] [--dry-run] [--by NAME] [--role ROLE]',
  says: 'Keeps tables of the store: rooms, boxes, loggers, rounds, the diary; which is which is told by the headings.',
  help: `
--project NAME  the project; begun where there is none of that name
--dry-run       only tells what would be kept${actorHelp}

Rooms, boxes and loggers known by name are changed in the columns the file has; rounds and entries that are there already
are not kept twice. Rows that could not be read are kept as rows to mend.
Exit code 0: all kept. 1: kept, but something could not be read. 2: nothing could be read or kept, or the call is wrong.`,
  options: { project: { type: 'string' }, 'dry-run': { type: 'boolean' }, ...actorOptions },
  async run(call, surroundings) {
    const { out, err, root, env } = surroundings
    const by = actorOf(call)
    const dryRun = call.options['dry-run'] === true
    if (call.words.length === 0) throw new WrongCall('Name the file.')
    const missing = call.words.filter((name) => !fs.existsSync(name))
    if (missing.length > 0)
      throw new WrongCall(missing.map((name) => `${name}: There is no such file.`).join('\n'))
    await knowledgeHere(surroundings)
    const services = await start(root, env)
    let [anything, flawed] = [false, false]
    try {
      const project = await projectNamed(services, textOption(call, 'project'), by)
      for (const name of call.words) {
        const file = { projectId: project.id, fileName: name, bytes: fs.readFileSync(name), dryRun }
        const kept = orHindered(await services.keepPlaces(file, by))
        await out(kept.stops.map(({ row, caution }) => `${stopWords(`row ${row}`, caution)}\n`).join(''))
        for (const problem of kept.problems) err(`${name}: ${problemWords(problem)}\n`)
        const counted = [
          countWords(kept.rooms, 'room'),
          countWords(kept.boxes, 'box', 'boxes'),
          countWords(kept.loggers, 'row of loggers', 'rows of loggers'),
          countWords(kept.rounds, 'round'),
          countWords(kept.diary, 'entry', 'entries'),
        ].filter((text) => !text.startsWith('0 '))
        await out(
          `${name}: ${counted.length === 0 ? 'nothing' : counted.join(', ')} ${dryRun ? 'would be read' : 'read'} into ${project.name}, ${countWords(kept.unreadableRows, 'row')} to mend\n`,
        )
        anything ||= counted.length > 0
        flawed ||= kept.problems.some(isProblem)
      }
      if (!anything) return exit.wrongCall
      return flawed ? exit.someUnreadable : exit.done
    } finally {
      await services.close()
    }
  },
}
