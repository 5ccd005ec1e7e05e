import { DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite'
import type { SqliteDatabase, SqliteStatement } from 'kysely'

/**
 * What Kysely's SQLite driver asks of a database, over node:sqlite. Four traps of node:sqlite are closed here and nowhere
 * else: whole numbers would be stored as 5.0, a Date would be taken for named parameters and stored as null, rows have no
 * prototype and React refuses them, and a write transaction that begins with a read can fail half way.
 */
const keptStatements = 200

function bound(value: unknown): SQLInputValue {
  if (value === null || typeof value === 'string' || typeof value === 'bigint' || value instanceof Uint8Array)
    return value
  if (typeof value === 'number') {
    if (Number.isSafeInteger(value)) return BigInt(value)
    if (Number.isFinite(value)) return value
  }
  throw new TypeError(
    `SQLite takes text, finite numbers, bytes and null, not ${Object.prototype.toString.call(value)}`,
  )
}

function statement(prepared: StatementSync): SqliteStatement {
  return {
    reader: prepared.columns().length > 0,
    all: (parameters) => prepared.all(...parameters.map(bound)).map((row) => ({ ...row })),
    run: (parameters) => prepared.run(...parameters.map(bound)),
    *iterate(parameters) {
      for (const row of prepared.iterate(...parameters.map(bound))) yield { ...row }
    },
  }
}

export function openSqlite(file: string, readOnly: boolean): SqliteDatabase {
  const database = new DatabaseSync(file, { timeout: 5000, enableForeignKeyConstraints: true })
  database.exec('pragma journal_mode = wal')
  // In WAL, NORMAL would not wait for the disk at commit: a power cut could take back what was acknowledged.
  database.exec('pragma synchronous = full')
  if (readOnly) database.exec('pragma query_only = 1')
  const kept = new Map<string, SqliteStatement>()
  return {
    close: () => database.close(),
    prepare(sql) {
      const known = kept.get(sql)
      if (known) return known
      const fresh = statement(database.prepare(sql === 'begin' ? 'begin immediate' : sql))
      if (kept.size >= keptStatements) kept.delete(kept.keys().next().value!)
      kept.set(sql, fresh)
      return fresh
    },
  }
}
