import path from 'node:path'

/** The project's folder. */
export const root = path.resolve(
  import.meta.dirname ?? path.dirname(new URL(import.meta.url).pathname),
  '../..',
)

/** Things made on this machine and never kept in the repository: compiled knowledge, locks, reports. */
export const made = path.join(root, '.quietmetal')

/** The Node that the lock file pins; whatever Node the machine has only starts it. */
export const pinnedNode = path.join(
  root,
  'node_modules/node/bin',
  process.platform === 'win32' ? 'node.exe' : 'node',
)

export const environment = { ...process.env, NEXT_TELEMETRY_DISABLED: '1' }
