import { describe, expect, test } from 'vitest'
import { acceptOption, isBegun, optionsFor, wordsOf } from '../../../app/intake/_grid/options.ts'
import { cellAfter } from '../../../app/intake/answer-row.ts'
import { knowledge } from '../../knowledge-at-hand.ts'

const words = wordsOf('looked', knowledge)
const offered = (text: string) => optionsFor(text, words, true).map(({ id }) => id)

describe('the cell of closer looks', () => {
  test('offers questions first, and the answers of the one that is chosen', () => {
    expect(offered('').every(isBegun)).toBe(true)
    expect(offered('white skin end')).toEqual(['skin-edge:'])
    const begun = acceptOption('', 'skin-edge:', true)
    expect(offered(begun)).toContain('skin-edge:lifting-edge')
    expect(offered(begun).every((id) => id.startsWith('skin-edge:') && !isBegun(id))).toBe(true)
    expect(offered(begun).slice(-2)).toEqual(['skin-edge:none', 'skin-edge:unknown'])
    expect(offered('skin-edge:lift')).toEqual(['skin-edge:lifting-edge'])
  })
  test('holds several, and offers no question a second time', () => {
    const cell = acceptOption('skin-edge:none; white skin', 'skin-tone:', true)
    expect(cell).toBe('skin-edge:none; skin-tone:')
    expect(offered('skin-edge:none; skin-')).not.toContain('skin-edge:')
    expect(offered('skin-edge:none; skin-')).toContain('skin-tone:')
  })
  test('takes an answer beside those to other questions; any other cell is the answer itself', () => {
    const rows = [{ id: 'a', cells: { looked: 'skin-edge:none; skin-tone:lavender' } }]
    expect(cellAfter(rows, 'a', 'looked', 'skin-edge:lifting-edge')).toBe(
      'skin-tone:lavender; skin-edge:lifting-edge',
    )
    expect(cellAfter(rows, 'a', 'core', 'solid')).toBe('solid')
  })
})
