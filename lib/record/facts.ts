import { daysBetween, isoDate, type IsoDate } from '../base/calendar.ts'
import { choiceFact, componentFacts } from './component-facts.ts'
import { couldNotTell, measured, stated, type Fact, type RecordFacts } from './fact.ts'
import { fields } from './fields.ts'
import { hazardsIn } from './hazard-words.ts'
import { doneAlready, objectKind } from './ids.ts'
import type { ConditionRecord } from './record.ts'
import { freeTexts } from './free-text.ts'
import { wordList, wordsIn, type TextWord } from './text-words.ts'

type Loose = Readonly<Record<string, unknown>>

const derived = (has: readonly string[], may: Fact['may'], from: string): Fact => ({
  has,
  may,
  said: 'derived',
  from,
})

const findFields = Object.entries(fields).flatMap(([name, { level, kind }]) =>
  level === 'find' ? [{ name, kind }] : [],
)

/** Every choice and number of the find under its own name. A text of a field that was not understood stays absent. */
function ownFacts(record: ConditionRecord): Record<string, Fact> {
  const facts: Record<string, Fact> = {}
  const loose = record as unknown as Loose
  for (const { name, kind } of findFields) {
    const value = loose[name]
    if (value === undefined) continue
    switch (kind) {
      case 'choice':
      case 'open-choice':
        facts[name] = choiceFact([value as string], false)
        break
      case 'choices':
        facts[name] = choiceFact(value as readonly string[], record.unread?.[name] !== undefined)
        break
      case 'number':
      case 'whole':
        facts[name] = value === 'unknown' ? couldNotTell : measured(value as number)
        break
      default:
    }
  }
  return facts
}

/** A list fact with more values that certainly hold; an absent list that gains some is open at its end. */
function joined(fact: Fact | undefined, more: readonly string[], from: string): Fact | undefined {
  const fresh = [...new Set(more)].filter((value) => !fact?.has.includes(value))
  if (fresh.length === 0) return fact
  if (!fact) return derived(fresh, 'any', from)
  return { ...fact, has: [...fact.has, ...fresh], from }
}

/** Hazards ticked, and those that any words of the record name, whichever field they stand in. */
function hazards(
  record: ConditionRecord,
  ticked: Fact | undefined,
  words: readonly TextWord[],
): Fact | undefined {
  const found: { hazard: string; from: string }[] = []
  for (const { field, text } of freeTexts(record)) {
    for (const { hazard, word } of hazardsIn(text, words, field === 'hazards_noticed')) {
      if (!ticked?.has.includes(hazard)) found.push({ hazard, from: `${field}: "${word}"` })
    }
  }
  const from = [...new Set(found.map((one) => one.from))].join('; ')
  return joined(
    ticked,
    found.map((one) => one.hazard),
    from,
  )
}

const kinds: readonly string[] = objectKind

/** The kind as stated; words of another list, or of the free `object`, are looked up. Several kinds: any of them may hold. */
function kindOf(
  record: ConditionRecord,
  own: Fact | undefined,
  words: readonly TextWord[],
): Fact | undefined {
  const said = record.object_kind
  if (said === 'unknown' || (said !== undefined && kinds.includes(said))) return own
  for (const [field, text] of [
    ['object_kind', said],
    ['object', record.object],
  ] as const) {
    if (text === undefined) continue
    const hits = wordsIn(text, wordList(words)).filter((hit) => hit.meaning.objectKind !== undefined)
    const found = [...new Set(hits.map((hit) => hit.meaning.objectKind!))]
    const from = `${field}: ${hits.map((hit) => `"${hit.word}"`).join(', ')}`
    if (found.length === 1) return derived(found, [], from)
    if (found.length > 1) return derived([], found, from)
  }
  return own
}

/** The earliest day that a date of day, month or year can mean; null where it is none. */
function earliest(on: string): IsoDate | null {
  const text = on.trim()
  return isoDate(text) ?? isoDate(`${text}-01`) ?? isoDate(`${text}-01-01`)
}

function timeFacts(record: ConditionRecord, asOf: IsoDate): Record<string, Fact> {
  const facts: Record<string, Fact> = {}
  const days = (name: string, count: number, from: string) => {
    facts[name] = { ...measured(count), said: 'derived', from }
  }
  if (record.lifted_on !== undefined && record.days_since_lifting === undefined) {
    const since = daysBetween(record.lifted_on, asOf)
    if (since >= 0) days('days_since_lifting', since, `lifted_on: ${record.lifted_on}`)
  }
  if (record.needed_by !== undefined) {
    days('needed_within_days', daysBetween(asOf, record.needed_by), `needed_by: ${record.needed_by}`)
  }
  const coats = (record.treatments ?? []).flatMap((treatment) => {
    const on =
      treatment.what === 'waxed' || treatment.what === 'lacquered' ? earliest(treatment.on ?? '') : null
    return on === null || on > asOf ? [] : [{ on, what: `${treatment.what}@${treatment.on}` }]
  })
  const latest = coats.toSorted((a, b) => (a.on < b.on ? 1 : -1))[0]
  if (latest) days('days_since_coating', daysBetween(latest.on, asOf), `treatments: ${latest.what}`)
  return facts
}

const done: readonly string[] = doneAlready

function bulk(quantity: ConditionRecord['quantity']): Fact {
  if (quantity === 'unknown') return couldNotTell
  return quantity === undefined
    ? derived(['no'], [], 'quantity: 1 unless said')
    : { ...stated(quantity > 1 ? 'yes' : 'no'), from: `quantity: ${quantity}` }
}

/** What a condition record states, as the engine reads it on the day `asOf`. */
export function factsOf(record: ConditionRecord, words: readonly TextWord[], asOf: IsoDate): RecordFacts {
  const own = ownFacts(record)
  const treated = (record.treatments ?? [])
    .map((treatment) => treatment.what)
    .filter((what) => done.includes(what))
  const more = {
    hazards_noticed: hazards(record, own['hazards_noticed'], words),
    done_already: joined(own['done_already'], treated, `treatments: ${treated.join(', ')}`),
    object_kind: kindOf(record, own['object_kind'], words),
    parts: {
      ...stated(record.components.length > 1 ? 'several' : 'one'),
      said: 'derived' as const,
      from: 'components',
    },
    bulk: bulk(record.quantity),
  }
  const find: Record<string, Fact> = { ...own, ...timeFacts(record, asOf) }
  for (const [name, fact] of Object.entries(more)) if (fact !== undefined) find[name] = fact
  return { find, components: componentFacts(record) }
}
