/**
 * Who may import whom. A file belongs to the room with the longest matching path. `may` names rooms (a room always may
 * import itself), `types` rooms of which only types may be imported, `packages` everything from outside; `node:` stands
 * for all of Node's own modules.
 */
export interface Room {
  readonly may: readonly string[]
  readonly types?: readonly string[]
  readonly packages: readonly string[]
}

const results = ['lib/engine', 'lib/evidence', 'lib/boxes', 'lib/queue'] as const
const core = [
  'lib/base',
  'lib/record',
  'lib/climate',
  'lib/logger',
  'lib/matter',
  'lib/knowledge',
  'lib/analysis',
] as const
const shown = [
  'lib/field',
  'lib/tables',
  'lib/papers',
  'lib/papers/ruler.ts',
  'lib/exchange',
  'lib/wording',
] as const

export const rooms: Readonly<Record<string, Room>> = {
  'lib/base': { may: [], packages: ['temporal-polyfill'] },
  'lib/record': { may: ['lib/base'], packages: ['zod'] },
  'lib/climate': { may: ['lib/base'], packages: ['odex'] },
  'lib/logger': { may: ['lib/base', 'lib/climate'], packages: ['temporal-polyfill'] },
  'lib/matter': { may: ['lib/base'], packages: [] },
  'lib/knowledge': { may: ['lib/base', 'lib/record'], packages: [] },
  'lib/knowledge/compile': {
    may: ['lib/base', 'lib/record', 'lib/knowledge'],
    packages: ['node:fs', 'node:path', 'node:crypto', 'yaml', 'zod'],
  },
  'lib/analysis': { may: ['lib/base', 'lib/record', 'lib/knowledge'], packages: [] },
  'lib/engine': { may: ['lib/base', 'lib/record', 'lib/climate', 'lib/knowledge'], packages: [] },
  'lib/evidence': { may: ['lib/base', 'lib/record', 'lib/matter', 'lib/knowledge'], packages: [] },
  'lib/boxes': { may: [...core, 'lib/engine'], packages: [] },
  'lib/queue': { may: [...core, 'lib/engine', 'lib/evidence', 'lib/boxes'], packages: [] },
  'lib/field': {
    may: ['lib/base', 'lib/record', 'lib/climate', 'lib/knowledge', 'lib/engine', 'lib/evidence'],
    packages: [],
  },
  'lib/tables': {
    may: ['lib/base', 'lib/record'],
    packages: ['node:', 'csv-parse', 'read-excel-file', 'write-excel-file'],
  },
  'lib/wording': {
    may: [...core, ...results, 'lib/field', 'lib/tables', 'lib/papers/ruler.ts'],
    packages: ['temporal-polyfill'],
  },
  // A plan's bands as something to draw: wording tells the same picture in words.
  'lib/papers/ruler.ts': { may: [...core, ...results], packages: [] },
  'lib/papers': {
    may: [...core, ...results, 'lib/field', 'lib/wording', 'lib/papers/ruler.ts'],
    packages: ['uqr'],
  },
  'lib/exchange': { may: [...core, ...results], packages: ['ical-generator'] },
  'lib/services': {
    may: [...core, 'lib/knowledge/compile', ...results, ...shown],
    packages: ['node:', 'highs'],
  },
  'lib/database': { may: ['lib/base', 'lib/record', 'lib/services'], packages: ['node:', 'kysely', 'pg'] },
  'lib/start.ts': {
    may: ['lib/base', 'lib/knowledge', 'lib/services', 'lib/database'],
    packages: ['node:', 'temporal-polyfill'],
  },
  'lib/launch': { may: ['lib/start.ts', 'lib/cli'], packages: ['node:', 'next'] },
  'lib/cli': {
    may: [
      'lib/base',
      'lib/start.ts',
      'lib/services',
      'lib/wording',
      'lib/papers',
      'lib/knowledge/compile',
      'lib/analysis',
    ],
    types: [...core, ...results, 'lib/tables'],
    packages: ['node:', 'temporal-polyfill'],
  },
  app: {
    may: [
      'lib/base',
      'lib/record',
      'lib/climate',
      'lib/knowledge',
      'lib/field',
      'lib/wording',
      'lib/papers',
      'lib/papers/ruler.ts',
      'app/_server',
    ],
    types: [...core, ...results, 'lib/services', 'lib/start.ts'],
    packages: [
      'react',
      'react-dom',
      'next',
      'server-only',
      'node:crypto',
      'zod',
      'idb',
      'recharts',
      'react-aria-components',
      '@tanstack/react-virtual',
      '@fontsource-variable/atkinson-hyperlegible-next',
    ],
  },
  // The one door from the screens to the services.
  'app/_server': {
    may: ['app', 'lib/base', 'lib/start.ts'],
    types: [...core, ...results, 'lib/services'],
    packages: ['next', 'server-only', 'node:', 'react'],
  },
}
