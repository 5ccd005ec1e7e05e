import { describe, expect, test } from 'vitest'
import { scoreOf, type Scored } from '../../lib/evidence/score.ts'
import { beforeWords, heldWords, resultNote, sourceWords } from '../../lib/wording/identification.ts'
import { poorGradeMeans, poorGradeWords } from '../../lib/wording/poor-grade.ts'
import {
  fitOf,
  guesserWords,
  leaderWords,
  noneOfTheseCountWords,
  pointWords,
  reliabilityWords,
  shareWords,
  tooFewWords,
} from '../../lib/wording/score.ts'
import { day } from '../database/samples.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const point = (stated: number, cameTrue: number, forecasts: number, range: readonly [number, number]) => ({
  stated,
  cameTrue,
  forecasts,
  range,
})

/** So many matters of two explanations, the first of them held for so likely, and true in so many. */
const scored = (matters: number, probability: number, cameTrue: number): readonly Scored[] =>
  Array.from({ length: matters }, (_, at) => ({
    rivals: [
      { interpretation: 'tinning', probability },
      { interpretation: 'silvering', probability: 1 - probability },
    ],
    truth: at < cameTrue ? 'tinning' : 'silvering',
  }))

describe('the score in words', () => {
  test.each([
    [0, 'never'],
    [0.004, 'about 1 in 100'],
    [0.03, 'about 3 in 100'],
    [0.1, 'about 1 in 10'],
    [0.68, 'about 7 in 10'],
    [0.97, 'about 97 in 100'],
    [1, 'always'],
  ])('%f is %s', (share, words) => {
    expect(shareWords(share)).toBe(words)
  })

  test('says what was said, what came out, and whether chance explains the difference', () => {
    expect(pointWords(point(0.7, 0.6, 20, [0.38, 0.78]))).toBe(
      'When the tool said about 7 in 10, it was so in about 6 in 10 (12 of 20 times).',
    )
    expect(pointWords(point(0.9, 0.5, 20, [0.3, 0.7]))).toBe(
      'When the tool said about 9 in 10, it was so in about 5 in 10 (10 of 20 times), less often than said.',
    )
    expect(pointWords(point(0.02, 0, 40, [0, 0.09]))).toBe(
      'When the tool said about 2 in 100, it never was so (0 of 40 times).',
    )
    expect(fitOf(point(0.2, 0.6, 20, [0.4, 0.8]))).toBe('more')
  })

  test('says how many are needed while there are too few, and why', () => {
    expect(tooFewWords({ identified: 7, enough: 20 })).toBe(
      '7 answers known so far; 13 more are needed. With fewer than 20, chance alone would make the tool look good or bad, so nothing is shown before.',
    )
    expect(tooFewWords({ identified: 0, enough: 20 })).toMatch(/^Nothing has been found out yet; 20 more/)
  })

  test('praises and blames as it comes out', () => {
    const good = scoreOf(scored(40, 0.9, 36))!
    expect(leaderWords(good)).toBe('The explanation in front was the true one 36 times in 40.')
    expect(reliabilityWords(good)).toBe('What came out is what was said, as far as chance lets one tell.')
    expect(guesserWords(good)).toBe(
      'It was off by about 4 in 10 of what somebody who only guesses is off by.',
    )
    expect(noneOfTheseCountWords(good)).toBeNull()
    const bad = scoreOf(scored(40, 0.9, 10))!
    expect(reliabilityWords(bad)).toMatch(/^In 2 of 2 groups it came out otherwise/)
    expect(guesserWords(bad)).toBe('Somebody who only guesses would have been nearer to the truth.')
    const idle = scoreOf(scored(40, 0.5, 20))!
    expect(guesserWords(idle)).toMatch(/about as near/)
  })

  test('never says a word of statistics', () => {
    const score = scoreOf(scored(40, 0.9, 10))!
    const all = [
      leaderWords(score),
      reliabilityWords(score),
      guesserWords(score),
      ...score.reliability.map(pointWords),
    ]
    expect(all.join(' ')).not.toMatch(/brier|calibrat|forecast|posterior|probab/i)
  })
})

test('a word that was wrong is told with what it means and what was counted', () => {
  const poor = {
    matter: 'white-skin',
    group: 'skin-edge',
    state: 'lifting-edge',
    rival: 'tinning',
    grade: 'rare',
    means: [0.01, 0.07],
    looked: 14,
    showed: 9,
    range: [0.4, 0.8],
  } as const
  expect(poorGradeWords(poor, knowledge)).toBe(
    'In tinning it is called rare that it has a rim that lifts or flakes; it was so in 9 of the 14 that were looked at.',
  )
  expect(poorGradeMeans(poor)).toMatch(/^The word means about 1 in /)
  expect(poorGradeWords({ ...poor, state: 'rest', showed: 0 }, knowledge)).toMatch(/in none of the 14/)
})

describe('what was found, in words', () => {
  const rivals = [
    { interpretation: 'silvering', probability: 0.3, range: [0.2, 0.5] },
    { interpretation: 'tinning', probability: 0.6, range: [0.4, 0.8] },
    { interpretation: 'electroplate', probability: 0.01, range: [0, 0.05] },
  ] as const
  const told = { method: 'xrf', on: day('2026-11-20'), byWhom: 'The laboratory', reference: '' }

  test('what was thought before stands with its ranges, the likeliest first', () => {
    expect(beforeWords(rivals, knowledge)).toBe(
      'Before, it was thought: tinning, about 6 in 10 (4 to 8); silvering, about 3 in 10 (2 to 5).',
    )
  })
  test.each([
    ['tinning', 'It stood in front before.'],
    ['silvering', 'Something else stood in front before; this was put at about 3 in 10 (2 to 5).'],
    ['none-of-these', 'Nobody had it among the explanations: the evidence base needs another look.'],
  ])('%s is held against it', (interpretation, words) => {
    expect(heldWords(interpretation, rivals)).toBe(words)
  })
  test('where it came from is told in a line, and stands so in the record', () => {
    expect(sourceWords(told, knowledge)).toBe('X-ray fluorescence, The laboratory, 20 November 2026')
    const note = { ...told, component: 'plate', words: ' two\nlines ', report: ['xrf:Cu'] }
    expect(resultNote(note, true, knowledge)).toBe(
      'X-ray fluorescence of plate, The laboratory, 20 November 2026 (xrf:Cu): two lines',
    )
  })
})
