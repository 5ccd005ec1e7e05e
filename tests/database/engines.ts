import fs from 'node:fs'
import os from 'node:os'
import path from 'node:path'
import pg from 'pg'
import { connect, type Connected, type Where } from '../../lib/database/engine.ts'
import { migrate } from '../../lib/database/migrate.ts'
import { storeOver } from '../../lib/database/store.ts'
import type { Store } from '../../lib/services/ports.ts'
import { outsideSubset } from './subset.ts'

export type Engine = 'sqlite' | 'postgresql'

const server = process.env['QUIETMETAL_TEST_POSTGRES'] ?? ''

/** SQLite always; PostgreSQL where a server is named (`.ci/run` starts one). */
export const engines: readonly Engine[] = server === '' ? ['sqlite'] : ['sqlite', 'postgresql']

export interface Opened {
  readonly where: Where
  readonly connected: Connected
  readonly store: Store
  /** Every statement sent so far that the subset does not allow. */
  readonly strays: () => readonly string[]
  readonly close: () => Promise<void>
}

async function admin(sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: server })
  await client.connect()
  await client.query(sql)
  await client.end()
}

/** An empty place of its own on the engine, and how to clear it away. */
export async function emptyPlace(
  engine: Engine,
): Promise<{ readonly where: Where; readonly clear: () => Promise<void> }> {
  if (engine === 'sqlite') {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'quietmetal-'))
    const clear = async () => fs.rmSync(folder, { recursive: true, force: true })
    return { where: { kind: 'sqlite', file: path.join(folder, 'data', 'test.sqlite') }, clear }
  }
  const name = `test_${process.pid}_${Math.random().toString(36).slice(2)}`
  await admin(`create database ${name}`)
  const url = new URL(server)
  url.pathname = `/${name}`
  return {
    where: { kind: 'postgresql', url: url.href },
    clear: () => admin(`drop database ${name} with (force)`),
  }
}

/** An empty, migrated database of the engine, whose every statement is held against the subset. */
export async function openEmpty(engine: Engine): Promise<Opened> {
  const { where, clear } = await emptyPlace(engine)
  const strays: string[] = []
  const connected = connect(where, (sql) => {
    if (outsideSubset(sql) !== null) strays.push(sql)
  })
  await migrate(connected.writer)
  const close = async () => {
    await connected.close()
    await clear()
  }
  return { where, connected, store: storeOver(connected), strays: () => strays, close }
}
