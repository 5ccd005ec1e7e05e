import { expect, test } from 'vitest'
import { assemblage } from '../demo/assemblage.ts'
import { decisionSheet } from '../../lib/papers/decision-sheet.ts'
import { decisionSheetText } from '../../lib/papers/decision-sheet-text.ts'
import { assess } from '../../lib/engine/assess.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { planOf, today } from '../record-at-hand.ts'

const gaps = knowledge.decisions.flatMap((decision) => decision.notCovered)
const quiet = new Set(gaps.flatMap(({ what, quiet: silent }) => (silent ? [what] : [])))
const aloud = (...materials: readonly Parameters<typeof planOf>[1]['material'][]) =>
  planOf({}, ...materials.map((material, at) => ({ material, component: `part ${at}` }))).notCovered.map(
    ({ what }) => what,
  )

test('a bare iron nail leaves nothing unsaid', () => {
  expect(planOf({ object: 'nail' }, { material: 'iron' }).notCovered).toEqual([])
})

test('what nobody published is said as plainly as advice', () => {
  expect(aloud('silver', 'niello')).toEqual(['How dry niello must be kept by itself'])
  expect(aloud('copper-alloy', 'amber')).toEqual(['How dry amber and jet must be kept by themselves'])
  expect(aloud('iron', 'rubber')).toEqual(['How dry rubber, plastic, wax and resin must be kept'])
})

test('a proposal nobody wrote about is not passed over in silence', () => {
  const plan = planOf({ proposed: ['oven-drying'] }, { material: 'stone' })
  expect(plan.objections).toEqual([])
  expect(plan.notCovered.map(({ what }) => what)).toContain(
    'Whether stone, pottery or gems may be dried in an oven',
  )
})

test('what is knowingly left to others stands on no plan, but on the review sheet', () => {
  const said = assemblage().records.flatMap(
    (record) => assess(record, knowledge, { asOf: today, questions: false }).notCovered,
  )
  expect(said.length).toBeGreaterThan(0)
  expect(said.filter(({ what }) => quiet.has(what))).toEqual([])
  const decision = knowledge.decisions.find(({ id }) => id === 'packing-box')!
  const text = decisionSheetText(decisionSheet(decision, knowledge))
  expect(text).toContain('Knowingly silent')
  expect(text).toContain(decision.notCovered[0]!.what)
})

test('no gap is named twice', () => {
  const names = gaps.map(({ what }) => what)
  expect(names.filter((what, at) => names.indexOf(what) !== at)).toEqual([])
})
