import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { packBetter } from '../boxes/bins-better.ts'
import { packAtOnce } from '../boxes/bins-first.ts'
import { gelFiguresOf, gelForPacking, packFiguresOf } from '../boxes/pack-gel.ts'
import type { PackBox, PackFind } from '../boxes/pack-find.ts'
import type { PackProposal } from '../boxes/pack-proposal.ts'
import type { Begin } from '../boxes/pack-residents.ts'
import { proposalOf } from '../boxes/pack-told.ts'
import { packStoreBoxes } from '../boxes/pack.ts'
import { wordsOf } from './box-line.ts'
import type { KeptRecord, Project } from './kept.ts'
import { packBox, packFind } from './pack-finds.ts'
import { proveFewest } from './pack-proof.ts'
import type { Reads, World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'
import { stopsInWords } from './stops-heard.ts'
import { storeData, type StoreData } from './store-data.ts'

export interface PackAsked {
  readonly projectId: string
  readonly begin: Begin
  /** Boxes that could be had, each like one that is there. */
  readonly more: readonly { readonly like: string; readonly count: number }[]
  /** Look longer for fewer boxes and less gel. */
  readonly longer: boolean
}

/** A proposal and no more: nothing is moved until somebody says so, find by find. */
export interface StorePacking {
  readonly project: Project
  readonly today: IsoDate
  readonly asked: PackAsked
  readonly proposal: PackProposal
  /** No packing with fewer boxes holds these finds. */
  readonly provedFewest: boolean
  readonly finds: ReadonlyMap<string, Standing>
  /** Rooms and shelves of the boxes, by their names. */
  readonly places: ReadonlyMap<string, Pick<PackBox, 'room' | 'shelf'>>
  /** Ids of the boxes by their names. */
  readonly boxIds: ReadonlyMap<string, string>
  /** Boxes of the list of each make, the first of them by name, for asking how many more could be had. */
  readonly makes: readonly PackMake[]
  /** Finds that are out of the store and were left out. */
  readonly out: readonly Standing[]
  /** Boxes in use now, those counted in which finds lie that nobody has listed. */
  readonly usedNow: number
}

export interface PackMake {
  readonly like: string
  readonly model: string
  readonly kind: string
  readonly room: string
  readonly volumeL: number
  readonly boxes: number
}

const stepsAtFirst = (items: number): number =>
  Math.min(60_000, Math.max(20_000, Math.round(12e6 / Math.max(1, items))))
const stepsLonger = (items: number): number => 8 * stepsAtFirst(items)

export async function packStore(world: World, asked: PackAsked): Answer<StorePacking> {
  const fresh = await refresh(world, asked.projectId)
  if (!fresh.ok) return fresh
  const { projectId } = asked
  const read = await world.store.read(async (reads) => {
    if (!(await reads.projects.byId(projectId))) return refused(missing('project', projectId))
    const data = await storeData(world, reads, projectId)
    if (!data.ok) return data
    return given({ data: data.value, records: await newestRecords(reads, data.value) })
  })
  if (!read.ok) return read
  const { data, records } = read.value
  const standings = [...data.standings.values()].flat()
  const out = standings.filter(({ findId }) => data.outings.get(findId)?.at(-1)?.to === null)
  const away = new Set(out.map(({ findId }) => findId))
  const here = standings.filter(({ findId }) => !away.has(findId) && records.has(findId))
  const finds = here.map((one) => packFind(one, records.get(one.findId)!.record, world.knowledge, data.today))
  const figures = packFiguresOf(world.knowledge)
  const gelFor = gelForPacking(gelFiguresOf(world.knowledge), figures)
  const listed = boxesOf(world, data)
  const boxes = [...listed, ...toBeHad(listed, asked.more)]
  const store = { finds, boxes, begin: asked.begin, figures, gelFor }
  const { task, packing } = packStoreBoxes(store, (bins) => {
    const steps = (asked.longer ? stepsLonger : stepsAtFirst)(bins.items.length)
    return packBetter(bins, packAtOnce(bins), { seed: 1, steps })
  })
  const { bins } = task.problem
  const proof = await proveFewest(bins, packing)
  const proposal = proposalOf(task, proof.packing)
  return given({
    project: data.project,
    today: data.today,
    asked,
    proposal,
    provedFewest: proof.proved || proposal.used === proposal.atLeast,
    finds: new Map(standings.map((one) => [one.findId, one])),
    places: new Map(listed.map((box) => [box.name ?? '', box])),
    boxIds: new Map(data.boxes.map(({ id, given: box }) => [box.box, id])),
    makes: makesOf(listed),
    out,
    usedNow: usedNow(finds),
  })
}

const findsAtOnce = 500

async function newestRecords(
  reads: Reads,
  { standings }: StoreData,
): Promise<ReadonlyMap<string, KeptRecord>> {
  const ids = [...standings.values()].flat().map(({ findId }) => findId)
  const newest = new Map<string, KeptRecord>()
  for (let at = 0; at < ids.length; at += findsAtOnce)
    for (const record of await reads.records.ofFinds(ids.slice(at, at + findsAtOnce)))
      newest.set(record.findId, record)
  return newest
}

function boxesOf(world: World, { boxes, rooms, diary, today }: StoreData): readonly PackBox[] {
  const byName = new Map(rooms.map(({ given: room }) => [room.room, room]))
  return boxes.map((box) => {
    const { given: own } = box
    const words = wordsOf(box, diary.get(own.box) ?? [])
    const stops = stopsInWords(own.box, words, world.knowledge, today)
    return packBox(own, byName.get(own.room ?? ''), stops.length > 0)
  })
}

function toBeHad(listed: readonly PackBox[], more: PackAsked['more']): readonly PackBox[] {
  return more.flatMap(({ like, count }) => {
    const box = listed.find(({ name }) => name === like)
    return box === undefined || count < 1
      ? []
      : [{ ...box, name: null, shelf: '', count, targetRhPercent: null, stopped: false }]
  })
}

/** Boxes of one model, size and room; only those whose size is written can be planned with. */
function makesOf(listed: readonly PackBox[]): readonly PackMake[] {
  const makes = Map.groupBy(
    listed.filter(({ volumeL }) => volumeL !== null),
    ({ model, kind, room, volumeL, airChangesPerDay }) =>
      JSON.stringify([room, kind, model, volumeL, airChangesPerDay]),
  )
  return [...makes.values()].map((alike) => {
    const { name, model, kind, room, volumeL } = alike[0]!
    return { like: name!, model, kind, room, volumeL: volumeL!, boxes: alike.length }
  })
}

const usedNow = (finds: readonly PackFind[]): number => new Set(finds.flatMap(({ box }) => box ?? [])).size
