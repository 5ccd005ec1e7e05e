import fs from 'node:fs'
import path from 'node:path'
import { alone } from './alone.mjs'
import { runToEnd } from './process.mjs'
import { pinnedNode, root } from './project.mjs'

const packagesOf = (...file) => JSON.parse(fs.readFileSync(path.join(...file), 'utf8')).packages

/**
 * Compares what npm noted in node_modules with the lock file, package by package: dates would lie after a checkout.
 * Packages for other machines are optional and may be missing.
 */
export function isInstalled(folder = root) {
  try {
    const wanted = packagesOf(folder, 'package-lock.json')
    const present = packagesOf(folder, 'node_modules', '.package-lock.json')
    return Object.entries(wanted).every(([name, { version, optional, devOptional }]) => {
      if (name === '') return true
      if (present[name] === undefined) return optional === true || devOptional === true
      return present[name].version === version
    })
  } catch {
    return false
  }
}

const isReady = () => fs.existsSync(pinnedNode) && isInstalled()

/**
 * `npm ci`, told to stderr so that a command's own output stays clean. npm is started as it was started for us: by the
 * machine's Node, because the pinned one is among what npm removes and puts back. The lock file decides the versions.
 */
export async function installIfNeeded() {
  if (isReady()) return
  await alone('installation', async () => {
    if (isReady()) return
    process.stderr.write('Installing the packages of the lock file (once) …\n')
    const started = process.env.npm_execpath
    const node = process.env.npm_node_execpath ?? process.execPath
    const flags = ['ci', '--no-audit', '--no-fund', '--loglevel=error']
    // stdin closed: `plan -` must find its records still unread.
    const options = { cwd: root, stdio: ['ignore', 2, 2], env: process.env }
    const code = started
      ? await runToEnd(node, [started, ...flags], options)
      : await runToEnd('npm', flags, { ...options, shell: process.platform === 'win32' })
    if (code === 0 && isReady()) return
    process.stderr.write(
      "The packages could not be installed; npm's own words stand above. Is the network reachable?\n",
    )
    process.exit(code === 0 ? 1 : code)
  })
}
