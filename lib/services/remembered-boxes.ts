import { createHash } from 'node:crypto'
import type { Day } from '../boxes/box.ts'
import { carriedOver } from '../boxes/leak-carried.ts'
import { tradePrior } from '../boxes/leak-figures.ts'
import type { LeakPrior } from '../boxes/leak-prior.ts'
import { learnLeak, type LeakEstimate } from '../boxes/learn.ts'
import { poolLeaks } from '../boxes/pooled.ts'
import type { BoxKind } from '../record/places.ts'
import type { LogNext } from '../boxes/log-next.ts'
import type { BoxReckoned } from './box-outlook.ts'
import { learnBox, outlookOf, sinceStart, type Learnt, type Reckonable } from './box-reckoning.ts'
import { inBreaths } from './breath.ts'
import type { Store, World } from './ports.ts'

export interface ToLearn extends Reckonable {
  /** Of the kept box. */
  readonly id: string
  readonly kind: BoxKind
  /** The same box with the gel it held before, and what was seen of it then; null where nobody knows of any. */
  readonly earlier: Reckonable | null
}

/** What was learnt of a box, and from what: learnt anew only where that has changed. */
interface Remembered {
  readonly key: string
  /** From its own sightings and the trade's range, for others of its model. */
  readonly alone: LeakEstimate
  readonly before: LeakEstimate | null
  priorKey: string
  learnt: Learnt | null
  /** What it comes to on the day it was last asked for. */
  outlook: { readonly today: Day; readonly reckoned: BoxReckoned } | null
}

interface Memory {
  readonly boxes: Map<string, Remembered>
  pooledKey: string
  pooled: ReadonlyMap<string, LeakPrior>
  logNextKey: string
  logNext: readonly LogNext[]
}

/** A store is looked at far more often than it is read; what was learnt stays as long as the process. */
const memories = new WeakMap<Store, Map<string, Memory>>()

function memoryOf(store: Store, projectId: string): Memory {
  const own = memories.get(store) ?? new Map<string, Memory>()
  memories.set(store, own)
  const known: Memory = own.get(projectId) ?? {
    boxes: new Map(),
    pooledKey: '',
    pooled: new Map(),
    logNextKey: '',
    logNext: [],
  }
  own.set(projectId, known)
  return known
}

const hashOf = (value: unknown) => createHash('sha256').update(JSON.stringify(value)).digest('base64')

function learnAlone({ box, surroundings, sightings, earlier, kind }: ToLearn, world: World) {
  const trade = tradePrior(world.knowledge, kind)
  const alone = learnLeak(box, surroundings, sinceStart({ box, surroundings, sightings }), trade)
  const seen = earlier === null ? [] : sinceStart(earlier)
  const before =
    earlier === null || seen.length === 0
      ? null
      : learnLeak(earlier.box, earlier.surroundings, seen, writtenOr(earlier, trade))
  return { alone, before }
}

const writtenOr = ({ box: { airChangesPerDay } }: Reckonable, otherwise: LeakPrior): LeakPrior =>
  airChangesPerDay === null ? otherwise : { ...otherwise, airChangesPerDay, from: 'written' }

/** What a box told with its last gel says most; then what was written of it, then what its like told. */
function priorOf(of: ToLearn, { before }: Remembered, pooled: LeakPrior): LeakPrior {
  return before !== null && !before.saysLittle ? carriedOver(before) : writtenOr(of, pooled)
}

/** What is likely of each box, from its own sightings and from those of its like, by the box's name. */
export async function reckonedBoxes(
  world: World,
  projectId: string,
  boxes: readonly ToLearn[],
  today: Day,
): Promise<ReadonlyMap<string, BoxReckoned>> {
  const memory = memoryOf(world.store, projectId)
  const { hash } = world.knowledge
  const known: { readonly of: ToLearn; readonly own: Remembered }[] = []
  for await (const some of inBreaths(boxes)) {
    for (const of of some) {
      const key = hashOf([hash, of])
      const remembered = memory.boxes.get(of.id)
      const own =
        remembered?.key === key
          ? remembered
          : { key, ...learnAlone(of, world), priorKey: '', learnt: null, outlook: null }
      memory.boxes.set(of.id, own)
      known.push({ of, own })
    }
  }
  const pooledKey = hashOf(known.map(({ own: { key } }) => key))
  if (memory.pooledKey !== pooledKey) {
    memory.pooled = pooledPriors(world, known)
    memory.pooledKey = pooledKey
  }
  const reckoned = new Map<string, BoxReckoned>()
  for await (const some of inBreaths(known)) {
    for (const { of, own } of some) {
      const pooled = memory.pooled.get(of.box.name) ?? tradePrior(world.knowledge, of.kind)
      reckoned.set(of.box.name, reckonOne(of, own, priorOf(of, own, pooled), today))
    }
  }
  return reckoned
}

function reckonOne(of: ToLearn, own: Remembered, prior: LeakPrior, today: Day): BoxReckoned {
  const { low, nominal, high } = prior.airChangesPerDay
  // A strip read elsewhere moves what its like are thought of by a hair: that is no reason to learn a box anew.
  const priorKey = [prior.from, ...[low, nominal, high].map((value) => value.toPrecision(2))].join(' ')
  if (own.learnt === null || own.priorKey !== priorKey) {
    own.learnt = learnBox(of, prior, today)
    own.priorKey = priorKey
    own.outlook = null
  }
  own.outlook =
    own.outlook?.today === today ? own.outlook : { today, reckoned: outlookOf(of, own.learnt, today) }
  return own.outlook.reckoned
}

/** Where a logger would tell most: long to reckon, and hardly another while the same is asked. */
export function rememberedLogNext(
  { store }: World,
  projectId: string,
  asked: unknown,
  reckon: () => readonly LogNext[],
): readonly LogNext[] {
  const memory = memoryOf(store, projectId)
  const key = hashOf(asked)
  if (memory.logNextKey !== key) {
    memory.logNext = reckon()
    memory.logNextKey = key
  }
  return memory.logNext
}

/** Boxes of one kind have one trade's range, so each kind is pooled by itself. */
function pooledPriors(
  world: World,
  known: readonly { readonly of: ToLearn; readonly own: Remembered }[],
): ReadonlyMap<string, LeakPrior> {
  const byKind = Map.groupBy(known, ({ of }) => of.kind)
  return new Map(
    [...byKind].flatMap(([kind, some]) => [
      ...poolLeaks(
        some.map(({ of: { box, surroundings }, own }) => ({ box, surroundings, estimate: own.alone })),
        tradePrior(world.knowledge, kind),
      ),
    ]),
  )
}
