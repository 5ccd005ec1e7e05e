import type { Sighting, Surroundings } from '../boxes/box.ts'
import type { LogNext } from '../boxes/log-next.ts'
import { plainLine } from './box-line.ts'
import { sightingsOf } from './box-sightings.ts'
import { closedBox } from './closed-box.ts'
import type { World } from './ports.ts'
import type { BoxLine } from './show-store.ts'
import type { StoreData } from './store-data.ts'

/** Every box of the store with what was seen of it and what is likely of it. */
export interface StoreReckoned {
  readonly lines: readonly BoxLine[]
  readonly sightings: ReadonlyMap<string, readonly Sighting[]>
  readonly surroundings: (room: string) => Surroundings
  readonly logTells: readonly LogNext[]
}

export async function reckonStore(world: World, data: StoreData): Promise<StoreReckoned> {
  const { knowledge } = world
  const sightings = new Map(
    data.boxes.map(({ given }) => [given.box, sightingsOf(data, given.box, given.gel_kind, knowledge)]),
  )
  const lines = data.boxes.map((box): BoxLine => {
    const { limitRhPercent, ...line } = plainLine(data, box, sightings.get(box.given.box) ?? [], knowledge)
    const room = data.rooms.find(({ given }) => given.room === line.room)?.given
    const entries = data.diary.get(box.given.box) ?? []
    const seen = sightings.get(box.given.box) ?? []
    const known = { box: box.given, room, entries, sightings: seen, limitRhPercent }
    const closed = closedBox(known, knowledge)
    return { ...line, outlook: null, noOutlook: typeof closed === 'string' ? closed : 'no-start' }
  })
  const surroundings = (name: string): Surroundings => {
    const room = data.rooms.find(({ given }) => given.room === name)?.given
    const [low, high] = [room?.rh_low ?? 30, room?.rh_high ?? 70]
    const nominal = (low + high) / 2
    return {
      meanRhPercent: { low: nominal - 10, nominal, high: nominal + 10 },
      swingRhPercent: (high - low) / 2,
      highestOn: 210,
      from: room?.rh_low === undefined ? 'assumed' : 'written',
    }
  }
  return { lines, sightings, surroundings, logTells: [] }
}
