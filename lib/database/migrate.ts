import type { Kysely } from 'kysely'
import { underLease } from './lease.ts'
import { steps, type Step } from './migrations.ts'
import type { Tables } from './tables.ts'

/**
 * The two tables that migrating itself needs; they cannot be steps of it. PostgreSQL lets one of two processes that create
 * the same table at the same moment fail; its second try finds the table there.
 */
async function prepare({ schema }: Kysely<Tables>): Promise<void> {
  const lock = schema
    .createTable('app_lock')
    .ifNotExists()
    .addColumn('name', 'text', (column) => column.primaryKey().notNull())
    .addColumn('holder', 'text', (column) => column.notNull())
    .addColumn('until_ms', 'bigint', (column) => column.notNull())
  const migration = schema
    .createTable('migration')
    .ifNotExists()
    .addColumn('step', 'text', (column) => column.primaryKey().notNull())
    .addColumn('done_at', 'bigint', (column) => column.notNull())
  for (const table of [lock, migration]) await table.execute().catch(() => table.execute())
}

/** Brings the tables up to date and gives the names of the steps it took. A step is noted after it is done, never before. */
export async function migrate(
  db: Kysely<Tables>,
  wanted: readonly Step[] = steps,
): Promise<readonly string[]> {
  await prepare(db)
  return underLease(db, 'migration', async (renew) => {
    const done = new Set((await db.selectFrom('migration').select('step').execute()).map(({ step }) => step))
    const taken: string[] = []
    for (const step of wanted.filter(({ name }) => !done.has(name))) {
      await renew()
      await step.run(db)
      await db.insertInto('migration').values({ step: step.name, done_at: Date.now() }).execute()
      taken.push(step.name)
    }
    return taken
  })
}
