import { expect, test } from 'vitest'
import { fieldLabel, valueLabel } from '../../lib/wording/fact.ts'
import { compiled } from '../knowledge/small-content.ts'
import { evidenceFiles } from '../knowledge/small-evidence.ts'

const { knowledge } = compiled({}, evidenceFiles)

test('the answer to a question is told in the words of the question', () => {
  expect(fieldLabel('looked.skin-edge', knowledge)).toBe('How does it end?')
  expect(valueLabel('looked.skin-edge', 'lifting-edge', knowledge)).toBe('It lifts')
  expect(valueLabel('looked.skin-edge', 'none', knowledge)).toBe('none seen')
  expect(valueLabel('looked.skin-edge', 'unknown', knowledge)).toBe('could not be told')
})

test('one that nobody asks any more is told by its id', () => {
  expect(fieldLabel('looked.skin-smell', knowledge)).toBe('looked.skin smell')
})
