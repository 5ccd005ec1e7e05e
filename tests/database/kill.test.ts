import { spawn } from 'node:child_process'
import path from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { expect, it } from 'vitest'
import { connect } from '../../lib/database/engine.ts'
import { migrate } from '../../lib/database/migrate.ts'
import { emptyPlace } from './engines.ts'

const kills = 8
const child = path.join(import.meta.dirname, 'kill-child.ts')

/** Kills the writer a moment after its first acknowledged import and gives what it had acknowledged by then. */
function killedWhileWriting(
  file: string,
  run: number,
  afterMilliseconds: number,
): Promise<readonly string[]> {
  return new Promise((resolve) => {
    const writer = spawn(process.execPath, [child, file, String(run)])
    let out = ''
    writer.stdout.on('data', (piece: Buffer) => {
      if (out === '') setTimeout(() => writer.kill('SIGKILL'), afterMilliseconds)
      out += piece.toString()
    })
    // The last line may be cut short; the import it names was kept all the same, but was not told of.
    writer.on('close', () => resolve(out.split('\n').slice(0, -1)))
  })
}

it('loses nothing it acknowledged and keeps nothing by halves when it is killed while it writes', async () => {
  const { where, clear } = await emptyPlace('sqlite')
  if (where.kind !== 'sqlite') throw new Error('SQLite was asked for')
  const connected = connect(where)
  await migrate(connected.writer)
  await connected.close()
  const acknowledged: string[] = []
  for (let run = 0; run < kills; run += 1)
    acknowledged.push(...(await killedWhileWriting(where.file, run, run * 17)))

  const database = new DatabaseSync(where.file)
  const imports = database
    .prepare(
      `select b.id as id, b.records_added as told, count(r.id) as kept
       from import_batch b left join condition_record r on r.import_id = b.id group by b.id, b.records_added`,
    )
    .all()
  expect(
    database
      .prepare('pragma integrity_check')
      .all()
      .map((row) => row['integrity_check']),
  ).toEqual(['ok'])
  expect(database.prepare('pragma foreign_key_check').all()).toEqual([])
  expect(acknowledged.length).toBeGreaterThanOrEqual(kills)
  expect(imports.map(({ id }) => id)).toEqual(expect.arrayContaining(acknowledged))
  expect(imports.filter(({ told, kept }) => told !== kept)).toEqual([])
  const trail = database.prepare("select count(*) as lines from change where what = 'import-file'").get()
  expect(trail).toMatchObject({ lines: imports.length })
  database.close()
  await clear()
})
