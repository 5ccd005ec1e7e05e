import path from 'node:path'
import type { Outcome } from '../../lib/base/outcome.ts'
import type { Trouble } from '../../lib/base/trouble.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { bind, type Services } from '../../lib/start.ts'
import { openEmpty, type Engine, type Opened } from '../database/engines.ts'
import { day } from '../database/samples.ts'
import { knowledge as realKnowledge } from '../knowledge-at-hand.ts'

export const root = path.resolve(import.meta.dirname, '../..')

export interface Stage {
  readonly services: Services
  readonly opened: Opened
  /** The same data seen by the tool on another day, or with other knowledge. */
  readonly later: (change: { readonly on?: string; readonly knowledge?: Knowledge }) => Services
}

export async function stage(engine: Engine, on = '2026-11-25'): Promise<Stage> {
  const opened = await openEmpty(engine)
  const world = { store: opened.store, knowledge: realKnowledge, today: () => day(on), root }
  const later: Stage['later'] = ({ on: other = on, knowledge = world.knowledge }) =>
    bind({ ...world, today: () => day(other), knowledge })
  return { services: bind(world), opened, later }
}

export function value<Value>(outcome: Outcome<Value, Trouble>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

export const bytes = (text: string) => new TextEncoder().encode(text)
