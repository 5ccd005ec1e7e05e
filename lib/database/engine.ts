import fs from 'node:fs'
import path from 'node:path'
import { Kysely, PostgresDialect, SqliteDialect, type LogEvent } from 'kysely'
import pg from 'pg'
import { openSqlite } from './sqlite.ts'
import type { Tables } from './tables.ts'

/** Where the data lies. Everything that differs between the engines stands in this file (and the shim it opens). */
export type Where =
  | { readonly kind: 'sqlite'; readonly file: string }
  | { readonly kind: 'postgresql'; readonly url: string }

export interface Connected {
  /** Reads outside a transaction: on SQLite a connection of its own, so that nobody waits for an import. */
  readonly reader: Kysely<Tables>
  readonly writer: Kysely<Tables>
  readonly close: () => Promise<void>
}

/** Hears every statement as it is sent; the tests hold them against the ban list. */
export type Heard = (sql: string) => void

function logTo(heard: Heard | undefined): { log?: (event: LogEvent) => void } {
  return heard === undefined ? {} : { log: (event) => heard(event.query.sql) }
}

function sqlite(file: string, heard: Heard | undefined): Connected {
  fs.mkdirSync(path.dirname(file), { recursive: true })
  const open = (readOnly: boolean) =>
    new Kysely<Tables>({
      dialect: new SqliteDialect({ database: openSqlite(file, readOnly) }),
      ...logTo(heard),
    })
  const writer = open(false)
  const reader = open(true)
  const close = async () => {
    // The driver closes its file only once it was used.
    await Promise.all(
      [reader, writer].map((one) => one.selectNoFrom((build) => build.lit(1).as('one')).execute()),
    )
    await reader.destroy()
    await writer.destroy()
  }
  return { reader, writer, close }
}

const int8 = 20

function postgresql(url: string, heard: Heard | undefined): Connected {
  const types: pg.CustomTypesConfig = {
    // Times in milliseconds fit a JavaScript number; pg gives int8 as text otherwise.
    getTypeParser: (oid: number) =>
      oid === int8 ? Number : (pg.types.getTypeParser(oid) as (value: string) => unknown),
  }
  const pool = new pg.Pool({ connectionString: url, types, max: 8, connectionTimeoutMillis: 5000 })
  // A server that goes away while a connection rests must not end this process; the next query tells of it.
  pool.on('error', () => undefined)
  const both = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }), ...logTo(heard) })
  return { reader: both, writer: both, close: () => both.destroy() }
}

export function connect(where: Where, heard?: Heard): Connected {
  return where.kind === 'sqlite' ? sqlite(where.file, heard) : postgresql(where.url, heard)
}

interface EngineError {
  readonly code?: string
  readonly errcode?: number
}

const own = (flaw: unknown): EngineError => (flaw instanceof Error ? (flaw as EngineError) : {})

/** Extended SQLite codes carry the plain one in their lowest byte. */
const plain = (errcode: number | undefined) => (errcode === undefined ? -1 : errcode & 0xff)

const sqliteBusy = new Set([5, 6])
const sqliteUnusable = new Set([5, 6, 7, 8, 10, 11, 13, 14, 26])
const postgresPassing = new Set(['40001', '40P01'])
const network = new Set(['ECONNREFUSED', 'ECONNRESET', 'ENOTFOUND', 'ETIMEDOUT', 'EHOSTUNREACH', 'EPIPE'])

/** Another writer was in the way; the same work may succeed in a moment. */
export function mayBeTriedAgain(flaw: unknown): boolean {
  const { code, errcode } = own(flaw)
  return sqliteBusy.has(plain(errcode)) || postgresPassing.has(code ?? '')
}

/** The database cannot be reached or written: nobody's mistake, and to be told as such. */
export function isUnavailable(flaw: unknown): boolean {
  const { code = '', errcode } = own(flaw)
  if (sqliteUnusable.has(plain(errcode)) || network.has(code) || postgresPassing.has(code)) return true
  if (flaw instanceof Error && /timeout|terminated/i.test(flaw.message) && flaw.message.includes('onnection'))
    return true
  return /^(08|28|3D|53|57P|58)/.test(code)
}
