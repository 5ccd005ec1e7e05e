import { installIfNeeded } from './install.mjs'
import { runScript } from './process.mjs'

// node lib/launch/run.mjs SCRIPT.ts ARGUMENTS…  — the script under the pinned Node, installed first where needed.
const [script, ...args] = process.argv.slice(2)
if (script === undefined) {
  process.stderr.write('Use: node lib/launch/run.mjs SCRIPT.ts [ARGUMENT …]\n')
  process.exit(2)
}
await installIfNeeded()
process.exitCode = await runScript(script, args)
