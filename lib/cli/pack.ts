import { packBins } from '../services/pack-bins.ts'
import { binFlawWords, packedWords } from '../wording/packing-bins.ts'
import { exit, type Command } from './command.ts'
import { fileArgument } from './file-argument.ts'
import { choiceOption } from './options.ts'

const formats = ['text', 'json'] as const

export const command: Command = {
  usage: 'pack FILE [--format text|json]',
  says: 'Packs items of one size into as few bins as can be found, and says how few there could be at the least.',
  help: `
FILE is JSON, { "capacity": 150, "items": [42, 69, …] }; - reads standard input.
--format text   the items of each bin
         json   bins, lowerBound, and assignment: for each item its bin, counted from 0

The store is packed by the same search, with humidity, metals, sizes and weights; see its page.

Exit code 0: packed. 2: the file cannot be packed; everything that is wrong with it is named.`,
  options: { format: { type: 'string' } },
  async run(call, { out, err }) {
    const format = choiceOption(call, 'format', formats)
    const file = fileArgument(call)
    const packed = await packBins(file.content)
    if (!packed.ok) {
      for (const flaw of packed.problems) err(`${file.name}: ${binFlawWords(flaw)}\n`)
      return exit.wrongCall
    }
    await out(`${format === 'json' ? JSON.stringify(packed.value) : packedWords(packed.value)}\n`)
    return exit.done
  },
}
