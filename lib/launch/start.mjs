import path from 'node:path'
import { buildIfStale } from './build.mjs'
import { installIfNeeded } from './install.mjs'
import { runScript } from './process.mjs'
import { root } from './project.mjs'

const script = (file) => path.join(root, file)

const steps = [
  () => runScript(script('lib/cli/main.ts'), ['knowledge', 'compile']),
  buildIfStale,
  () => runScript(script('lib/launch/serve.ts'), []),
]

await installIfNeeded()
for (const step of steps) {
  process.exitCode = await step()
  if (process.exitCode !== 0) break
}
