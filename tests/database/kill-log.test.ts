import { spawn } from 'node:child_process'
import path from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { expect, it } from 'vitest'
import { given } from '../../lib/base/outcome.ts'
import { connect } from '../../lib/database/engine.ts'
import { migrate } from '../../lib/database/migrate.ts'
import { storeOver } from '../../lib/database/store.ts'
import type { Brought } from '../../lib/services/loggers.ts'
import { unpackOriginal } from '../../lib/services/pack-original.ts'
import { emptyPlace } from './engines.ts'
import { assistant } from './samples.ts'

const kills = 5
const child = path.join(import.meta.dirname, 'kill-log-child.ts')

function killedWhileReading(
  file: string,
  projectId: string,
  run: number,
  afterMilliseconds: number,
): Promise<readonly string[]> {
  return new Promise((resolve) => {
    const writer = spawn(process.execPath, [child, file, projectId, String(run)])
    let out = ''
    writer.stdout.on('data', (piece: Buffer) => {
      if (out === '') setTimeout(() => writer.kill('SIGKILL'), afterMilliseconds)
      out += piece.toString()
    })
    // The last line may be cut short; the file it names was kept all the same, but was not told of.
    writer.on('close', () => resolve(out.split('\n').slice(0, -1)))
  })
}

it('keeps a logger file whole with all its readings, or nothing of it, when it is killed over it', async () => {
  const { where, clear } = await emptyPlace('sqlite')
  if (where.kind !== 'sqlite') throw new Error('SQLite was asked for')
  const connected = connect(where)
  await migrate(connected.writer)
  const store = storeOver(connected)
  const begun = await store.write('start-project', assistant, async (writes) =>
    given(await writes.projects.add({ name: 'Killed', invented: true })),
  )
  if (!begun.ok) throw new Error('The project did not begin')
  const acknowledged: string[] = []
  for (let run = 0; run < kills; run += 1)
    acknowledged.push(...(await killedWhileReading(where.file, begun.value.id, run, run * 13)))

  const files = await store.read(async (reads) => given(await reads.logFiles.ofProject(begun.value.id)))
  if (!files.ok) throw new Error('The files cannot be read')
  expect(acknowledged.length).toBeGreaterThanOrEqual(kills)
  expect(files.value.map(({ id }) => id)).toEqual(expect.arrayContaining(acknowledged))
  for (const file of files.value) {
    const packed = await store.read(async (reads) => given(await reads.logFiles.packed(file.id)))
    if (!packed.ok) throw new Error('The parts cannot be read')
    expect((await unpackOriginal(packed.value)).length).toBe(file.bytes)
  }
  const database = new DatabaseSync(where.file)
  const days = database.prepare('select count(*) as days from reading_day').get() as { days: number }
  const told = files.value.flatMap(({ brought }: { readonly brought: readonly Brought[] }) => brought)
  expect(days.days).toBe(told.length * 20)
  const trail = database.prepare("select count(*) as lines from change where what = 'keep-log'").get()
  expect(trail).toMatchObject({ lines: files.value.length })
  database.close()
  await connected.close()
  await clear()
})
