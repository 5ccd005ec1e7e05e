import { describe, expect, test } from 'vitest'
import { couldNotTell, stated } from '../../lib/record/fact.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { readLook } from '../../lib/record/look.ts'
import { lookedFacts } from '../../lib/record/looked-facts.ts'
import { looks } from '../../lib/record/looks.ts'
import { noNames } from '../../lib/record/names.ts'
import { readCell } from '../../lib/record/read-cell.ts'
import { looked } from '../../lib/record/read-list.ts'
import { record, today } from '../record-at-hand.ts'

const known = {
  'skin-edge': ['lifting-edge', 'thinning-edge'],
  'skin-colour': ['grey', 'cold-white'],
}

describe('the field looked', () => {
  test('holds answers to questions; none and unknown are answers of each', () => {
    expect(looked(['skin-edge:lifting-edge', 'skin-colour:none'], known)).toEqual({
      value: ['skin-edge:lifting-edge', 'skin-colour:none'],
      problems: [],
    })
    expect(looked(['skin-edge:unknown'], known).value).toEqual(['skin-edge:unknown'])
  })

  test('is read forgivingly, and says so', () => {
    expect(looked(['Skin edge: Lifting edge, Skin colour: grey'], known)).toEqual({
      value: ['skin-edge:lifting-edge', 'skin-colour:grey'],
      problems: [
        { code: 'look-read', found: 'Skin edge: Lifting edge', suggestion: 'skin-edge:lifting-edge' },
        { code: 'look-read', found: 'Skin colour: grey', suggestion: 'skin-colour:grey' },
      ],
    })
  })

  test('keeps what it does not understand, with a suggestion', () => {
    expect(looked(['skin-egde:lifting-edge', 'skin-colour:gray', 'skin-colour:mauve'], known)).toEqual({
      unread: 'skin-egde:lifting-edge;skin-colour:gray;skin-colour:mauve',
      problems: [
        { code: 'unknown-look', found: 'skin-egde:lifting-edge', suggestion: 'skin-edge:lifting-edge' },
        { code: 'unknown-look-answer', found: 'skin-colour:gray', suggestion: 'skin-colour:grey' },
        {
          code: 'unknown-look-answer',
          found: 'skin-colour:mauve',
          suggestion: 'skin-colour:grey | cold-white | none | unknown',
        },
      ],
    })
    expect(readLook('nothing of ours', known)).toEqual({ ok: false, code: 'unknown-look' })
  })

  test('keeps two answers to one question and says that they disagree; the same twice is one', () => {
    expect(looked(['skin-edge:lifting-edge', 'skin-colour:grey', 'skin-edge:none'], known)).toEqual({
      value: ['skin-edge:lifting-edge', 'skin-colour:grey', 'skin-edge:none'],
      problems: [{ code: 'looks-disagree', found: 'skin-edge:lifting-edge; skin-edge:none' }],
    })
    expect(looked(['skin-edge:none', 'skin-edge:none'], known)).toEqual({
      value: ['skin-edge:none'],
      problems: [],
    })
  })

  test('says nothing by a blank word or a bare unknown', () => {
    const cell = (value: string) =>
      readCell('looked', { column: 'looked', value }, noNames, 'undecided').problems.map(({ code }) => code)
    expect(cell('n/a')).toEqual(['blank-word'])
    expect(cell('unknown')).toEqual(['blank-word'])
  })
})

describe('facts of the field looked', () => {
  test('one for each answered question', () => {
    const answers = ['skin-edge:lifting-edge', 'skin-colour:unknown']
    expect(lookedFacts({ looked: answers }, known)).toEqual({
      'looked.skin-edge': stated('lifting-edge'),
      'looked.skin-colour': couldNotTell,
    })
    expect(lookedFacts({ looked: ['skin-edge:none'] }, known)).toEqual({ 'looked.skin-edge': stated('none') })
  })

  test('two answers that differ are none, nor is one beside another that could not be read', () => {
    expect(lookedFacts({ looked: ['skin-edge:lifting-edge', 'skin-edge:unknown'] }, known)).toEqual({})
    const unread = { looked: 'skin-edge:torn;skin-colour:mauve' }
    expect(lookedFacts({ looked: ['skin-edge:lifting-edge'], unread }, known)).toEqual({})
    expect(lookedFacts({ looked: ['skin-edge:lifting-edge', 'skin-edge:lifting-edge'] }, known)).toEqual({
      'looked.skin-edge': stated('lifting-edge'),
    })
  })

  test('a question that nobody knows any more is no fact', () => {
    expect(lookedFacts({ looked: ['skin-smell:none'] }, known)).toEqual({})
  })

  test('they stand with the facts of their part', () => {
    const [question, answers] = Object.entries(looks)[0]!
    const answered = record({}, { material: 'bronze', looked: [`${question}:${answers[0]}`] })
    const { components } = factsOf(answered, [], today)
    expect(components[0]!.facts[`looked.${question}`]).toEqual(stated(answers[0]!))
  })
})

test('Raman results are phases, open at their end like those of X-ray diffraction', () => {
  const measured = record({ tests: ['raman:acanthite+calcite'] }, { material: 'silver' })
  expect(factsOf(measured, [], today).components[0]!.facts['raman']).toEqual({
    has: ['acanthite', 'calcite'],
    may: 'any',
    said: 'stated',
    from: 'raman:acanthite+calcite',
  })
})
