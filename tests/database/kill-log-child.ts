// Run and killed by kill-log.test.ts: reads one logger's file after another into the store and says which were kept.
import path from 'node:path'
import { connect } from '../../lib/database/engine.ts'
import { storeOver } from '../../lib/database/store.ts'
import { keepLog } from '../../lib/services/keep-log.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { logBytes } from '../services/log-files.ts'
import { assistant, day } from './samples.ts'

const [, , file = '', projectId = '', run = ''] = process.argv
const store = storeOver(connect({ kind: 'sqlite', file }))
const world = {
  store,
  knowledge,
  today: () => day('2026-11-25'),
  root: path.resolve(import.meta.dirname, '../..'),
}

for (let turn = 0; ; turn += 1) {
  const from = new Date(Date.UTC(2020 + Number(run), 0, 1 + turn * 20)).toISOString().slice(0, 10)
  const bytes = logBytes({ serial: 'L1', from, hours: 20 * 24, rh: (hour) => 20 + (hour % 24) / 10 })
  const kept = await keepLog(world, { projectId, name: `${run}-${turn}`, bytes }, assistant)
  if (kept.ok) process.stdout.write(`${kept.value.fileId}\n`)
}
