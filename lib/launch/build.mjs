import { createHash } from 'node:crypto'
import fs from 'node:fs'
import path from 'node:path'
import { alone } from './alone.mjs'
import { runTool } from './process.mjs'
import { root } from './project.mjs'

/** What a build is made of. `lib/launch` and `lib/cli` never enter it. */
const madeOf = [
  'app',
  'lib',
  'content',
  'public',
  'package-lock.json',
  'next.config.ts',
  'tsconfig.json',
  'proxy.ts',
]
const notOf = [path.join('lib', 'launch'), path.join('lib', 'cli')]
const stamp = path.join(root, '.next', 'made-of')

function filesIn(folder, place) {
  const full = path.join(folder, place)
  if (notOf.includes(place) || !fs.existsSync(full)) return []
  if (!fs.statSync(full).isDirectory()) return [place]
  return fs.readdirSync(full).flatMap((name) => filesIn(folder, path.join(place, name)))
}

/** Changes with any file that a build is made of: its name, its place, its content. */
export function sourceStamp(folder = root) {
  const hash = createHash('sha256')
  for (const file of madeOf.flatMap((place) => filesIn(folder, place)).sort()) {
    const content = fs.readFileSync(path.join(folder, file))
    hash.update(`${file}\0${content.length}\0`).update(content)
  }
  return hash.digest('hex')
}

function isBuilt(wanted) {
  try {
    return fs.readFileSync(stamp, 'utf8') === wanted && fs.existsSync(path.join(root, '.next', 'BUILD_ID'))
  } catch {
    return false
  }
}

/** Builds the pages where anything they are made of has changed; gives the exit code. */
export async function buildIfStale() {
  if (isBuilt(sourceStamp())) return 0
  return alone('build', async () => {
    const wanted = sourceStamp()
    if (isBuilt(wanted)) return 0
    console.log('Building the pages (once after each change) …')
    fs.rmSync(stamp, { force: true })
    const code = await runTool('next/dist/bin/next', ['build'], { stdio: ['ignore', 'inherit', 'inherit'] })
    if (code === 0) fs.writeFileSync(stamp, wanted)
    return code
  })
}
