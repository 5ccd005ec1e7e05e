import type { Kysely } from 'kysely'
import { refused, type Outcome } from '../base/outcome.ts'
import type { Actor } from '../services/kept.ts'
import type { Reads, Store, Writes } from '../services/ports.ts'
import type { Trouble } from '../base/trouble.ts'
import { changeReads, writeTrail } from './changes.ts'
import { isUnavailable, mayBeTriedAgain, type Connected } from './engine.ts'
import { diaryReads, diaryWrites } from './diary.ts'
import { findReads, findWrites } from './finds.ts'
import type { Hand } from './hand.ts'
import { identificationReads, identificationWrites } from './identifications.ts'
import { importReads, importWrites } from './imports.ts'
import { logFileReads, logFileWrites } from './log-files.ts'
import { loggerReads, loggerWrites } from './loggers.ts'
import { boxReads, boxWrites, roomReads, roomWrites } from './places.ts'
import { idsOf, peopleReads } from './people.ts'
import { planReads, planWrites } from './plans.ts'
import { projectReads, projectWrites } from './projects.ts'
import { readingReads, readingWrites } from './readings.ts'
import { recordReads, recordWrites } from './records.ts'
import { siteReads, siteWrites } from './sites.ts'
import { standingReads, standingWrites } from './standings.ts'
import { stayReads, stayWrites } from './stays.ts'
import { settingReads, settingWrites } from './store-settings.ts'
import type { Tables } from './tables.ts'

function readsOf(db: Kysely<Tables>): Reads {
  return {
    projects: projectReads(db),
    sites: siteReads(db),
    people: peopleReads(db),
    finds: findReads(db),
    records: recordReads(db),
    plans: planReads(db),
    standings: standingReads(db),
    imports: importReads(db),
    rooms: roomReads(db),
    boxes: boxReads(db),
    loggers: loggerReads(db),
    logFiles: logFileReads(db),
    readings: readingReads(db),
    diary: diaryReads(db),
    stays: stayReads(db),
    settings: settingReads(db),
    identifications: identificationReads(db),
    changes: changeReads(db),
  }
}

function writesOf(hand: Hand): Writes {
  return {
    people: peopleReads(hand.db),
    changes: changeReads(hand.db),
    projects: projectWrites(hand),
    sites: siteWrites(hand),
    finds: findWrites(hand),
    records: recordWrites(hand),
    plans: planWrites(hand),
    standings: standingWrites(hand),
    imports: importWrites(hand),
    rooms: roomWrites(hand),
    boxes: boxWrites(hand),
    loggers: loggerWrites(hand),
    logFiles: logFileWrites(hand),
    readings: readingWrites(hand),
    diary: diaryWrites(hand),
    stays: stayWrites(hand),
    settings: settingWrites(hand),
    identifications: identificationWrites(hand),
  }
}

/** Carries a refusal out of a transaction, so that nothing of it is kept. */
class TakenBack extends Error {
  readonly trouble: Trouble
  constructor(trouble: Trouble) {
    super('taken back')
    this.trouble = trouble
  }
}

const tries = 5
const pause = (attempt: number) =>
  new Promise((resolve) => setTimeout(resolve, 2 ** attempt * 20 * (0.5 + Math.random())))

async function writeOnce<Value>(
  db: Kysely<Tables>,
  what: string,
  by: Actor,
  work: (writes: Writes) => Promise<Outcome<Value, Trouble>>,
): Promise<Outcome<Value, Trouble>> {
  return db.transaction().execute(async (transaction) => {
    const at = Date.now()
    const hand: Hand = { db: transaction, at, ...(await idsOf(transaction, by, at)), touched: new Map() }
    const outcome = await work(writesOf(hand))
    if (!outcome.ok) throw new TakenBack(outcome.problems)
    await writeTrail(hand, what, by)
    return outcome
  })
}

function troubleOf(flaw: unknown): Outcome<never, Trouble> {
  if (flaw instanceof TakenBack) return refused(flaw.trouble)
  if (isUnavailable(flaw)) return refused({ kind: 'unavailable', because: (flaw as Error).message })
  throw flaw
}

export function storeOver({ reader, writer, close }: Connected): Store {
  const reads = readsOf(reader)
  return {
    close,
    read: (work) => work(reads).catch(troubleOf),
    async write(what, by, work) {
      for (let attempt = 1; ; attempt += 1) {
        try {
          return await writeOnce(writer, what, by, work)
        } catch (flaw) {
          if (!mayBeTriedAgain(flaw) || attempt === tries) return troubleOf(flaw)
        }
        await pause(attempt)
      }
    },
  }
}
