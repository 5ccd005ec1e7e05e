import type { Kysely } from 'kysely'
import { uuidV7 } from '../base/uuid.ts'
import type { Tables } from './tables.ts'

/** Long enough for any one step, short enough that a machine that died does not hold up the next for long. */
const leaseMilliseconds = 60_000
const waitMilliseconds = 100

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds))

async function claim(db: Kysely<Tables>, name: string, holder: string, now: number): Promise<boolean> {
  const until_ms = now + leaseMilliseconds
  await db
    .insertInto('app_lock')
    .values({ name, holder: '', until_ms: 0 })
    .onConflict((on) => on.column('name').doNothing())
    .execute()
  const { numUpdatedRows } = await db
    .updateTable('app_lock')
    .set({ holder, until_ms })
    .where('name', '=', name)
    .where((either) => either.or([either('until_ms', '<', now), either('holder', '=', holder)]))
    .executeTakeFirst()
  return numUpdatedRows === 1n
}

/**
 * Does `work` under a lease that one process at a time can hold, on every engine alike (advisory locks are not the same
 * everywhere). `renew` is to be called between steps.
 */
export async function underLease<T>(
  db: Kysely<Tables>,
  name: string,
  work: (renew: () => Promise<void>) => Promise<T>,
): Promise<T> {
  const holder = uuidV7(Date.now())
  while (!(await claim(db, name, holder, Date.now()))) await pause(waitMilliseconds)
  const renew = async () => {
    if (!(await claim(db, name, holder, Date.now())))
      throw new Error(`The lease ${name} was lost to another process`)
  }
  try {
    return await work(renew)
  } finally {
    await db
      .updateTable('app_lock')
      .set({ until_ms: 0 })
      .where('name', '=', name)
      .where('holder', '=', holder)
      .execute()
  }
}
