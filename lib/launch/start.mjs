import path from 'node:path'
import { installIfNeeded } from './install.mjs'
import { runScript } from './process.mjs'
import { root } from './project.mjs'

await installIfNeeded()
process.exitCode = await runScript(path.join(root, 'lib/launch/serve.ts'), process.argv.slice(2))
