import type { Standing } from '../../lib/services/standing.ts'

/** By the name of the box: what stops whoever goes to it, each sentence once with the finds it is about and whom to call. */
export function stopsByBox(finds: readonly Standing[]): ReadonlyMap<string, readonly string[]> {
  return new Map(
    [...Map.groupBy(finds, ({ line }) => line.box)].map(([box, own]) => {
      const lines = own.flatMap(({ line }) =>
        line.stops.map((stop) => ({ number: line.findNumber, ...stop })),
      )
      const groups = Map.groupBy(lines, ({ text, who }) => (who === '' ? text : `${text} Call ${who}.`))
      return [
        box,
        [...groups].map(([says, group]) => `${says} (${group.map(({ number }) => number).join(', ')})`),
      ]
    }),
  )
}
