import type { StoreShown } from '../../../lib/services/show-store.ts'

/** Rooms and models the store knows already, to be offered. */
export function namesOf({ rooms }: Pick<StoreShown, 'rooms'>): {
  readonly rooms: readonly string[]
  readonly models: readonly string[]
} {
  const models = rooms.flatMap(({ shelves }) =>
    shelves.flatMap(({ boxes }) => boxes.map(({ box }) => box.given.model ?? '')),
  )
  const filled = (names: readonly string[]) => [...new Set(names)].filter((name) => name !== '').toSorted()
  return { rooms: filled(rooms.map(({ name }) => name)), models: filled(models) }
}
