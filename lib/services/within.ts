import type { World, Writes } from './ports.ts'

/** The same world within a transaction that is under way, so that several services keep all of it or nothing. */
export const within = (world: World, writes: Writes): World => ({
  ...world,
  store: { ...world.store, read: (work) => work(writes), write: (_what, _by, work) => work(writes) },
})
