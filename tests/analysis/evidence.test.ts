import { expect, test } from 'vitest'
import { coverage } from '../../lib/analysis/coverage.ts'
import type { Check } from '../../lib/analysis/base.ts'
import { countedTwice } from '../../lib/analysis/counted-twice.ts'
import { evidenceUnexplained, matterSize } from '../../lib/analysis/evidence-covers.ts'
import { gradesWithoutSource, memoryRulesOut } from '../../lib/analysis/evidence-sources.ts'
import { negativeClears } from '../../lib/analysis/negative-clears.ts'
import { looksAgree, questionsUnused } from '../../lib/analysis/questions-asked.ts'
import { tellsApart } from '../../lib/analysis/tells-apart.ts'
import { unusedFigures } from '../../lib/analysis/unused.ts'
import { vocabularyAgrees } from '../../lib/analysis/vocabulary.ts'
import { wordsWithoutCode } from '../../lib/analysis/words-without-code.ts'
import { evidence } from '../../lib/record/ids.ts'
import { compiled, found as foundIn, type Changes } from '../knowledge/small-content.ts'
import { evidenceFiles } from '../knowledge/small-evidence.ts'

const found = (check: Check, changes: Changes = {}) => foundIn(check, changes, evidenceFiles)
const inMatter = (...pairs: (readonly [string, string])[]): Changes => ({ 'evidence/white-skin.yaml': pairs })

const ofBlock = [
  '          - { work: read-1999, place: p. 1, says: supports, known: read }',
  '          - { work: read-1999, place: p. 1, says: against, known: read }',
] as const

test('a state, odds or a failure without a source in support speaks', () => {
  expect(found(gradesWithoutSource, inMatter(ofBlock))).toEqual([
    { code: 'grade-without-source', about: { of: 'white-skin/skin-edge/lifting-edge' } },
  ])
  const odds = [
    'because: It is known., sources: [{ work: house-rule, place: null, says: supports, known: common-practice }]',
    'because: It is known., sources: []',
  ] as const
  expect(found(gradesWithoutSource, inMatter(odds))).toEqual([
    { code: 'grade-without-source', about: { of: 'white-skin/tinning' } },
  ])
  const failure = [
    'grade: occasional, sources: [{ work: house-rule, place: null, says: supports, known: common-practice }]',
    'grade: occasional, sources: []',
  ] as const
  expect(found(gradesWithoutSource, inMatter(failure))).toEqual([
    { code: 'grade-without-source', about: { of: 'white-skin/skin-elements/beside-it' } },
  ])
  expect(found(gradesWithoutSource)).toEqual([])
})

test('memory that rules an explanation out speaks; that it grades one rare is silent', () => {
  expect(
    found(
      memoryRulesOut,
      inMatter([
        '{ tinning: typical, silvering: occasional, active',
        '{ tinning: typical, silvering: excluded, active',
      ]),
    ),
  ).toEqual([
    { code: 'memory-rules-out', about: { state: 'white-skin/skin-edge/thin-edge', rival: 'silvering' } },
  ])
  expect(found(memoryRulesOut)).toEqual([])
})

test('a negative diffraction that all but clears active corrosion speaks; one that leaves it open is silent', () => {
  const grade = (word: string) =>
    inMatter([
      'silvering: typical, active-chloride-corrosion: occasional',
      `silvering: typical, active-chloride-corrosion: ${word}`,
    ])
  expect(found(negativeClears, grade('rare'))).toEqual([
    {
      code: 'negative-clears',
      about: { state: 'white-skin/skin-minerals/rest', rival: 'active-chloride-corrosion', grade: 'rare' },
    },
  ])
  expect(found(negativeClears, grade('excluded'))).toHaveLength(1)
  expect(found(negativeClears, grade('frequent'))).toEqual([])
  expect(found(negativeClears)).toEqual([])
})

test('a clear silver nitrate test that all but clears active corrosion speaks', () => {
  const clear = (word: string) =>
    inMatter(
      ['by: xrd', 'by: record'],
      [
        'when: { xrd: [nantokite] }, fits: { tinning: rare, silvering: rare, active-chloride-corrosion: typical }',
        `when: { silver_nitrate: [negative] }, fits: { tinning: rare, silvering: rare, active-chloride-corrosion: ${word} }`,
      ],
    )
  expect(found(negativeClears, clear('rare'))).toMatchObject([
    { about: { state: 'white-skin/skin-minerals/salt' } },
  ])
  expect(found(negativeClears, clear('occasional'))).toEqual([])
})

test('what two groups read, or a group and the odds, speaks; other entries of a list are silent', () => {
  const second = (cells: string) =>
    inMatter(['by: xrd', 'by: record'], ['when: { xrd: [nantokite] }', `when: { ${cells} }`])
  expect(found(countedTwice, second('xrf: [Sn]'))).toEqual([
    {
      code: 'counted-twice',
      about: { matter: 'white-skin', fact: 'xrf', first: 'skin-elements', second: 'skin-minerals' },
    },
  ])
  expect(found(countedTwice, second('material: [brass]'))).toMatchObject([
    { about: { fact: 'material', first: 'the odds' } },
  ])
  expect(found(countedTwice, second('looked.skin-edge: [none]'))).toMatchObject([
    { about: { fact: 'looked.skin-edge', first: 'skin-edge' } },
  ])
  expect(found(countedTwice, second('xrf: [Cl]'))).toEqual([])
  expect(found(countedTwice)).toEqual([])
})

test('a group that tells nothing apart speaks, and so do two rivals that nothing tells apart', () => {
  const idle = inMatter([
    'fits: { tinning: rare, silvering: rare, active-chloride-corrosion: typical }, sources: [{ work: read-1999, place: p. 2, says: supports, known: read }] }\n    rest: { says: no salt was found, fits: { tinning: typical, silvering: typical, active-chloride-corrosion: occasional } }',
    'fits: { tinning: rare, silvering: rare, active-chloride-corrosion: rare }, sources: [{ work: read-1999, place: p. 2, says: supports, known: read }] }\n    rest: { says: no salt was found, fits: { tinning: typical, silvering: typical, active-chloride-corrosion: typical } }',
  ])
  expect(found(tellsApart, idle)).toEqual([
    { code: 'group-tells-nothing', about: { group: 'white-skin/skin-minerals' } },
  ])
  const text = evidenceFiles['evidence/white-skin.yaml']!
  const alike = {
    'evidence/white-skin.yaml': text.replaceAll(
      /tinning: \w+, silvering: \w+,/g,
      'tinning: rare, silvering: rare,',
    ),
  }
  expect(found(tellsApart, alike)).toEqual([
    { code: 'rivals-alike', about: { matter: 'white-skin', rivals: ['tinning', 'silvering'] } },
  ])
  expect(found(tellsApart)).toEqual([])
})

test('a trace that no matter explains speaks; content without any matter is silent', () => {
  const unexplained = found(evidenceUnexplained).map(({ about }) => (about as { evidence: string }).evidence)
  expect(unexplained).toEqual(evidence.filter((id) => id !== 'white-metal-sheen'))
  expect(foundIn(evidenceUnexplained)).toEqual([])
})

test('a matter with too little to weigh speaks', () => {
  expect(found(matterSize)).toEqual([])
  const text = evidenceFiles['evidence/white-skin.yaml']!
  const short = { 'evidence/white-skin.yaml': text.slice(0, text.indexOf('  - id: skin-minerals')) }
  expect(found(matterSize, short)).toEqual([
    { code: 'matter-size', about: { matter: 'white-skin', part: 'groups', count: 2, least: 3, most: 13 } },
  ])
})

test('a question that nothing reads speaks, and an answer that counts as none of the others', () => {
  const more = (answers: string) => ({
    'questions/more.yaml': `- { id: skin-hue, asks: Which?, tell: Look., why: So., by: eye, answers: ${answers} }\n`,
  })
  const hue = '[{ id: grey, label: Grey, tell: It is. }]'
  expect(found(questionsUnused, more(hue))).toEqual([
    { code: 'question-unused', about: { question: 'skin-hue' } },
  ])
  const answer = {
    'questions/small.yaml': [
      ['    - { id: thin-edge', '    - { id: torn-edge, label: Torn, tell: Torn. }\n    - { id: thin-edge'],
    ],
  } as const
  expect(found(questionsUnused, answer)).toEqual([
    { code: 'answer-unread', about: { question: 'skin-edge', answer: 'torn-edge' } },
  ])
  expect(found(questionsUnused)).toEqual([])
})

test('a question or answer that only the record or only the content has speaks', () => {
  const differ = (looks: Readonly<Record<string, readonly string[]>>) =>
    found(looksAgree(looks)).map(({ about }) => about)
  expect(differ({ 'skin-edge': ['lifting-edge', 'thin-edge'] })).toEqual([])
  expect(differ({})).toEqual([{ question: 'skin-edge', answer: null, missing: 'record' }])
  expect(differ({ 'skin-edge': ['lifting-edge', 'torn-edge'], 'skin-hue': ['grey'] })).toEqual([
    { question: 'skin-edge', answer: 'thin-edge', missing: 'record' },
    { question: 'skin-edge', answer: 'torn-edge', missing: 'content' },
    { question: 'skin-hue', answer: null, missing: 'content' },
  ])
})

test('what evidence refers to is used, and its rivals are codes that something says', () => {
  // The year is there for nobody yet.
  expect(found(unusedFigures)).toEqual([{ code: 'figure-unused', about: { figure: 'early' } }])
  expect(found(wordsWithoutCode)).toEqual([])
})

test('an answered question needs no words of a field, also where a rule reads it', () => {
  const fields = found(vocabularyAgrees).map(({ about }) => (about as { field: string }).field)
  expect(fields.filter((field) => field.startsWith('looked.'))).toEqual([])
})

test('grades and odds are counted by how they are known', () => {
  const { grades, odds, matters } = coverage(compiled({}, evidenceFiles).knowledge)
  expect(grades).toEqual({
    count: 15,
    known: { read: 12, 'second-hand': 0, 'common-practice': 0, memory: 3 },
  })
  expect(odds).toEqual({ count: 4, known: { read: 1, 'second-hand': 0, 'common-practice': 3, memory: 0 } })
  expect(matters).toMatchObject([
    {
      matter: 'white-skin',
      count: 15,
      rivals: 3,
      groups: 3,
      states: 5,
      failures: 2,
      works: 3,
      contested: false,
    },
  ])
})
