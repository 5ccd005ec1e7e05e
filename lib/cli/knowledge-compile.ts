import { contentStamp, readContent } from '../knowledge/compile/read.ts'
import { isKept, keep, knowledgeFile } from '../knowledge/compile/keep.ts'
import { exit, type Command } from './command.ts'

export const command: Command = {
  usage: 'knowledge compile',
  says: 'Makes the knowledge from content/ where it changed.',
  options: {},
  async run(_call, { root, out, err }) {
    const stamp = contentStamp(root)
    if (isKept(root, stamp)) return exit.done
    // Loaded only now: nothing of the compiler is needed where nothing changed.
    const [{ compile }, { flawLine }] = await Promise.all([
      import('../knowledge/compile/compile.ts'),
      import('../wording/flaws.ts'),
    ])
    const { knowledge, flaws } = compile(readContent(root))
    const errors = flaws.filter(({ severity }) => severity === 'error')
    if (errors.length > 0) {
      for (const flaw of errors) err(`${flawLine(flaw)}\n`)
      return exit.someUnreadable
    }
    keep(root, knowledge, stamp)
    await out(`${knowledgeFile}  ${knowledge.hash}\n`)
    return exit.done
  },
}
