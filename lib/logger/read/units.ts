export type Unit = 'celsius' | 'fahrenheit' | 'kelvin' | 'percent'

const written: ReadonlyMap<string, Unit> = new Map([
  ...['°c', 'c', '° c', 'degc', 'deg c', 'deg. c', 'celsius', 'gradc', 'grad c', 'oc', 'cel'].map(
    (text) => [text, 'celsius'] as const,
  ),
  ...['°f', 'f', '° f', 'degf', 'deg f', 'deg. f', 'fahrenheit', 'of'].map(
    (text) => [text, 'fahrenheit'] as const,
  ),
  ...['k', 'kelvin', '°k'].map((text) => [text, 'kelvin'] as const),
  ...[
    '%',
    'percent',
    'pct',
    '%rh',
    'rh%',
    '%r.h.',
    '%rf',
    '%r.f.',
    '%rel',
    '%relf',
    '%hr',
    '%ur',
    '%rv',
    'rh',
    'rf',
    'hr',
  ].map((text) => [text, 'percent'] as const),
])

/** The unit that a short text is (`°C`, `% rF`); null where it is none of temperature or humidity. */
export function unitOf(text: string): Unit | null {
  const bare = text
    .trim()
    .toLowerCase()
    .replace(/^[([]\s*|\s*[)\]]$/g, '')
  return written.get(bare) ?? written.get(bare.replace(/\s+/g, '')) ?? null
}

export const isTemperatureUnit = (unit: Unit | null): unit is 'celsius' | 'fahrenheit' | 'kelvin' =>
  unit !== null && unit !== 'percent'

/**
 * A temperature in degrees Celsius [°C].
 * @param value [°C, °F or K] as `unit` says
 * @param unit [-] the unit of `value`
 * @source International Temperature Scale and the definition of the Fahrenheit degree, exact by definition
 * @valid every temperature
 * @agrees exactly, before rounding to 32 bits
 */
export const asCelsius = (value: number, unit: Unit): number =>
  unit === 'fahrenheit' ? (value - 32) / 1.8 : unit === 'kelvin' ? value - 273.15 : value
