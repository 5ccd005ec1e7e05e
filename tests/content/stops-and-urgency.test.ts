import { expect, test } from 'vitest'
import type { Rule } from '../../lib/knowledge/knowledge.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const decision = (id: string) => knowledge.decisions.find((one) => one.id === id)!

const stopCodes = new Set(
  knowledge.decisions.flatMap(({ rules }) =>
    rules.flatMap(({ level, then }) => (level === 'stop' && then.kind === 'say' ? [then.code] : [])),
  ),
)

/** The hazards that a rule's cell names. */
const hazardsOf = ({ when }: Rule): readonly string[] =>
  when.flatMap((cell) => (cell.fact === 'hazards' && 'any' in cell ? cell.any : []))

const answering = (id: string, ...answers: readonly string[]): readonly Rule[] =>
  decision(id).rules.filter(({ then }) => then.kind === 'answer' && answers.includes(then.answer))

test('only a stop is urgent now, and every stop is', () => {
  const now = answering('urgency', 'now')
  expect(now.filter((rule) => hazardsOf(rule).length === 0).map(({ id }) => id)).toEqual([])
  expect(new Set(now.flatMap(hazardsOf))).toEqual(stopCodes)
})

test('whatever stops all work also keeps hands off', () => {
  const off = answering('hands-off', 'hands-off', 'in-place')
  expect(new Set(off.flatMap(hazardsOf))).toEqual(stopCodes)
})

test('every stop says whom to call and is spoken of something recorded alone', () => {
  const stops = knowledge.decisions.flatMap(({ absent, rules }) =>
    rules.flatMap(({ id, level, call, when }) =>
      level === 'stop' ? [{ id, absent, call, asks: when.length }] : [],
    ),
  )
  expect(stops.length).toBeGreaterThan(5)
  expect(
    stops.filter(({ absent, call, asks }) => absent !== 'silent' || call === null || asks === 0),
  ).toEqual([])
})
