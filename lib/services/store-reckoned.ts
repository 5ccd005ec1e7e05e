import { boxKinds, type BoxKind } from '../record/places.ts'
import type { Sighting, Surroundings } from '../boxes/box.ts'
import { figureValue } from '../boxes/figure-value.ts'
import { logNext, type LogNext } from '../boxes/log-next.ts'
import { plainLine, type PlainLine } from './box-line.ts'
import type { BoxReckoned, NoOutlook } from './box-outlook.ts'
import { dayNumber, sightingsOf } from './box-sightings.ts'
import { boxBefore, closedBox } from './closed-box.ts'
import type { World } from './ports.ts'
import { reckonedBoxes, rememberedLogNext, type ToLearn } from './remembered-boxes.ts'
import { surroundingsOfRoom } from './room-around.ts'
import type { BoxLine } from './show-store.ts'
import type { StoreData } from './store-data.ts'

/** Every box of the store with what was seen of it and what is likely of it. */
export interface StoreReckoned {
  readonly lines: readonly BoxLine[]
  readonly sightings: ReadonlyMap<string, readonly Sighting[]>
  readonly surroundings: (room: string) => Surroundings
  /** By the name of the box; boxes of which nothing can be told have none. */
  readonly reckoned: ReadonlyMap<string, BoxReckoned>
}

interface Begun {
  readonly line: PlainLine
  readonly sightings: readonly Sighting[]
  /** Or why nothing can be told of it. */
  readonly from: ToLearn | NoOutlook
}

type Around = (room: string) => Surroundings

const kindOf = (kind: string): BoxKind => boxKinds.find((one) => one === kind) ?? 'box'

function begun(data: StoreData, { knowledge }: World, around: Around): readonly Begun[] {
  return data.boxes.map((kept): Begun => {
    const { box: name, room: roomName = '', gel_kind } = kept.given
    const sightings = sightingsOf(data, name, gel_kind, knowledge)
    const line = plainLine(data, kept, sightings, knowledge)
    const room = data.rooms.find(({ given }) => given.room === roomName)?.given
    const entries = data.diary.get(name) ?? []
    const { limitRhPercent } = line
    const box = closedBox({ box: kept.given, room, entries, sightings, limitRhPercent }, knowledge)
    if (typeof box === 'string') return { line, sightings, from: box }
    const surroundings = around(roomName)
    const before = boxBefore(box, entries, knowledge)
    const earlier = before && {
      box: before,
      surroundings,
      sightings: sightings.filter(({ on }) => on > before.startedOn && on < box.startedOn),
    }
    const from = { id: kept.id, kind: kindOf(line.kind), box, surroundings, sightings, earlier }
    return { line, sightings, from }
  })
}

/** The yearly course around the boxes of each room, looked for once. */
function roomsAround(data: StoreData, { knowledge }: World): Around {
  const rooms = new Map<string, Surroundings>()
  return (name) => {
    const known = rooms.get(name) ?? surroundingsOfRoom(data, name, knowledge)
    rooms.set(name, known)
    return known
  }
}

export async function reckonStore(world: World, data: StoreData): Promise<StoreReckoned> {
  const around = roomsAround(data, world)
  const all = begun(data, world, around)
  const toLearn = all.flatMap(({ from }) => (typeof from === 'string' ? [] : [from]))
  const reckoned = await reckonedBoxes(world, data.project.id, toLearn, dayNumber(data.today))
  return {
    lines: all.map(({ line: { limitRhPercent: _limit, ...line }, from }): BoxLine => ({
      ...line,
      outlook: reckoned.get(line.box.given.box) ?? null,
      noOutlook: typeof from === 'string' ? from : null,
    })),
    sightings: new Map(all.map(({ line, sightings }) => [line.box.given.box, sightings])),
    surroundings: around,
    reckoned,
  }
}

/** How many boxes are named for the next loggers. */
const mostNamed = 6

/** The boxes in which a logger would tell most, best first. */
export function whereToLog(
  world: World,
  { project, today: on }: StoreData,
  { lines, reckoned }: StoreReckoned,
): readonly LogNext[] {
  const candidates = lines.flatMap((line) => {
    const own = reckoned.get(line.box.given.box)
    if (!own) return []
    const { closed: box, surroundings, estimate } = own
    return [{ box, surroundings, estimate, findsAtRisk: line.finds, logged: line.loggers.length > 0 }]
  })
  // One more strip in a box that has been read does not move a logger; a first one may.
  const asked = candidates.map(({ box, findsAtRisk, logged, estimate: { sightings } }) => [
    box.name,
    box.startedOn,
    findsAtRisk,
    logged,
    sightings.logger > 0,
    sightings.rounds > 0,
  ])
  const today = dayNumber(on)
  return rememberedLogNext(world, project.id, [today, asked], () =>
    logNext(candidates, {
      today,
      most: mostNamed,
      errorRhPercent: figureValue(world.knowledge, 'logger-error-middle'),
    }),
  )
}
