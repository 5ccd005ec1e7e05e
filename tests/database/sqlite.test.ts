import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { SqliteDatabase } from 'kysely'
import { openSqlite } from '../../lib/database/sqlite.ts'

describe('node:sqlite under Kysely', () => {
  let database: SqliteDatabase
  beforeAll(() => {
    database = openSqlite(':memory:', false)
    database.prepare('create table t (a, b text)').run([])
  })
  afterAll(() => database.close())

  const ask = (sql: string, ...parameters: readonly unknown[]) => database.prepare(sql).all(parameters)[0]

  it('stores whole numbers as whole numbers', () => {
    expect(ask('select typeof(?) as kind', 5)).toEqual({ kind: 'integer' })
    expect(ask('select ? / ? as quotient', 7, 2)).toEqual({ quotient: 3 })
    database.prepare('insert into t (b) values (?)').run([5])
    expect(ask('select b from t')).toEqual({ b: '5' })
  })

  it('stores other numbers as they are', () => {
    expect(ask('select ? as number', 0.1)).toEqual({ number: 0.1 })
    expect(ask('select ? as time', 1_795_000_000_000)).toEqual({ time: 1_795_000_000_000 })
  })

  it.each([[new Date(0)], [{ a: 1 }], [Number.NaN], [Infinity], [undefined], [true]])(
    'does not take %s',
    (value) => {
      expect(() => ask('select ? as x', value)).toThrow(TypeError)
    },
  )

  it('gives rows that React can pass on', () => {
    expect(Object.getPrototypeOf(ask('select 1 as one'))).toBe(Object.prototype)
  })

  it('knows which statements give rows', () => {
    expect(database.prepare('select 1').reader).toBe(true)
    expect(database.prepare('insert into t (b) values (?) returning b').reader).toBe(true)
    expect(database.prepare('delete from t').reader).toBe(false)
  })

  it('waits for another writer, syncs at commit, checks references', () => {
    expect(ask('pragma busy_timeout')).toEqual({ timeout: 5000 })
    expect(ask('pragma synchronous')).toEqual({ synchronous: 2 })
    expect(ask('pragma foreign_keys')).toEqual({ foreign_keys: 1 })
  })
})
