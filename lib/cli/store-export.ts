import fs from 'node:fs'
import { exportFormats } from '../services/export-file.ts'
import { start } from '../start.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { choiceOption } from './options.ts'
import { orHindered, projectNamed } from './project.ts'

const tables = ['all', 'rooms', 'boxes', 'loggers', 'rounds', 'diary'] as const

export const command: Command = {
  usage:
    'store export [--table rooms|boxes|loggers|rounds|diary] [--format csv|xlsx|json] [--project NAME] [--to FILE]',
  says: 'Writes the tables of the store as files that come back as the same store.',
  help: `
--table         one table; all of them where left out, as XLSX or JSON
--format        csv (needs --table), xlsx (a sheet a table), or json (one object a line)
--to FILE       where to; standard output where left out
--project NAME  the project; not needed where there is only one`,
  options: {
    table: { type: 'string' },
    format: { type: 'string' },
    project: { type: 'string' },
    to: { type: 'string' },
  },
  async run(call, surroundings) {
    const table = choiceOption(call, 'table', tables)
    const format = choiceOption(call, 'format', exportFormats)
    const to = textOption(call, 'to')
    if (call.words.length > 0)
      throw new WrongCall(`"${call.words[0]}" is too much; the file is named with --to.`)
    if (format === 'csv' && table === 'all')
      throw new WrongCall('A CSV file holds one table: say which with --table.')
    if (format === 'xlsx' && to === null) throw new WrongCall('A workbook is no text: name a file with --to.')
    await knowledgeHere(surroundings)
    const services = await start(surroundings.root, surroundings.env)
    try {
      const project = await projectNamed(services, textOption(call, 'project'), null)
      const asked = { projectId: project.id, format, ...(table === 'all' ? {} : { table }) }
      const { content } = orHindered(await services.exportStore(asked))
      if (to === null)
        await surroundings.out(typeof content === 'string' ? content : Buffer.from(content).toString())
      else {
        // Written beside and moved into place, so that a broken export never stands where a whole one stood.
        fs.writeFileSync(`${to}.part`, content)
        fs.renameSync(`${to}.part`, to)
      }
      return exit.done
    } finally {
      await services.close()
    }
  },
}
