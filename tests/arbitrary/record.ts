import fc from 'fast-check'
import type { IsoDate } from '../../lib/base/calendar.ts'
import { fields, type FieldName } from '../../lib/record/fields.ts'
import * as ids from '../../lib/record/ids.ts'
import { nameKey } from '../../lib/record/likeness.ts'
import { looks } from '../../lib/record/looks.ts'
import type { Component, ConditionRecord, Treatment } from '../../lib/record/record.ts'
import { plainWords, tellingWords, textArbitrary } from './text.ts'

const dateArbitrary: fc.Arbitrary<IsoDate> = fc
  .date({ min: new Date('1950-01-01'), max: new Date('2060-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10) as IsoDate)

const subset = (values: readonly string[]) =>
  fc.uniqueArray(fc.constantFrom(...values), { minLength: 1, maxLength: 4 })

/** A number that a careful person could write: within its range, with few digits. */
function numberArbitrary(name: FieldName): fc.Arbitrary<number> {
  const field = fields[name]
  const [from, to] = 'range' in field ? field.range : [0, 1000]
  if (field.kind === 'whole') return fc.integer({ min: from, max: Math.min(to, 100_000) })
  return fc
    .double({ min: from, max: Math.min(to, 50_000), noNaN: true })
    .map((value) => Number(value.toPrecision(4)))
    .filter(
      (value) => value >= from && value <= to && !(name === 'stored_rh_percent' && value > 0 && value < 1),
    )
    .map((value) => (value === 0 ? 0 : value))
}

const treatmentArbitrary = (words: fc.Arbitrary<string>): fc.Arbitrary<Treatment> =>
  fc
    .record(
      {
        // A cell that says no more than "null" or "n/a" is an empty one, and no treatment.
        what: fc.oneof(
          fc.constantFrom(...ids.doneAlready),
          words.filter((word) => !/^(?:[-–—]+|n\/?a|n\.a\.|nil|null)$/i.test(word)),
        ),
        on: fc.oneof(fc.constantFrom('2017', '2017-03', '2017-03-09'), words),
        by: words,
        medium: words,
      },
      { requiredKeys: ['what'] },
    )
    .filter(
      ({ what }) =>
        (ids.doneAlready as readonly string[]).includes(what) ||
        !(ids.doneAlready as readonly string[]).includes(nameKey(what)),
    )

export function testArbitrary(names: readonly string[]): fc.Arbitrary<string> {
  const part = fc.oneof(
    fc.constant(''),
    fc.constantFrom(...names.filter((name) => !/[:]/.test(name)).map((name) => `${name}/`), ''),
  )
  const result = fc.oneof(
    fc.constantFrom(...ids.silverNitrate, 'unknown').map((value) => `silver-nitrate:${value}`),
    fc.constantFrom(...ids.magnet).map((value) => `magnet:${value}`),
    fc.constantFrom(...ids.radiograph).map((value) => `radiograph:${value}`),
    fc.constantFrom(...ids.oxygenUptake).map((value) => `oxygen-uptake:${value}`),
    subset(['Fe', 'Cu', 'Sn', 'Pb', 'Ag', 'Au', 'Hg', 'Zn', 'As', 'Cl', 'Cd', 'Ra', 'Th', 'U']).map(
      (elements) => `xrf:${elements.join('+')}`,
    ),
    subset([
      'akaganeite',
      'goethite',
      'nantokite',
      'vivianite',
      'atacamite',
      'lead-formate',
      'ferrous-chloride',
    ]).map((phases) => `xrd:${phases.join('+')}`),
    subset(['acanthite', 'paratacamite', 'calcite']).map((phases) => `raman:${phases.join('+')}`),
    fc.integer({ min: 0, max: 9000 }).map((value) => `residual-chloride-ppm:${value}`),
    fc.integer({ min: 0, max: 9000 }).map((value) => `bath-chloride-mg-l:${value}`),
  )
  return fc.tuple(part, result).map(([where, test]) => `${where}${test}`)
}

/** Answers to some questions, one each. */
const looksArbitrary: fc.Arbitrary<readonly string[] | undefined> =
  Object.keys(looks).length === 0
    ? fc.constant(undefined)
    : fc
        .uniqueArray(
          fc
            .constantFrom(...Object.keys(looks))
            .chain((question) =>
              fc.constantFrom(...looks[question]!, 'none', 'unknown').map((answer) => `${question}:${answer}`),
            ),
          { minLength: 1, maxLength: 3, selector: (text) => text.split(':')[0] },
        )

function valueArbitrary(name: FieldName, words: fc.Arbitrary<string>): fc.Arbitrary<unknown> {
  const field = fields[name]
  const listed: readonly string[] = 'ids' in field ? field.ids : []
  switch (field.kind) {
    case 'text':
      return words
    case 'texts':
      return fc.uniqueArray(words, { minLength: 1, maxLength: 3 })
    case 'choice':
      return fc.constantFrom(...listed, 'unknown')
    case 'open-choice':
      return fc.constantFrom(...listed, 'unknown', 'gaming piece', 'candlestick base')
    case 'choices':
      return fc.oneof(
        { weight: 5, arbitrary: subset(listed) },
        { weight: 1, arbitrary: fc.constant(['unknown']) },
      )
    case 'number':
    case 'whole':
      return fc.oneof(
        { weight: 6, arbitrary: numberArbitrary(name) },
        { weight: 1, arbitrary: fc.constant('unknown') },
      )
    case 'date':
      return dateArbitrary
    case 'treatments':
      return fc.uniqueArray(treatmentArbitrary(words), {
        minLength: 1,
        maxLength: 2,
        selector: (treatment) => JSON.stringify(treatment),
      })
    case 'tests':
      return fc.constant(undefined)
    case 'looks':
      return looksArbitrary
  }
}

export interface Manner {
  /** How many of ten fields are filled in. */
  readonly filled?: number
  /** What stands in the free texts. */
  readonly words?: fc.Arbitrary<string>
  /** Fields that are left out. */
  readonly without?: readonly FieldName[]
}

function optional(
  level: 'find' | 'component',
  { filled = 5, words = textArbitrary, without = [] }: Manner,
): fc.Arbitrary<Record<string, unknown>> {
  const names = (Object.keys(fields) as FieldName[]).filter(
    (name) => fields[name].level === level && !without.includes(name),
  )
  const perhaps = (name: FieldName) =>
    fc.oneof(
      { withCrossShrink: true },
      { weight: 10 - filled, arbitrary: fc.constant(undefined) },
      { weight: filled, arbitrary: valueArbitrary(name, words) },
    )
  return fc
    .record(Object.fromEntries(names.map((name) => [name, perhaps(name)])))
    .map((values) => Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)))
}

const componentName = (words: fc.Arbitrary<string>) =>
  fc.oneof(
    {
      weight: 5,
      arbitrary: fc.constantFrom(
        'body',
        'pin',
        'plate',
        'left rivet',
        'body-2',
        'handle',
        'inner face',
        'lid',
      ),
    },
    { weight: 1, arbitrary: words },
  )

export function componentArbitrary(manner: Manner = {}): fc.Arbitrary<Component> {
  const material = fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom('iron', 'copper-alloy') },
    { weight: 4, arbitrary: fc.constantFrom(...ids.material) },
  )
  const without: readonly FieldName[] = ['component', 'material', ...(manner.without ?? [])]
  return fc
    .tuple(
      componentName(manner.words ?? textArbitrary),
      material,
      optional('component', { ...manner, without }),
    )
    .map(([component, of, rest]) => ({ component, material: of, ...rest }) as Component)
}

const findNumberArbitrary = (words: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc.oneof(
    {
      weight: 6,
      arbitrary: fc.integer({ min: 1, max: 99_999 }).map((number) => `TW-${String(number).padStart(4, '0')}`),
    },
    { weight: 1, arbitrary: words },
  )

/** Valid records of the contract over the whole vocabulary: any field may be there or not, any value may be `unknown`. */
export function recordArbitrary(manner: Manner = {}): fc.Arbitrary<ConditionRecord> {
  const { filled = 5, without = [] } = manner
  const component = componentArbitrary(manner)
  const components = fc.oneof(
    { weight: 2, arbitrary: fc.array(component, { minLength: 1, maxLength: 1 }) },
    {
      weight: 1,
      arbitrary: fc.uniqueArray(component, {
        minLength: 2,
        maxLength: 4,
        selector: ({ component: name }) => name,
      }),
    },
  )
  const withTests = (parts: readonly Component[]) =>
    fc.oneof(
      { weight: without.includes('tests') ? 10 : 10 - filled, arbitrary: fc.constant(undefined) },
      {
        weight: without.includes('tests') ? 0 : filled,
        arbitrary: fc.uniqueArray(testArbitrary(parts.map(({ component: name }) => name)), {
          minLength: 1,
          maxLength: 3,
        }),
      },
    )
  return fc
    .tuple(
      findNumberArbitrary(manner.words ?? textArbitrary),
      optional('find', { ...manner, without: ['find_number', 'tests', ...without] }),
      components,
    )
    .chain(([find_number, rest, parts]) =>
      withTests(parts).map(
        (tests) =>
          ({
            find_number,
            ...rest,
            ...(tests === undefined ? {} : { tests }),
            components: parts,
          }) as ConditionRecord,
      ),
    )
}

const quietly: readonly FieldName[] = ['hazards_noticed']

/** Records nearly empty, half filled in and full; two in three name no hazard, for a stop leaves little else to say. */
export function anyRecord(manner: Omit<Manner, 'filled' | 'words'> = {}): fc.Arbitrary<ConditionRecord> {
  const { without = [] } = manner
  const calm = { words: plainWords, without: [...quietly, ...without] }
  return fc.oneof(
    ...[1, 5, 9].flatMap((filled) => [
      { weight: 2, arbitrary: recordArbitrary({ ...calm, filled }) },
      { weight: 1, arbitrary: recordArbitrary({ words: tellingWords, without, filled }) },
    ]),
  )
}

/** Records of different finds, as one file holds them. */
export function recordsArbitrary(most = 5, least = 1): fc.Arbitrary<readonly ConditionRecord[]> {
  return fc.uniqueArray(recordArbitrary(), {
    minLength: least,
    maxLength: most,
    selector: ({ find_number }) => find_number,
  })
}
