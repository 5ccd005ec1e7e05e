import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import type { Range } from '../base/range.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { Surroundings } from '../boxes/box.ts'
import { figureValue } from '../boxes/figure-value.ts'
import { yearDays } from '../climate/seasonal.ts'
import type { BoxOutlook } from './box-outlook.ts'
import { dayNumber } from './box-sightings.ts'
import { closedBox } from './closed-box.ts'
import type { World } from './ports.ts'
import { reckonGel, type GelCaution, type GelReckoning } from './reckon-gel.ts'
import { refresh } from './refresh.ts'
import type { BoxLine } from './show-store.ts'
import { storeData, type StoreData } from './store-data.ts'
import { reckonStore } from './store-reckoned.ts'

export interface KeepAsked {
  readonly projectId: string
  /** By its name or its id. */
  readonly box: string
  readonly limitRhPercent: number
  readonly days: number
}

/** The dry gel that keeps a box under a limit for a span, in one filling begun today. */
export interface KeepShown {
  readonly box: string
  readonly today: IsoDate
  readonly limitRhPercent: number
  readonly days: number
  /** Dry gel; null: no amount does, or none is sure to. */
  readonly gelKg: { readonly nominal: number | null; readonly nineInTen: number | null }
  readonly holdsKg: number | null
  /** What finds in it bear at most, by today's plans; null: nothing limits them. */
  readonly bearsRhPercent: number | null
  readonly startRhPercent: number
  readonly airChangesPerDay: Range
  readonly airChangesFrom: BoxOutlook['airChangesFrom']
  readonly surroundings: Surroundings
  readonly cautions: readonly GelCaution[]
}

/** What is missing so that no gel can be reckoned. */
export interface CannotKeep {
  readonly box: string
  readonly because: 'tub' | 'no-volume'
}

interface Of {
  readonly data: StoreData
  readonly line: BoxLine
  readonly surroundings: Surroundings
  readonly asked: KeepAsked
}

/** Its own leak where it was learnt, else as somebody wrote it, else as lidded boxes are supposed to be. */
function leakOf(
  world: World,
  { outlook }: BoxLine,
  written: Range | null,
): Pick<KeepShown, 'airChangesPerDay' | 'airChangesFrom'> {
  if (outlook !== null)
    return { airChangesPerDay: outlook.airChangesPerDay, airChangesFrom: outlook.airChangesFrom }
  if (written !== null) return { airChangesPerDay: written, airChangesFrom: 'written' }
  const value = (end: string) => figureValue(world.knowledge, `air-exchange-plastic-box${end}`)
  return {
    airChangesPerDay: { low: value('-low'), nominal: value(''), high: value('-high') },
    airChangesFrom: 'assumed',
  }
}

const finite = (kg: number) => (kg === Infinity ? null : kg)

function keepOf(world: World, { data, line, surroundings, asked }: Of): KeepShown | CannotKeep {
  const { box, room: name } = line
  const room = data.rooms.find(({ given: one }) => one.room === name)?.given
  // However much gel it holds and since when, this is about a filling that begins today.
  const filled = { ...box.given, gel_kg: 1, gel_conditioned_on: data.today }
  const entries = data.diary.get(box.given.box) ?? []
  const closed = closedBox({ box: filled, room, entries, limitRhPercent: null }, world.knowledge)
  if (typeof closed === 'string')
    return { box: box.given.box, because: closed === 'tub' ? 'tub' : 'no-volume' }
  const leak = leakOf(world, line, closed.airChangesPerDay)
  const { airChangesPerDay } = leak
  const { meanRhPercent, swingRhPercent, highestOn } = surroundings
  const ahead = (((highestOn - dayNumber(data.today)) % yearDays) + yearDays) % yearDays
  const startRhPercent = figureValue(world.knowledge, 'gel-start-rh-unwritten')
  const reckoned: GelReckoning = reckonGel(
    {
      volumeL: closed.volumeL,
      airChangesPerDay,
      film: null,
      outsideRhPercent: meanRhPercent,
      season: swingRhPercent === 0 ? null : { swingRhPercent, dampestInDays: ahead },
      startRhPercent,
      limitRhPercent: asked.limitRhPercent,
      temperatureC: closed.temperatureC,
      reservoirGPerKgPercent: null,
      gelKg: null,
      days: asked.days,
    },
    world.knowledge,
  )
  return {
    box: box.given.box,
    today: data.today,
    limitRhPercent: asked.limitRhPercent,
    days: asked.days,
    gelKg: { nominal: finite(reckoned.gelKg!.nominal), nineInTen: finite(reckoned.gelKg!.p90) },
    holdsKg: box.given.gel_kg ?? null,
    bearsRhPercent: line.needs?.max ?? null,
    startRhPercent,
    ...leak,
    surroundings,
    cautions: reckoned.cautions,
  }
}

/** How much dry gel keeps a box under a limit for so many days, with the leak that the box itself has shown. */
export async function showKeep(world: World, asked: KeepAsked): Answer<KeepShown | CannotKeep> {
  const fresh = await refresh(world, asked.projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const read = await storeData(world, reads, asked.projectId)
    if (!read.ok) return read
    const data = read.value
    const reckoned = await reckonStore(world, data)
    const line = reckoned.lines.find(({ box }) => box.id === asked.box || box.given.box === asked.box)
    if (!line) return refused(missing('box', asked.box))
    const surroundings = line.outlook?.surroundings ?? reckoned.surroundings(line.room)
    return given(keepOf(world, { data, line, surroundings, asked }))
  })
}
