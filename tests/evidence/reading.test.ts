import { describe, expect, test } from 'vitest'
import { allHold, lookupOf } from '../../lib/evidence/read-cells.ts'
import { inVain, possibleStates } from '../../lib/evidence/outcome.ts'
import { tablesFor } from '../../lib/evidence/mappings.ts'
import { couldNotTell, stated, type Fact } from '../../lib/record/fact.ts'
import { baseOf, edge, elements, facts, fits, ground, skin, state } from './small-base.ts'

const reading = (name: string, fact: Fact) => lookupOf(facts({ [name]: fact }), 0)
const xrf = (...found: readonly string[]): Fact => ({ has: found, may: 'any', said: 'stated' })

const possible = (group: typeof edge, of: Record<string, Fact> = {}, find: Record<string, Fact> = {}) => {
  const matter = { ...skin, id: group.id, groups: [group] }
  const table = tablesFor(matter, baseOf(matter)).groups[0]!
  return possibleStates(table, lookupOf(facts(of, find), 0)).map((at) => table.states[at]!.id)
}

describe('how evidence reads a record', () => {
  test('what was not ticked may be there all the same, unless somebody says that there is nothing', () => {
    const cell = { fact: 'seen', any: ['compact-green'] }
    expect(allHold([cell], reading('seen', stated('red-layer')))).toBe('open')
    expect(allHold([cell], reading('seen', stated('compact-green')))).toBe('yes')
    expect(allHold([cell], reading('seen', stated('none')))).toBe('no')
  })

  test('an element that the report does not name was not found; of a report nobody could read it may be any', () => {
    const cell = { fact: 'xrf', any: ['Ag'] }
    expect(allHold([cell], reading('xrf', xrf('Sn', 'Cu')))).toBe('no')
    expect(allHold([{ fact: 'xrf', none: ['Ag'] }], reading('xrf', xrf('Sn', 'Cu')))).toBe('yes')
    expect(allHold([cell], reading('xrf', couldNotTell))).toBe('open')
    expect(allHold([cell], reading('xrf', { has: [], may: 'any', said: 'stated' }))).toBe('open')
  })

  test('a copper alloy may be a bronze, a metal that nobody could name may be any, bronze is no brass', () => {
    const cell = { fact: 'material', any: ['brass'] }
    expect(allHold([cell], reading('material', stated('copper-alloy')))).toBe('open')
    expect(allHold([cell], reading('material', stated('metal-unidentified')))).toBe('open')
    expect(allHold([cell], reading('material', stated('bronze')))).toBe('no')
    expect(
      allHold([{ fact: 'material', any: ['copper-alloy'] }], reading('material', stated('copper-alloy'))),
    ).toBe('yes')
  })
})

describe('the states that a record leaves possible', () => {
  test('are all of them where nobody looked, or looked in vain', () => {
    expect(possible(edge)).toEqual(['lifting', 'worn', 'rest'])
    expect(possible(edge, { 'looked.edge': couldNotTell })).toEqual(['lifting', 'worn', 'rest'])
    expect(possible(ground, {}, { burial: couldNotTell })).toEqual(['sea', 'rest'])
  })

  test('are the one that was answered, and the rest for none of them', () => {
    expect(possible(edge, { 'looked.edge': stated('worn') })).toEqual(['worn'])
    expect(possible(edge, { 'looked.edge': stated('none') })).toEqual(['rest'])
  })

  test('are the first that surely holds, of a report', () => {
    expect(possible(elements, { xrf: xrf('Sn', 'Ag', 'Cu') })).toEqual(['silver'])
    expect(possible(elements, { xrf: xrf('Sn', 'Cu') })).toEqual(['tin'])
    expect(possible(elements, { xrf: xrf('Cu') })).toEqual(['rest'])
  })

  test('are the rest where all are surely not so, as the record stands', () => {
    expect(possible(ground, {}, { burial: stated('peat') })).toEqual(['rest'])
    expect(possible(ground, {}, { burial: stated('peat', 'marine') })).toEqual(['sea'])
  })

  test('keep an earlier one that nobody has looked for beside a later one that holds', () => {
    const colours = {
      ...ground,
      id: 'colours',
      states: [
        state('red', fits('rare', 'rare', 'rare'), { fact: 'seen', any: ['red-layer'] }),
        state('green', fits('rare', 'rare', 'rare'), { fact: 'seen', any: ['compact-green'] }),
      ],
    }
    expect(possible(colours, { seen: stated('compact-green') })).toEqual(['red', 'green'])
    expect(possible(colours, { seen: stated('red-layer') })).toEqual(['red'])
    expect(possible(colours, { seen: stated('warty-green') })).toEqual(['red', 'green', 'rest'])
    expect(possible(colours, { seen: stated('none') })).toEqual(['rest'])
  })

  test('say that somebody looked in vain only where somebody did', () => {
    const [table] = tablesFor(skin, baseOf(skin)).groups
    expect(inVain(table!, lookupOf(facts({ 'looked.edge': couldNotTell }), 0))).toBe(true)
    expect(inVain(table!, lookupOf(facts({ 'looked.edge': stated('none') }), 0))).toBe(false)
    expect(inVain(table!, lookupOf(facts(), 0))).toBe(false)
  })
})
