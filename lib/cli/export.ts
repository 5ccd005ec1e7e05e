import fs from 'node:fs'
import { exportFormats } from '../services/export-file.ts'
import { start } from '../start.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { choiceOption } from './options.ts'
import { orHindered, projectNamed } from './project.ts'

export const command: Command = {
  usage: 'export [--format csv|xlsx|json] [--project NAME] [--to FILE]',
  says: 'Writes every record of a project as a file that comes back as the same records.',
  help: `
--format        csv (one row a part), xlsx, or json (one record a line)
--to FILE       where to; standard output where left out
--project NAME  the project; not needed where there is only one`,
  options: { format: { type: 'string' }, project: { type: 'string' }, to: { type: 'string' } },
  async run(call, surroundings) {
    const format = choiceOption(call, 'format', exportFormats)
    const to = textOption(call, 'to')
    if (call.words.length > 0)
      throw new WrongCall(`"${call.words[0]}" is too much; the file is named with --to.`)
    if (format === 'xlsx' && to === null) throw new WrongCall('A workbook is no text: name a file with --to.')
    await knowledgeHere(surroundings)
    const services = await start(surroundings.root, surroundings.env)
    // Written beside and moved into place, so that a broken export never stands where a whole one stood.
    const aside = to === null ? null : `${to}.part`
    try {
      const project = await projectNamed(services, textOption(call, 'project'), null)
      if (aside !== null) fs.writeFileSync(aside, '')
      for await (const piece of services.exportFile({ projectId: project.id, format })) {
        const part = orHindered(piece)
        if (aside !== null) fs.appendFileSync(aside, part)
        else await surroundings.out(typeof part === 'string' ? part : Buffer.from(part).toString())
      }
      if (aside !== null && to !== null) fs.renameSync(aside, to)
      return exit.done
    } finally {
      if (aside !== null) fs.rmSync(aside, { force: true })
      await services.close()
    }
  },
}
