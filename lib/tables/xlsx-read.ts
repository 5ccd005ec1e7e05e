import { Worker } from 'node:worker_threads'
import type { WorkbookRead } from './xlsx-sheets.ts'
import { zipDirectory } from './zip-directory.ts'

const longestMs = 15_000
const mostMegabytes = 256

/**
 * The sheets of a workbook. The directory is checked first; then a worker with bounded memory and time does the reading, so
 * that a hostile file ends as a refusal and the process lives.
 */
export async function readWorkbook(bytes: Uint8Array): Promise<WorkbookRead> {
  const directory = zipDirectory(bytes)
  if (!directory.ok) return { ok: false, code: 'unsafe-workbook', found: directory.why }
  const worker = new Worker(new URL('./xlsx-worker.ts', import.meta.url), {
    // In an object: the bundler adds things of its own to whatever is handed over.
    workerData: { bytes },
    resourceLimits: { maxOldGenerationSizeMb: mostMegabytes, maxYoungGenerationSizeMb: 64 },
    execArgv: ['--disable-warning=ExperimentalWarning'],
  })
  let timer: NodeJS.Timeout | undefined
  try {
    return await new Promise<WorkbookRead>((resolve, reject) => {
      timer = setTimeout(
        () => resolve({ ok: false, code: 'workbook-too-slow', found: `${longestMs / 1000} s` }),
        longestMs,
      )
      worker.once('message', (read: WorkbookRead) => resolve(read))
      worker.once('error', (error: Error & { readonly code?: string }) =>
        error.code === 'ERR_WORKER_OUT_OF_MEMORY'
          ? resolve({ ok: false, code: 'unsafe-workbook', found: 'too-large' })
          : reject(error),
      )
      worker.once('exit', () => resolve({ ok: false, code: 'broken-workbook', found: '' }))
    })
  } finally {
    clearTimeout(timer)
    await worker.terminate()
  }
}
