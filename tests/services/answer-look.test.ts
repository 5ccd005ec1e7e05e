import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { engines } from '../database/engines.ts'
import { assistant, day, record } from '../database/samples.ts'
import { stage, value, type Stage } from './world.ts'

describe.each(engines)('a look at a kept find, on %s', (engine) => {
  let at: Stage
  let projectId: string
  beforeAll(async () => {
    at = await stage(engine)
    projectId = value(await at.services.startProject({ name: 'Looks' }, assistant)).id
  })
  afterAll(() => at.opened.close())

  const kept = async (find: string) =>
    value(
      await at.services.addRecords(
        {
          projectId,
          records: [
            record(find, {
              box: 'B-1',
              recorded_on: day('2026-11-01'),
              components: [{ component: 'body', material: 'bronze', evidence: ['white-metal-sheen'] }],
            }),
          ],
        },
        assistant,
      ),
    ).finds[0]!.id
  const shown = async (findId: string) => value(await at.services.showFind({ findId }))

  it('is a record of its own day beside the first, and is not asked again', async () => {
    const findId = await kept('TW-1')
    const before = await shown(findId)
    const asked = before.now.lookNext.find(({ fact }) => fact.includes('looked:'))!
    const answer = asked.answers[0]!
    value(await at.services.answerLook({ findId, fact: asked.fact, answers: [answer] }, assistant))
    const after = await shown(findId)
    expect(after.history).toHaveLength(2)
    expect(after.history[1]!.kept).toEqual(before.history[0]!.kept)
    const newest = after.history[0]!.kept.record
    expect(newest.components[0]!.looked).toEqual([`${asked.fact.split('looked:')[1]}:${answer}`])
    expect(newest.recorded_by).toBe(assistant.name)
    expect(newest.recorded_on! > '2026-11-01').toBe(true)
    expect(newest.box).toBe('B-1')
    expect(after.now.lookNext.map(({ fact }) => fact)).not.toContain(asked.fact)
  })

  it('that answers nothing keeps nothing', async () => {
    const findId = await kept('TW-2')
    for (const [fact, answers] of [
      ['body.looked:skin-edge', []],
      ['body.looked:skin-edge', ['no-such']],
      ['notes', ['unknown']],
    ] as const)
      expect((await at.services.answerLook({ findId, fact, answers }, assistant)).ok).toBe(false)
    expect((await shown(findId)).history).toHaveLength(1)
    expect(
      (await at.services.answerLook({ findId: 'nowhere', fact: 'burial', answers: ['damp'] }, assistant)).ok,
    ).toBe(false)
  })
})
