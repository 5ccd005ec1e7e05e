import fc from 'fast-check'

/** One reading as a logger would print it: numbers are whole counts of the last decimal; null: the sensor gave nothing. */
export interface DrawnReading {
  readonly atMs: number
  readonly temperature: number | null
  readonly humidity: number | null
}

export interface DrawnForm {
  readonly delimiter: ',' | ';' | '\t' | '|'
  readonly decimalMark: '.' | ','
  readonly temperatureDecimals: 0 | 1 | 2
  readonly date: 'iso' | 'iso-t' | 'dots' | 'slash-day' | 'slash-month' | 'year-slash' | 'named' | 'squeezed'
  readonly clock: 'seconds' | 'fractions' | 'half-days'
  readonly twoColumns: boolean
  readonly zone: 'stamped-z' | 'stamped-offset' | 'UTC' | '+05:30' | 'Europe/London' | 'America/New_York'
  readonly fahrenheit: boolean
  readonly unitsBehind: boolean
  readonly quoted: boolean
  readonly counter: boolean
  readonly block: boolean
  readonly headings: 'english' | 'german' | 'french'
  readonly missing: '' | '---' | 'NaN'
  readonly lineEnd: '\n' | '\r\n'
  readonly encoding: 'utf-8' | 'utf-8-mark' | 'utf-16le' | 'windows-1252'
  readonly footer: boolean
}

export const formArbitrary: fc.Arbitrary<DrawnForm> = fc
  .record<DrawnForm>({
    delimiter: fc.constantFrom(',', ';', '\t', '|'),
    decimalMark: fc.constantFrom('.', ','),
    temperatureDecimals: fc.constantFrom(0, 1, 2),
    date: fc.constantFrom(
      'iso',
      'iso-t',
      'dots',
      'slash-day',
      'slash-month',
      'year-slash',
      'named',
      'squeezed',
    ),
    clock: fc.constantFrom('seconds', 'fractions', 'half-days'),
    twoColumns: fc.boolean(),
    zone: fc.constantFrom(
      'stamped-z',
      'stamped-offset',
      'UTC',
      '+05:30',
      'Europe/London',
      'America/New_York',
    ),
    fahrenheit: fc.boolean(),
    unitsBehind: fc.boolean(),
    quoted: fc.boolean(),
    counter: fc.boolean(),
    block: fc.boolean(),
    headings: fc.constantFrom('english', 'german', 'french'),
    missing: fc.constantFrom('', '---', 'NaN'),
    lineEnd: fc.constantFrom('\n', '\r\n'),
    encoding: fc.constantFrom('utf-8', 'utf-8-mark', 'utf-16le', 'windows-1252'),
    footer: fc.boolean(),
  })
  // A decimal comma among commas stands in quotes, as every program writes it.
  .map((form) => (form.delimiter === ',' && form.decimalMark === ',' ? { ...form, quoted: true } : form))

const minute = 60_000

/** A run at a steady step, some of it left out, values that wander within what a store knows. */
export const readingsArbitrary: fc.Arbitrary<readonly DrawnReading[]> = fc
  .record({
    startMinute: fc.integer({ min: 16_500_000, max: 34_000_000 }),
    stepMinutes: fc.constantFrom(1, 5, 10, 15, 30, 60, 240),
    values: fc.array(
      fc.record({
        temperature: fc.option(fc.integer({ min: -2000, max: 4500 }), { freq: 12 }),
        humidity: fc.option(fc.integer({ min: 0, max: 1000 }), { freq: 12 }),
        kept: fc.constantFrom(...Array.from({ length: 20 }, (_, at) => at > 0)),
      }),
      { minLength: 6, maxLength: 400, size: 'max' },
    ),
  })
  .map(({ startMinute, stepMinutes, values }) =>
    values
      .map(({ temperature, humidity, kept }, at) => ({
        atMs: (startMinute + at * stepMinutes) * minute,
        temperature,
        humidity,
        kept,
      }))
      .filter(({ temperature, humidity, kept }, at) => at < 5 || (kept && (temperature ?? humidity) !== null))
      .map(({ atMs, temperature, humidity }, at) =>
        at < 5 ? { atMs, temperature: 1500 + at, humidity: 450 + at } : { atMs, temperature, humidity },
      ),
  )
