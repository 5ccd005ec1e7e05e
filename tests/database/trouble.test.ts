import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { given } from '../../lib/base/outcome.ts'
import { connect, isUnavailable, mayBeTriedAgain } from '../../lib/database/engine.ts'
import { openSqlite } from '../../lib/database/sqlite.ts'
import { storeOver } from '../../lib/database/store.ts'
import { openEmpty, type Opened } from './engines.ts'
import { assistant } from './samples.ts'

const flaw = (about: object) => Object.assign(new Error('said by the engine'), about)

describe('what an engine says went wrong', () => {
  it.each([
    ['SQLite busy', { errcode: 5 }, true, true],
    ['SQLite busy with a snapshot', { errcode: 517 }, true, true],
    ['SQLite disk full', { errcode: 13 }, false, true],
    ['SQLite not a database', { errcode: 26 }, false, true],
    ['SQLite broken constraint', { errcode: 787 }, false, false],
    ['PostgreSQL serialisation failure', { code: '40001' }, true, true],
    ['PostgreSQL deadlock', { code: '40P01' }, true, true],
    ['PostgreSQL shutting down', { code: '57P01' }, false, true],
    ['PostgreSQL wrong password', { code: '28P01' }, false, true],
    ['PostgreSQL broken constraint', { code: '23503' }, false, false],
    ['nobody listening', { code: 'ECONNREFUSED' }, false, true],
    ['a fault of ours', {}, false, false],
  ])('%s', (_, about, again, unavailable) => {
    expect([mayBeTriedAgain(flaw(about)), isUnavailable(flaw(about))]).toEqual([again, unavailable])
  })
})

describe('a server that is not there', () => {
  it('is trouble, not a fault', async () => {
    const store = storeOver(connect({ kind: 'postgresql', url: 'postgresql://nobody@127.0.0.1:1/none' }))
    const answer = await store.read(async (reads) => given(await reads.projects.all()))
    expect(answer).toMatchObject({ ok: false, problems: { kind: 'unavailable' } })
    await store.close()
  })
})

describe('a disk that is full', () => {
  let opened: Opened
  beforeAll(async () => {
    opened = await openEmpty('sqlite')
  })
  afterAll(() => opened.close())

  const add = (name: string) =>
    opened.store.write('start-project', assistant, async (writes) =>
      given(await writes.projects.add({ name, invented: false })),
    )

  it('keeps nothing of what did not fit, says so, and goes on when there is room', async () => {
    expect(await add('Before')).toMatchObject({ ok: true })
    const { writer } = opened.connected
    const limit = async (pages: number) => {
      const raw = await writer.executeQuery({
        sql: `pragma max_page_count = ${pages}`,
        parameters: [],
      } as never)
      return raw.rows
    }
    await limit(1)
    expect(await add('x'.repeat(200_000))).toMatchObject({ ok: false, problems: { kind: 'unavailable' } })
    await limit(1_000_000)
    expect(await add('After')).toMatchObject({ ok: true })
    const all = await opened.store.read(async (reads) =>
      given((await reads.projects.all()).map(({ name }) => name)),
    )
    expect(all).toEqual({ ok: true, value: ['Before', 'After'] })
  })
})

describe('several processes on one file', () => {
  it('read while another writes, and see what was kept before', async () => {
    const opened = await openEmpty('sqlite')
    if (opened.where.kind !== 'sqlite') throw new Error('SQLite was asked for')
    const other = openSqlite(opened.where.file, false)
    other.prepare('begin').run([])
    other.prepare("insert into device values ('d', 1, 0, 0, 'p', 'd', 'other process')").run([])
    const projects = await opened.store.read(async (reads) => given(await reads.projects.all()))
    expect(projects).toEqual({ ok: true, value: [] })
    other.prepare('rollback').run([])
    other.close()
    await opened.close()
  })
})
