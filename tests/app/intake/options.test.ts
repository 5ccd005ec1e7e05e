import { expect, test } from 'vitest'
import { acceptOption, optionsFor } from '../../../app/intake/_grid/options.ts'

const word = (id: string, label: string) => ({ id, label, means: '', tell: '' })
const words = [
  word('copper-alloy', 'Copper alloy'),
  word('copper', 'Copper'),
  word('white-metal', 'White metal'),
]
const ids = (text: string, several = false) => optionsFor(text, words, several).map(({ id }) => id)

test('offers what begins so before what holds it', () => {
  expect(ids('metal')).toEqual(['white-metal'])
  expect(ids('co')).toEqual(['copper-alloy', 'copper'])
})
test('is silent once the word stands there in full', () => {
  expect(ids('copper')).toEqual([])
})
test('in a list looks at the last item, and not at what is taken', () => {
  expect(ids('copper; c', true)).toEqual(['copper-alloy'])
  expect(acceptOption('copper; c', 'copper-alloy', true)).toBe('copper; copper-alloy')
})
test('a single word takes the place of what was typed', () => {
  expect(acceptOption('whi', 'white-metal', false)).toBe('white-metal')
})
