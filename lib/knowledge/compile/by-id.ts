/** By code units: the order must not depend on the machine's language. */
export function byId<Thing extends { readonly id: string }>(things: Iterable<Thing>): Record<string, Thing> {
  const sorted = [...things].toSorted((a, b) => (a.id < b.id ? -1 : 1))
  return Object.fromEntries(sorted.map((thing) => [thing.id, thing]))
}
