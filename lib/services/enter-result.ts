import { isDeepStrictEqual } from 'node:util'
import type { IsoDate } from '../base/calendar.ts'
import { given, refused, type Outcome } from '../base/outcome.ts'
import { missing, type Answer, type Trouble } from '../base/trouble.ts'
import { resultNote } from '../wording/identification.ts'
import { bringUpToDate, enterRecords } from './enter-records.ts'
import type { Identification, IdentificationGiven } from './identification.ts'
import { identify } from './identify.ts'
import type { Actor, Find, KeptRecord } from './kept.ts'
import type { Reads, World, Writes } from './ports.ts'
import { recordWithResult } from './record-with-result.ts'
import { resultFaults } from './result-faults.ts'
import { within } from './within.ts'

/** A result that came in: of one part of a find, by one method. */
export interface ResultGiven {
  readonly findId: string
  readonly component: string
  /** Empty where nothing was measured and somebody judged from all that is known. */
  readonly method: string
  readonly on: IsoDate
  /** Whose result it is, in words: a name, a laboratory. */
  readonly byWhom: string
  /** Number or place of the report. */
  readonly reference: string
  readonly words: string
  /** What the report says, as the record holds it: `xrf:Cu+Sn`, `radiograph:bright-lines`, `question:answer`. */
  readonly report: readonly string[]
  /** What it then is; null where that is not settled yet. */
  readonly found: { readonly matter: string; readonly interpretation: string } | null
}

export interface ResultEntered {
  readonly findId: string
  /** The record that holds the result. */
  readonly recordId: string
  /** The same result was there before. */
  readonly alreadyThere: boolean
  readonly identification: Identification | null
}

const identificationOf = (
  { component, method, on, byWhom, reference, words }: ResultGiven,
  { matter, interpretation }: NonNullable<ResultGiven['found']>,
): IdentificationGiven => ({
  component,
  matter,
  interpretation,
  method,
  on,
  byWhom,
  reference,
  words,
})

interface Stands {
  readonly find: Find
  readonly newest: KeptRecord
}

async function standing(reads: Reads, findId: string): Promise<Stands | null> {
  const find = await reads.finds.byId(findId)
  const newest = (await reads.records.ofFinds([findId])).at(-1)
  return find && newest ? { find, newest } : null
}

/** The box it lay in on that day, by all that was recorded and moved: the new record must not move it anywhere. */
async function boxOn(reads: Reads, findId: string, on: IsoDate): Promise<string | null> {
  const stays = await reads.stays.ofFinds([findId])
  return stays.findLast(({ from }) => from === null || from <= on)?.box ?? null
}

async function keepRecord(
  writes: Writes,
  world: World,
  { find, newest }: Stands,
  asked: ResultGiven,
  by: Actor,
): Promise<{ readonly recordId: string; readonly isNew: boolean }> {
  const { record } = newest
  const day =
    record.recorded_on !== undefined && record.recorded_on > asked.on ? record.recorded_on : asked.on
  const next = recordWithResult(record, asked, {
    on: asked.on,
    by: by.name,
    box: await boxOn(writes, find.id, day),
    note: resultNote(asked, record.components.length > 1, world.knowledge),
  })
  if (next === null) return { recordId: newest.id, isNew: false }
  const { added } = await enterRecords(writes, world, find.projectId, [next])
  return { recordId: added[0] ?? newest.id, isNew: added.length > 0 }
}

const trimmed = (asked: ResultGiven): ResultGiven => ({
  ...asked,
  byWhom: asked.byWhom.trim(),
  reference: asked.reference.trim(),
  words: asked.words.trim(),
})

const tries = 5

function keepAll(world: World, asked: ResultGiven, find: Find, by: Actor): Answer<ResultEntered> {
  const { findId, found } = asked
  return world.store.write('enter-result', by, async (writes) => {
    // Its standing is written first: whoever enters a result of the same find at this moment waits, and builds on this.
    await bringUpToDate(writes, world, [find])
    const now = await standing(writes, findId)
    if (now === null) return refused(missing('find', findId))
    // What is found is entered before the result, so that it is held against what was thought without it.
    let identification: Identification | null = null
    if (found !== null) {
      const told = identificationOf(asked, found)
      const entered = await identify(within(world, writes), { findId, ...told }, by)
      if (!entered.ok) return entered
      identification = entered.value.findLast((one) => isDeepStrictEqual(one.given, told)) ?? null
    }
    const nothingMeasured = asked.report.length === 0 && found !== null
    const { recordId, isNew } = nothingMeasured
      ? { recordId: now.newest.id, isNew: false }
      : await keepRecord(writes, world, now, asked, by)
    // Who began earlier and waited longer would stand behind the one it builds on: it begins anew.
    const last = await standing(writes, findId)
    if (last?.newest.id !== recordId)
      return refused({ kind: 'changed-meanwhile', what: 'record', id: recordId })
    return given({ findId, recordId, alreadyThere: !nothingMeasured && !isNew, identification })
  })
}

/**
 * A result comes in. It is kept as a new condition record of its day, with all that the newest one says: nothing is
 * overwritten. Where somebody says what it is, that is entered too, with what was thought before; both are kept or neither.
 * Everything that is wrong is told at once.
 */
export async function enterResult(
  world: World,
  given_: ResultGiven,
  by: Actor,
): Promise<Outcome<ResultEntered, readonly Trouble[]>> {
  const asked = trimmed(given_)
  const { findId } = asked
  const stood = await world.store.read(async (reads) => given(await standing(reads, findId)))
  if (!stood.ok) return refused([stood.problems])
  if (stood.value === null) return refused([missing('find', findId)])
  const faults = resultFaults(asked, stood.value.newest.record, world)
  if (faults.length > 0) return refused(faults)
  for (let attempt = 1; ; attempt += 1) {
    const kept = await keepAll(world, asked, stood.value.find, by)
    if (kept.ok) return kept
    if (kept.problems.kind !== 'changed-meanwhile' || attempt === tries) return refused([kept.problems])
  }
}
