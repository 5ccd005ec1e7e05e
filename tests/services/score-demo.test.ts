import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Project } from '../../lib/services/kept.ts'
import { enterIdentifications } from '../../lib/services/identification-table.ts'
import { engines } from '../database/engines.ts'
import { assistant, day } from '../database/samples.ts'
import { demoFiles } from '../demo/files.ts'
import { truths } from '../demo/truths.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { bytes, root, stage, value, type Stage } from './world.ts'

const table = (await demoFiles()).get('identifications.csv') as string

describe.each(engines)('what was found out about the demo, on %s', (engine) => {
  let at: Stage
  let project: Project
  beforeAll(async () => {
    at = await stage(engine)
    project = value(await at.services.loadDemo(assistant)).project
  }, 240_000)
  afterAll(() => at.opened.close())

  it('is enough for a score, in which a word that was wrong is named', async () => {
    const shown = value(await at.services.showScore(project.id))
    expect(shown.identified).toBe(truths.filter(({ found }) => found).length)
    expect(shown.score!.reliability.length).toBeGreaterThanOrEqual(4)
    expect(shown.score!.noneOfThese).toBe(2)
    expect(shown.score!.brier).toBeLessThan(shown.score!.brierOfGuessing)
    expect(shown.poor).toContainEqual(
      expect.objectContaining({
        matter: 'white-skin',
        group: 'skin-edge',
        state: 'lifting-edge',
        rival: 'tinning',
      }),
    )
  })

  it('leaves as the table it came from, says that it is invented, and comes in once', async () => {
    const { content } = value(await at.services.exportIdentifications(project.id))
    const lines = (text: string) => text.split('\r\n').toSorted()
    expect(lines(content)).toEqual(lines(table))
    expect(content.split('\r\n')[1]).toMatch(/,invented$/)
    const world = { store: at.opened.store, knowledge, today: () => day('2026-11-25'), root }
    const again = { projectId: project.id, bytes: bytes(table) }
    expect(value(await enterIdentifications(world, again, assistant)).rows).toBeGreaterThan(30)
    expect(lines(value(await at.services.exportIdentifications(project.id)).content)).toEqual(lines(table))
    const wrong = { projectId: project.id, bytes: bytes(table.replace('TW-0302', 'TW-9302')) }
    expect(await enterIdentifications(world, wrong, assistant)).toMatchObject({
      ok: false,
      problems: { kind: 'not-accepted', field: expect.stringMatching(/^row \d+, find_number$/) },
    })
  })
})
