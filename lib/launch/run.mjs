import path from 'node:path'
import { installIfNeeded } from './install.mjs'
import { runScript } from './process.mjs'
import { environment, made } from './project.mjs'

// node lib/launch/run.mjs SCRIPT.ts ARGUMENTS…  — the script under the pinned Node, installed first where needed.
const [script, ...args] = process.argv.slice(2)
if (script === undefined) {
  process.stderr.write('Use: node lib/launch/run.mjs SCRIPT.ts [ARGUMENT …]\n')
  process.exit(2)
}
await installIfNeeded()
// What Node has compiled once it keeps: a command starts in half the time and with a third less memory.
const compiled = environment.NODE_COMPILE_CACHE ?? path.join(made, 'compile-cache')
process.exitCode = await runScript(script, args, { env: { ...environment, NODE_COMPILE_CACHE: compiled } })
