import { describe, expect, test } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import { factsOf } from '../../lib/record/facts.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'
import type { TextWord } from '../../lib/record/text-words.ts'

const words: readonly TextWord[] = [
  { words: ['grenade'], not: [], hazard: 'ammunition-like' },
  { words: ['musket ball', 'shot'], not: [], objectKind: 'shot' },
  { words: ['padlock'], not: [], objectKind: 'padlock' },
  { words: ['key'], not: [], objectKind: 'key' },
  { words: ['shell'], not: [], hazard: 'ammunition-like' },
]
const asOf = '2026-11-25' as IsoDate
const body: Component = { component: 'body', material: 'iron' }
const facts = (record: Partial<ConditionRecord>) =>
  factsOf({ find_number: 'TW-1', components: [body], ...record }, words, asOf)
const find = (record: Partial<ConditionRecord>) => facts(record).find
const part = (component: Partial<Component>, record: Partial<ConditionRecord> = {}) =>
  facts({ ...record, components: [{ ...body, ...component }] }).components[0]!.facts

describe('facts of the find', () => {
  test('what nobody recorded is no key', () => {
    expect(Object.keys(find({})).toSorted()).toEqual(['bulk', 'parts'])
  })

  test('choices, lists and numbers stand under their own names', () => {
    const record = {
      state_now: 'wet',
      burial: ['clay', 'damp'],
      mass_g: 12.5,
      quantity: 3,
      soil_ph: 'unknown',
      wetted_by: 'unknown',
      packed_in: ['unknown'],
    } as const
    expect(find(record)).toMatchObject({
      state_now: { has: ['wet'], may: [], said: 'stated' },
      burial: { has: ['clay', 'damp'], may: [], said: 'stated' },
      mass_g: { number: 12.5, said: 'stated' },
      soil_ph: { has: ['unknown'], may: 'any', said: 'unknown' },
      wetted_by: { has: ['unknown'], may: 'any', said: 'unknown' },
      packed_in: { has: ['unknown'], may: 'any', said: 'unknown' },
      bulk: { has: ['yes'] },
      parts: { has: ['one'] },
    })
  })

  test('a list that was understood in part is open at its end; a value that was not is absent', () => {
    const record = find({ burial: ['clay'], unread: { burial: 'bogg', state_now: 'moistish' } })
    expect(record['burial']).toEqual({ has: ['clay'], may: 'any', said: 'stated' })
    expect(record['state_now']).toBeUndefined()
  })

  test('days are counted from the day of planning', () => {
    const lifted = find({ lifted_on: '2026-11-20' as IsoDate, needed_by: '2026-12-05' as IsoDate })
    expect(lifted['days_since_lifting']).toMatchObject({
      number: 5,
      said: 'derived',
      from: 'lifted_on: 2026-11-20',
    })
    expect(lifted['needed_within_days']).toMatchObject({ number: 10, said: 'derived' })
    expect(
      find({ lifted_on: '2026-11-20' as IsoDate, days_since_lifting: 3 })['days_since_lifting'],
    ).toMatchObject({ number: 3, said: 'stated' })
    expect(find({ lifted_on: '2027-01-01' as IsoDate })['days_since_lifting']).toBeUndefined()
  })

  test('treatments join what is already done, and the latest coat is counted', () => {
    const treated = find({
      done_already: ['washed'],
      treatments: [
        { what: 'lacquered', on: '2017-03' },
        { what: 'waxed', on: '2024' },
        { what: 'photographed' },
      ],
    })
    expect(treated['done_already']).toMatchObject({
      has: ['washed', 'lacquered', 'waxed'],
      may: [],
      said: 'stated',
    })
    expect(treated['days_since_coating']).toMatchObject({ number: 1059, from: 'treatments: waxed@2024' })
    expect(find({ treatments: [{ what: 'waxed' }] })['done_already']).toEqual({
      has: ['waxed'],
      may: 'any',
      said: 'derived',
      from: 'treatments: waxed',
    })
  })

  test('the kind of object is looked for in the words', () => {
    expect(find({ object: 'lead musket balls' })['object_kind']).toEqual({
      has: ['shot'],
      may: [],
      said: 'derived',
      from: 'object: "musket ball"',
    })
    expect(find({ object: 'padlock with key' })['object_kind']).toEqual({
      has: [],
      may: ['padlock', 'key'],
      said: 'derived',
      from: 'object: "padlock", "key"',
    })
    expect(find({ object: 'padlock', object_kind: 'knife' })['object_kind']).toMatchObject({
      has: ['knife'],
      said: 'stated',
    })
    expect(find({ object: 'thing', object_kind: 'gaming piece' })['object_kind']).toMatchObject({
      has: ['gaming piece'],
    })
    expect(find({ object: 'thing' })['object_kind']).toBeUndefined()
  })

  test('hazard words are heard in every field, kept column and misread value', () => {
    const heard = { has: ['ammunition-like'], may: 'any', said: 'derived' }
    expect(find({ notes: 'Grenade?' })['hazards_noticed']).toEqual({ ...heard, from: 'notes: "grenade"' })
    expect(find({ object: 'grenades' })['hazards_noticed']).toMatchObject(heard)
    expect(find({ extra: { remark: ['a grenade'] } })['hazards_noticed']).toMatchObject(heard)
    expect(find({ unread: { state_now: 'grenade' } })['hazards_noticed']).toMatchObject(heard)
    expect(find({ unread: { hazards_noticed: 'amunition-like' } })['hazards_noticed']).toMatchObject(heard)
    expect(
      facts({ components: [{ ...body, component: 'grenade pin' }] }).find['hazards_noticed'],
    ).toMatchObject(heard)
    expect(
      facts({ components: [{ ...body, extra: { a: { b: 'grenade' } } }] }).find['hazards_noticed'],
    ).toMatchObject(heard)
    expect(find({ treatments: [{ what: 'x-rayed', medium: 'grenade' }] })['hazards_noticed']).toMatchObject(
      heard,
    )
  })

  test('a column of its own that is named as a hazard is a tick, unless it says no', () => {
    const ticked = (value: unknown) => find({ extra: { 'Ammunition-like?': value } })['hazards_noticed']?.has
    for (const yes of ['x', 'yes', 'TRUE', true, 1, 'perhaps'])
      expect(ticked(yes)).toEqual(['ammunition-like'])
    for (const no of ['no', 'N', '0', false, null, 'none', '-', 'unknown']) expect(ticked(no)).toBeUndefined()
    expect(find({ extra: { 'Shell species': 'oyster' } })['hazards_noticed']).toBeUndefined()
  })

  test('what is ticked stays stated and is joined', () => {
    expect(find({ hazards_noticed: ['sharp'], notes: 'grenade' })['hazards_noticed']).toEqual({
      has: ['sharp', 'ammunition-like'],
      may: [],
      said: 'stated',
      from: 'notes: "grenade"',
    })
    expect(find({ hazards_noticed: ['sharp'] })['hazards_noticed']).toEqual({
      has: ['sharp'],
      may: [],
      said: 'stated',
    })
    expect(find({ hazards_noticed: ['unknown'], notes: 'grenade' })['hazards_noticed']).toMatchObject({
      has: ['unknown', 'ammunition-like'],
      may: 'any',
    })
  })

  test('an understood choice means only what its id says', () => {
    expect(facts({ components: [{ ...body, material: 'shell' }] }).find['hazards_noticed']).toBeUndefined()
  })
})

describe('facts of a component', () => {
  test('a stated list is closed, a misread one open', () => {
    expect(part({ seen: ['loose-flakes'] })['seen']).toEqual({
      has: ['loose-flakes'],
      may: [],
      said: 'stated',
    })
    expect(part({ seen: ['loose-flakes'], unread: { seen: 'grene' } })['seen']).toMatchObject({ may: 'any' })
  })

  test('tests without a part are those of the only one', () => {
    const tested = part(
      {},
      { tests: ['silver-nitrate:positive', 'xrf:Fe+Cl', 'residual-chloride-ppm:120', 'magnet:unknown'] },
    )
    expect(tested).toMatchObject({
      silver_nitrate: { has: ['positive'], may: [], said: 'stated' },
      xrf: { has: ['Fe', 'Cl'], may: 'any' },
      residual_chloride_ppm: { number: 120 },
      magnet: { has: ['unknown'], may: 'any', said: 'unknown' },
    })
  })

  test('results that exclude each other are neither certain; of two amounts the higher counts', () => {
    expect(
      part({}, { tests: ['silver-nitrate:positive', 'silver-nitrate:negative'] })['silver_nitrate'],
    ).toMatchObject({ has: [], may: ['positive', 'negative'] })
    expect(
      part({}, { tests: ['residual-chloride-ppm:80', 'residual-chloride-ppm:900'] })['residual_chloride_ppm'],
    ).toMatchObject({ number: 900 })
  })

  test('of several parts a test belongs to the one it names; one that names none is open for all', () => {
    const components: readonly Component[] = [body, { component: 'pin', material: 'copper-alloy' }]
    const [first, second] = facts({
      components,
      tests: ['pin/xrf:Cu+Sn', 'silver-nitrate:negative', 'bath-chloride-mg-l:40', 'lid/magnet:none'],
    }).components
    expect(first!.facts['xrf']).toBeUndefined()
    expect(second!.facts['xrf']).toMatchObject({ has: ['Cu', 'Sn'] })
    for (const { facts: own } of [first!, second!]) {
      expect(own['silver_nitrate']).toMatchObject({ has: [], may: 'any' })
      expect(own['magnet']).toMatchObject({ has: [], may: 'any' })
      expect(own['bath_chloride_mg_l']).toBeUndefined()
    }
  })

  test('the core comes from the field, else from the radiograph; where they disagree, the most metal', () => {
    expect(part({ core: 'partial' })['core']).toEqual({ has: ['partial'], may: [], said: 'stated' })
    expect(part({}, { tests: ['radiograph:core-solid'] })['core']).toEqual({
      has: ['solid'],
      may: [],
      said: 'derived',
      from: 'radiograph:core-solid',
    })
    expect(part({ core: 'none' }, { tests: ['radiograph:core-solid'] })['core']).toMatchObject({
      has: ['solid'],
    })
    expect(part({ core: 'solid' }, { tests: ['radiograph:no-core'] })['core']).toMatchObject({
      has: ['solid'],
    })
    expect(part({ core: 'unknown' }, { tests: ['radiograph:no-core'] })['core']).toMatchObject({
      has: ['none'],
    })
    expect(part({ core: 'unknown' })['core']).toMatchObject({ said: 'unknown' })
    expect(part({}, { tests: ['radiograph:bright-lines'] })['core']).toBeUndefined()
  })

  test('a radiograph that shows one thing leaves the others open, but not a second core', () => {
    expect(part({}, { tests: ['radiograph:core-solid'] })['radiograph']).toMatchObject({
      has: ['core-solid'],
      may: ['bright-lines', 'dense-specks'],
    })
  })
})
