import { Worker } from 'node:worker_threads'

export interface Asked {
  /** A mixed-integer model as LP text. */
  readonly model: string
  readonly secondsAtMost: number
}

export type Solved =
  | {
      readonly status: 'optimal' | 'best-so-far'
      readonly objective: number
      readonly values: ReadonlyMap<string, number>
    }
  | { readonly status: 'infeasible' | 'not-solved' }

export interface Solver {
  /** One model after the other; whoever asks waits without holding anybody else up. */
  readonly solve: (asked: Asked) => Promise<Solved>
  readonly close: () => Promise<void>
}

/** An exact solver (HiGHS, in WebAssembly) in a thread of its own, loaded once; its memory goes when it is closed. */
export function openSolver(): Solver {
  const worker = new Worker(new URL('./solver-worker.ts', import.meta.url), {
    execArgv: ['--disable-warning=ExperimentalWarning'],
  })
  // Nobody waits for a solver that nobody asks.
  worker.unref()
  let turn: Promise<unknown> = Promise.resolve()
  const ask = (asked: Asked) =>
    new Promise<Solved>((resolve, reject) => {
      const onMessage = (answer: Solved) => settle(() => resolve(answer))
      const onError = (flaw: Error) => settle(() => reject(flaw))
      const onExit = () => settle(() => reject(new Error('The solver ended before it answered.')))
      const settle = (act: () => void) => {
        worker.off('message', onMessage).off('error', onError).off('exit', onExit)
        worker.unref()
        act()
      }
      worker.on('message', onMessage).on('error', onError).on('exit', onExit)
      worker.ref()
      worker.postMessage(asked)
    })
  return {
    solve: (asked) => {
      const next = turn.then(() => ask(asked))
      turn = next.catch(() => undefined)
      return next
    },
    close: async () => {
      await worker.terminate()
    },
  }
}
