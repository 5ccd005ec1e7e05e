/**
 * Ids of content/vocabulary/units.yaml in which the engine counts. A figure in another unit (months, say) would be read
 * as if it stood in this one, so the compiler refuses it.
 */
export const engineUnits = {
  relativeHumidity: ['percent'],
  temperature: ['degree-celsius'],
  days: ['day'],
} as const

const byEnding: readonly (readonly [RegExp, readonly string[]])[] = [
  [/_percent$/, engineUnits.relativeHumidity],
  [/_c$/, engineUnits.temperature],
  [/^days_|_days$/, engineUnits.days],
  [/_ppm$/, ['ppm']],
  [/_mg_l$/, ['mg-per-litre']],
  [/_mg_kg$/, ['mg-per-kilogram']],
  [/_mm$/, ['millimetre']],
  [/_g$/, ['gram']],
  [/_ph$/, ['ph']],
  [/^date_/, ['calendar-year', 'year']],
  [/^(quantity|fragments)$/, ['count']],
]

/** The units in which a number fact's thresholds may stand; null where the fact's name says none. */
export function factUnits(fact: string): readonly string[] | null {
  return byEnding.find(([ending]) => ending.test(fact))?.[1] ?? null
}
