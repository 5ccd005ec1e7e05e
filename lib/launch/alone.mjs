import fs from 'node:fs'
import path from 'node:path'
import { made } from './project.mjs'

const wait = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds))

function alive(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch (flaw) {
    return flaw.code === 'EPERM'
  }
}

/** The process that holds the lock, or null where the lock is free or its holder is gone. */
function holderOf(lock) {
  try {
    const pid = Number(fs.readFileSync(lock, 'utf8'))
    return pid > 0 && alive(pid) ? pid : null
  } catch {
    return null
  }
}

function take(lock) {
  // Written aside and linked into place, so that no other process ever reads a lock without its holder.
  const mine = `${lock}.${process.pid}`
  fs.writeFileSync(mine, String(process.pid))
  try {
    fs.linkSync(mine, lock)
    return true
  } catch {
    return false
  } finally {
    fs.rmSync(mine, { force: true })
  }
}

/** Does `work` while no other process of this project does work of the same name; waits for the one that does. */
export async function alone(name, work) {
  fs.mkdirSync(made, { recursive: true })
  const lock = path.join(made, `${name}.lock`)
  let told = false
  while (!take(lock)) {
    const holder = holderOf(lock)
    if (holder === null) fs.rmSync(lock, { force: true })
    else {
      if (!told) process.stderr.write(`Waiting for process ${holder} to finish the ${name} …\n`)
      told = true
      await wait(200)
    }
  }
  try {
    return await work()
  } finally {
    fs.rmSync(lock, { force: true })
  }
}
