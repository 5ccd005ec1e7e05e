import type { LineTemplate } from './fast-line.ts'
import type { Layout } from './layout.ts'
import { openStore, type Store } from './store.ts'

/** One table of the file: how its lines are written, and what was read from them, by sensor. */
export interface Table {
  readonly layout: Layout
  /** By what stands in the columns that name the sensor; one under the empty text where there are none. */
  readonly stores: Map<string, Store>
  readonly serials: Map<string, string>
}

export const openTable = (layout: Layout): Table => ({ layout, stores: new Map(), serials: new Map() })

/** More sensors in one file are no sensors: a column was taken for their names that is none. */
export const mostSensors = 1000

/** The store of a sensor; null where there are too many. */
export function storeOf(table: Table, sensor: string, capacity: number): Store | null {
  const known = table.stores.get(sensor)
  if (known) return known
  if (table.stores.size >= mostSensors) return null
  const named = (channel: string) => [sensor, channel].filter((part) => part !== '').join(' ')
  const slots = table.layout.values.map(({ quantity, unit, channel, heading }) => ({
    quantity,
    unit,
    channel: named(channel),
    heading,
  }))
  const store = openStore(sensor, slots, capacity)
  table.stores.set(sensor, store)
  return store
}

/** Templates of lines seen before, newest last; which came after which, as sensors take turns. */
export interface Templates {
  readonly list: LineTemplate[]
  readonly after: number[]
  current: number
  /** Learning did not pay so often on end. */
  idle: number
  wait: number
}

export const noTemplates = (): Templates => ({ list: [], after: [], current: -1, idle: 0, wait: 0 })

const mostTemplates = 64

/** Keeps a template; the oldest makes room. */
export function keepTemplate(templates: Templates, template: LineTemplate): void {
  if (templates.list.length < mostTemplates) {
    templates.list.push(template)
    templates.after.push(-1)
    templates.current = templates.list.length - 1
  } else {
    templates.current = (templates.current + 1) % mostTemplates
    templates.list[templates.current] = template
    templates.after[templates.current] = -1
  }
}

/** Where every line differs from the one before, learning is tried ever more seldom. */
export function shallLearn(templates: Templates): boolean {
  if (templates.wait > 0) {
    templates.wait--
    return false
  }
  templates.idle++
  if (templates.idle > 8) templates.wait = Math.min(2 ** (templates.idle - 8), 64)
  return true
}
