import fs from 'node:fs'
import path from 'node:path'
import { installIfNeeded } from './install.mjs'
import { runScript, runTool } from './process.mjs'
import { made, root } from './project.mjs'

const report = path.join(made, 'tests.json')

/** What vitest counted; a run that left no report, or a file that could not be loaded, is a failure too. */
function counted(code) {
  try {
    const { numPassedTests, numFailedTests, numPendingTests, testResults } = JSON.parse(
      fs.readFileSync(report, 'utf8'),
    )
    const brokenFiles = testResults.filter(
      (file) => file.status === 'failed' && file.assertionResults.length === 0,
    )
    const failed = numFailedTests + brokenFiles.length
    return { passed: numPassedTests, failed: code !== 0 && failed === 0 ? 1 : failed, left: numPendingTests }
  } catch {
    return { passed: 0, failed: 1, left: 0 }
  }
}

await installIfNeeded()
fs.mkdirSync(made, { recursive: true })
fs.rmSync(report, { force: true })

// Everything is run even where something before it failed: one run shows all that is wrong.
const steps = [
  // Next writes the declarations that the type check reads; a fresh clone has none.
  ['types of the routes', () => runTool('next/dist/bin/next', ['typegen'])],
  ['type check', () => runTool('typescript/bin/tsc', ['--noEmit', '--pretty', '-p', '.'])],
  ['lint', () => runTool('oxlint/bin/oxlint', ['--type-aware'])],
  ['knowledge check', () => runScript('lib/cli/main.ts', ['knowledge', 'check'], { cwd: root })],
  ['knowledge', () => runScript('lib/cli/main.ts', ['knowledge', 'compile'], { cwd: root })],
]
let passed = 0
let failed = 0
for (const [name, run] of steps) {
  console.log(`\n— ${name}`)
  const code = await run()
  if (code === 0) passed += 1
  else failed += 1
  if (code !== 0) console.log(`— ${name}: failed (exit code ${code})`)
}

console.log('\n— tests')
const tests = [
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
]
const count = counted(await runTool('vitest/vitest.mjs', tests))
if (count.left > 0) console.log(`${count.left} tests were left out; the lines above say which and why.`)
console.log(`\n${passed + count.passed} passed, ${failed + count.failed} failed`)
process.exitCode = failed + count.failed > 0 ? 1 : 0
