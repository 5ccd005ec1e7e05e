import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { IsoDate } from '../base/calendar.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { LineFormat } from './plan-line.ts'

/** What every worker of a crew is told once. */
export interface Errand {
  readonly root: string
  readonly format: LineFormat
  readonly asOf: IsoDate
}

/** Below this many records starting workers costs more than they save. */
export const worthACrew = 2_000

/** Records handed over at once: their plans are some megabytes of text. */
const together = 100

/** Batches under way for each worker: one at work, one waiting, so that memory stays flat. */
const ahead = 2

/** Plans are garbage as soon as they are printed; a small heap [MB] clears it away early. */
const resourceLimits = { maxOldGenerationSizeMb: 256, maxYoungGenerationSizeMb: 32 }

interface Hand {
  readonly plan: (records: readonly ConditionRecord[]) => Promise<string>
  readonly dismiss: () => Promise<unknown>
}

/** One worker; it answers in the order it was asked. */
function hire(errand: Errand): Hand {
  const worker = new Worker(new URL('./plan-worker.ts', import.meta.url), {
    workerData: errand,
    resourceLimits,
  })
  const waiting: { resolve: (lines: string) => void; reject: (fault: unknown) => void }[] = []
  worker.on('message', (lines: string) => waiting.shift()?.resolve(lines))
  worker.on('error', (fault) => {
    for (const one of waiting.splice(0)) one.reject(fault)
  })
  return {
    plan: (records) =>
      new Promise((resolve, reject) => {
        waiting.push({ resolve, reject })
        worker.postMessage(records)
      }),
    dismiss: () => worker.terminate(),
  }
}

async function* inPieces(
  batches: AsyncIterable<readonly ConditionRecord[]>,
): AsyncGenerator<readonly ConditionRecord[]> {
  for await (const batch of batches) {
    for (let at = 0; at < batch.length; at += together) yield batch.slice(at, at + together)
  }
}

/** The printed plans of a long file, made by as many workers as the machine has cores, in the order of the file. */
export async function* planLines(
  batches: AsyncIterable<readonly ConditionRecord[]>,
  errand: Errand,
): AsyncGenerator<string> {
  const crew = Array.from({ length: availableParallelism() }, () => hire(errand))
  const underWay: Promise<string>[] = []
  try {
    let turn = 0
    for await (const records of inPieces(batches)) {
      const lines = crew[turn++ % crew.length]!.plan(records)
      // A fault shows where its lines are waited for.
      lines.catch(() => undefined)
      underWay.push(lines)
      if (underWay.length >= crew.length * ahead) yield await underWay.shift()!
    }
    for (const lines of underWay) yield await lines
  } finally {
    await Promise.all(crew.map(({ dismiss }) => dismiss()))
  }
}
