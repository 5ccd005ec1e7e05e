import type { HumidityScale, LogAnswers, LogQuestion } from './log-answers.ts'
import type { LogForm } from './log-form.ts'
import { civilText } from './civil.ts'
import { lineOf, type Quantity, type Store } from './store.ts'
import { isTemperatureUnit, type Unit } from './units.ts'

export interface UnitsDecided {
  readonly temperature: LogForm['temperature']
  readonly humidity: LogForm['humidity']
  readonly asks: readonly LogQuestion[]
}

interface Sample {
  readonly store: Store
  readonly slot: number
  readonly values: readonly number[]
}

/** Evenly spaced values of a column, enough to tell its size. */
function sampleOf(store: Store, slot: number): Sample {
  const column = store.values[slot]!
  const step = Math.max(1, Math.floor(store.count / 2000))
  const values: number[] = []
  for (let at = 0; at < store.count; at += step) {
    const value = column[at]!
    if (value > -200 && value < 300) values.push(value)
  }
  return { store, slot, values: values.toSorted((a, b) => a - b) }
}

const median = ({ values }: Sample) => values[values.length >> 1] ?? Number.NaN

function samplesOf(stores: readonly Store[], quantity: Quantity): readonly Sample[] {
  return stores.flatMap((store) =>
    store.slots.flatMap((slot, at) => (slot.quantity === quantity ? [sampleOf(store, at)] : [])),
  )
}

/** Above this a store is more likely told in °F than warm in °C. */
const warmMedian = 30

function examples(sample: Sample | undefined) {
  if (!sample) return []
  const { store, slot } = sample
  return [0, 1, 2]
    .filter((place) => place < store.count)
    .map((place) => ({
      line: lineOf(store, place),
      text: `${civilText(store.civilMs[place]!)}  ${Number(store.values[slot]![place]!.toPrecision(6))}`,
    }))
}

function temperatureOf(stores: readonly Store[], answers: LogAnswers, behind: boolean) {
  const samples = samplesOf(stores, 'temperature').filter(({ values }) => values.length > 0)
  const told = stores.flatMap(({ slots }) => slots).find(({ unit }) => isTemperatureUnit(unit))?.unit as
    | Exclude<Unit, 'percent'>
    | undefined
  const unsaid = samples.filter(({ store, slot }) => store.slots[slot]!.unit === null)
  if (told && unsaid.length === 0) {
    return { form: { unit: told, how: behind ? 'behind-values' : 'in-heading' } as const, ask: null }
  }
  if (answers.temperatureUnit)
    return { form: { unit: answers.temperatureUnit, how: 'answered' } as const, ask: null }
  if (told) return { form: { unit: told, how: 'in-heading' } as const, ask: null }
  const warm = unsaid.find((sample) => median(sample) > warmMedian)
  if (!warm) return { form: { unit: 'celsius', how: 'assumed' } as const, ask: null }
  const ask: LogQuestion = {
    about: 'temperature-unit',
    answers: ['fahrenheit', 'celsius'],
    proposed: 'fahrenheit',
    because: 'no-unit-and-warm',
    examples: examples(warm),
  }
  return { form: { unit: 'fahrenheit', how: 'assumed' } as const, ask }
}

function humidityOf(stores: readonly Store[], answers: LogAnswers, behind: boolean) {
  const samples = samplesOf(stores, 'humidity').filter(({ values }) => values.length > 0)
  const scale = (scale: HumidityScale, how: LogForm['humidity']['how']) => ({
    form: { scale, how } as const,
    ask: null,
  })
  if (samples.some(({ store, slot }) => store.slots[slot]!.unit === 'percent')) {
    return scale('percent', behind ? 'behind-values' : 'in-heading')
  }
  if (answers.humidityScale) return scale(answers.humidityScale, 'answered')
  // Values of the whole file, so that a single one above 1 speaks for percent.
  const small = samples.length > 0 && samples.every(({ store, slot }) => noneAbove(store, slot, 1.05))
  if (!small || samples.every((sample) => sample.values.at(-1)! <= 0)) return scale('percent', 'by-values')
  const ask: LogQuestion = {
    about: 'humidity-scale',
    answers: ['fraction', 'percent'],
    proposed: 'fraction',
    because: 'no-unit-and-none-above-one',
    examples: examples(samples[0]),
  }
  return { form: { scale: 'fraction', how: 'assumed' } as const, ask }
}

function noneAbove(store: Store, slot: number, limit: number): boolean {
  const column = store.values[slot]!
  for (let at = 0; at < store.count; at++) if (column[at]! > limit && column[at]! <= 105) return false
  return true
}

/** The units of a file's values: as it says itself, as a person said, or as the values make likely, and then it is asked. */
export function decideUnits(
  stores: readonly Store[],
  answers: LogAnswers,
  behind: { readonly temperature: boolean; readonly humidity: boolean },
): UnitsDecided {
  const temperature = temperatureOf(stores, answers, behind.temperature)
  const humidity = humidityOf(stores, answers, behind.humidity)
  return {
    temperature: temperature.form,
    humidity: humidity.form,
    asks: [temperature.ask, humidity.ask].filter((ask) => ask !== null),
  }
}
