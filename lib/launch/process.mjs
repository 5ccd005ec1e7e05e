import { spawn } from 'node:child_process'
import { environment, pinnedNode, root } from './project.mjs'

/**
 * Runs a program to its end and gives its exit code. Signals that reach us are handed on, so that Ctrl+C and a
 * supervisor's stop end the whole family; a program ended by a signal gives 128 + its number, as shells do.
 */
export function runToEnd(program, args, options = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: 'inherit', env: environment, ...options })
    const handOn = (signal) => child.kill(signal)
    const signals = ['SIGINT', 'SIGTERM', 'SIGHUP']
    for (const signal of signals) process.on(signal, handOn)
    child.on('error', reject)
    child.on('exit', (code, signal) => {
      for (const name of signals) process.off(name, handOn)
      resolve(
        code ?? 128 + (signal === 'SIGINT' ? 2 : signal === 'SIGHUP' ? 1 : signal === 'SIGKILL' ? 9 : 15),
      )
    })
  })
}

/** Runs a script of the project under the pinned Node. Arguments keep the caller's own folder as theirs. */
export function runScript(file, args, options = {}) {
  return runToEnd(pinnedNode, [file, ...args], options)
}

/** Runs a tool of node_modules under the pinned Node, in the project's folder. */
export function runTool(file, args, options = {}) {
  return runToEnd(pinnedNode, [`${root}/node_modules/${file}`, ...args], { cwd: root, ...options })
}
