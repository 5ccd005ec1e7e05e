import { expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'

const about = (to: string, plan: ReturnType<typeof planOf>) =>
  plan.objections
    .filter((one) => one.to === to)
    .map(({ rule, components, precautionary }) => ({ rule, components, precautionary }))

test('where a proposal is blocked on what is recorded, what is only feared for the same part falls silent', () => {
  const nail = planOf({ proposed: ['wash'] }, { material: 'iron' })
  expect(about('wash', nail)).toEqual([
    { rule: 'objections-wet/wash-iron', components: ['body'], precautionary: false },
  ])
})

test('what is recorded is said beside the block', () => {
  const nail = planOf({ proposed: ['wash'] }, { material: 'iron', evidence: ['weave-pattern'] })
  expect(about('wash', nail).map(({ rule }) => rule)).toEqual(
    expect.arrayContaining(['objections-wet/wash-iron', 'objections-wet/wash-traces']),
  )
})

test('a warning silences nothing, and a block for one part nothing of another', () => {
  const brush = planOf({ proposed: ['dry-brush'] }, { material: 'iron' })
  expect(about('dry-brush', brush)).toContainEqual({
    rule: 'objections-mechanical/brush-traces',
    components: ['body'],
    precautionary: true,
  })
  const inlaid = planOf(
    { proposed: ['dry-brush'] },
    { material: 'iron', evidence: ['gold-coloured-film'] },
    { material: 'copper-alloy' },
  )
  const traces = about('dry-brush', inlaid).find(({ rule }) => rule.endsWith('brush-traces'))
  expect(traces).toMatchObject({ components: ['body', 'body-2'], precautionary: false })
})
