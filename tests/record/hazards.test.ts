import { describe, expect, test } from 'vitest'
import { hazardsIn } from '../../lib/record/hazard-words.ts'
import { wordList, wordsIn, type TextWord } from '../../lib/record/text-words.ts'

const words: readonly TextWord[] = [
  { words: ['grenade', 'hand-grenade'], not: [], hazard: 'ammunition-like' },
  { words: ['shell'], not: ['oyster shell', 'shell midden'], hazard: 'ammunition-like' },
  { words: ['battery'], not: [], hazard: 'swollen-tin-or-cylinder' },
  { words: ['padlock'], not: [], objectKind: 'padlock' },
  { words: ['obüs'], not: [], hazard: 'ammunition-like' },
]
const hazards = (text: string, ticked = false) => hazardsIn(text, words, ticked).map((one) => one.hazard)
const found = (text: string) => wordsIn(text, wordList(words)).map((hit) => hit.word)

describe('words of a list', () => {
  test.each([
    ['a Grenade in clay', ['grenade']],
    ['GRENADES', ['grenade']],
    ['two batteries', ['battery']],
    ["the grenade's pin", ['grenade']],
    ['hand grenade', ['hand-grenade', 'grenade']],
    ['Obus', ['obüs']],
    ['pomegranate, grenadier', []],
    ['shell', ['shell']],
    ['oyster shell', []],
    ['oyster shells', []],
    ['oyster shell beside a shell', ['shell']],
    ['shell midden', []],
  ])('%s', (text, expected) => {
    expect(found(text).toSorted()).toEqual(expected.toSorted())
  })
})

describe('hazards in a text', () => {
  test.each([
    ['ammunition-like', ['ammunition-like']],
    ['Ammunition like thing, rusted', ['ammunition-like']],
    ['ammunition_like and luminous paint', ['ammunition-like', 'luminous-paint']],
    ['amunition-like', ['ammunition-like']],
    ['ammunition-lkie', ['ammunition-like']],
    ['woven-white-fibr', ['woven-white-fibre']],
    ['nail; mould', ['mould']],
    ['clay mould fragment', []],
    ['mould-made vessel', []],
    ['sharp sand', []],
    ['sharp', ['sharp']],
    ['iron nail', []],
  ])('%s', (text, expected) => {
    expect(hazards(text)).toEqual(expected)
  })

  test('in the hazard field any word of it counts, and a slip too', () => {
    expect(hazards('sharp edges', true)).toEqual(['sharp'])
    expect(hazards('some mould', true)).toEqual(['mould'])
    expect(hazards('shrap', true)).toEqual(['sharp'])
    expect(hazards('mold', true)).toEqual(['mould'])
  })

  test('each hazard once, with the word that told it', () => {
    expect(hazardsIn('grenade, grenades, shell', words)).toEqual([
      { hazard: 'ammunition-like', word: 'grenade' },
    ])
  })
})
