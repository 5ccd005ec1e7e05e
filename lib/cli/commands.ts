import type { Command } from './command.ts'

/** Every command by the words that call it. Loaded when called, so that one command does not pay for another. */
export const commands: Readonly<Record<string, () => Promise<{ readonly command: Command }>>> = {
  plan: () => import('./plan.ts'),
  interpretations: () => import('./interpretations.ts'),
  requests: () => import('./requests.ts'),
  explain: () => import('./explain.ts'),
  import: () => import('./import.ts'),
  export: () => import('./export.ts'),
  humidity: () => import('./humidity.ts'),
  gel: () => import('./gel.ts'),
  boxes: () => import('./boxes.ts'),
  'store import': () => import('./store-import.ts'),
  'store export': () => import('./store-export.ts'),
  logger: () => import('./logger.ts'),
  pack: () => import('./pack.ts'),
  score: () => import('./score.ts'),
  'knowledge compile': () => import('./knowledge-compile.ts'),
  'knowledge check': () => import('./knowledge-check.ts'),
  'knowledge sheet': () => import('./knowledge-sheet.ts'),
  'knowledge coverage': () => import('./knowledge-coverage.ts'),
  'knowledge correct': () => import('./knowledge-correct.ts'),
}
