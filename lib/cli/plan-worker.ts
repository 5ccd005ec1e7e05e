import { parentPort, workerData } from 'node:worker_threads'
import type { ConditionRecord } from '../record/record.ts'
import { planOf } from '../services/plan-file.ts'
import { loadKnowledge } from '../start.ts'
import type { Errand } from './plan-crew.ts'
import { planLine } from './plan-line.ts'

/** Plans what it is handed and hands back the printed lines, in the same order. */
const { root, format, asOf } = workerData as Errand
const knowledge = loadKnowledge(root)

parentPort!.on('message', (records: readonly ConditionRecord[]) => {
  parentPort!.postMessage(records.map((record) => planLine(format, planOf(record, knowledge, asOf))).join(''))
})
