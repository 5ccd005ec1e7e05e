import { expect, test } from 'vitest'
import type { Interpretation } from '../../lib/engine/plan.ts'
import { standingSentence } from '../../lib/wording/interpretations-text.ts'
import { standingWords, stoodOf } from '../../lib/wording/standing.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const rival = (interpretation: string): Interpretation => ({
  component: 'plate',
  about: 'white-metal-sheen',
  interpretation,
  probability: 0,
  range: [0, 0],
  matter: 'white-skin',
  says: '',
  standing: 'settled',
  for: [],
  against: [],
})

test('what was found to be something else is said to be none of the explanations, not the first of them', () => {
  const rivals = [rival('tinning'), rival('silvering')]
  expect(standingWords(stoodOf(rivals)[0]!, knowledge)).toBe('Settled: none of the explanations listed')
  expect(standingSentence(rivals, knowledge)).toBe('Found to be none of the explanations listed.')
})
