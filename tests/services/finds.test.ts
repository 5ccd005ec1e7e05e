import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { ConditionRecord } from '../../lib/record/record.ts'
import type { FindPage } from '../../lib/services/list-finds.ts'
import { engines } from '../database/engines.ts'
import { assistant, conservator, day, record } from '../database/samples.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { stage, value, type Stage } from './world.ts'

const iron = (find: string, more: Partial<ConditionRecord> = {}) =>
  record(find, { state_now: 'dry', burial: ['free-draining'], ...more })

describe.each(engines)('finds and their plans on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string) => value(await at.services.startProject({ name }, assistant)).id
  const add = async (projectId: string, ...records: readonly ConditionRecord[]) =>
    value(await at.services.addRecords({ projectId, records }, assistant))

  it('keeps a record with who wrote it and the plan it was given', async () => {
    const id = await project('One')
    const { finds } = await add(id, iron('TW-1', { recorded_on: day('2026-11-20') }))
    const shown = value(await at.services.showFind({ findId: finds[0]!.id }))
    expect(shown.history[0]!.kept).toMatchObject({ by: assistant, recordedOn: '2026-11-20' })
    expect(shown.history[0]!.plans).toHaveLength(1)
    expect(shown.history[0]!.plans[0]).toMatchObject({ knowledge: knowledge.hash, asOf: '2026-11-25' })
    expect(shown.now.storage.rhPercent!.max).toBeLessThanOrEqual(20)
    const [trail] = value(await at.services.latestChanges(1))
    expect(trail).toMatchObject({ what: 'add-records', by: assistant })
  })

  it('plans by the newest record, whichever was entered last', async () => {
    const id = await project('Newest')
    const { finds } = await add(id, iron('TW-1', { recorded_on: day('2026-05-02'), notes: 'newer' }))
    await add(
      id,
      iron('TW-1', { recorded_on: day('2024-05-02'), notes: 'older', hazards_noticed: ['ammunition-like'] }),
    )
    const shown = value(await at.services.showFind({ findId: finds[0]!.id }))
    expect(shown.history.map(({ kept }) => kept.record.notes)).toEqual(['newer', 'older'])
    const [listed] = value(await at.services.listFinds({ projectId: id, order: 'number' })).finds
    expect(listed!.line.stops).toEqual([])
  })

  it('plans again with the knowledge of today and keeps the plan that was issued', async () => {
    const id = await project('Knowledge')
    const { finds } = await add(id, iron('TW-1'))
    const other = at.later({ knowledge: { ...knowledge, hash: 'sha256-newer' } })
    const shown = value(await other.showFind({ findId: finds[0]!.id }))
    expect(shown.knowledgeChanged).toBe(true)
    expect(shown.now.knowledge).toBe('sha256-newer')
    expect(shown.history[0]!.plans.map((plan) => plan.knowledge)).toEqual([knowledge.hash])
    const [listed] = value(await other.listFinds({ projectId: id, order: 'number' })).finds
    expect(listed!.knowledge).toBe('sha256-newer')
  })

  it('lists as of the day on which it is asked', async () => {
    const id = await project('Day')
    await add(id, iron('TW-1'))
    const list = async (services: Stage['services']) =>
      value(await services.listFinds({ projectId: id, order: 'number' })).finds[0]!
    expect((await list(at.services)).asOf).toBe('2026-11-25')
    expect((await list(at.later({ on: '2026-12-01' }))).asOf).toBe('2026-12-01')
  })

  it('gives every find once, page after page, the most pressing first', async () => {
    const id = await project('Pages')
    const many = Array.from({ length: 57 }, (_, number) =>
      iron(`TW-${number}`, number % 5 === 0 ? { hazards_noticed: ['ammunition-like'] } : {}),
    )
    await add(id, ...many)
    const seen: string[] = []
    let stops = 0
    for (let after: string | null = ''; after !== null;) {
      const page: FindPage = value(
        await at.services.listFinds({ projectId: id, order: 'urgency', after: after || null, limit: 10 }),
      )
      expect(page.total).toBe(57)
      for (const { line } of page.finds) {
        seen.push(line.findNumber)
        if (line.stops.length > 0) expect(seen.length).toBe(++stops)
      }
      after = page.next
    }
    expect(new Set(seen).size).toBe(57)
    expect(stops).toBe(12)
  })

  it('does not take an address of a page that it did not give', async () => {
    const answer = await at.services.listFinds({
      projectId: await project('Odd'),
      order: 'number',
      after: 'tampered',
    })
    expect(answer).toMatchObject({ ok: false, problems: { kind: 'not-accepted', field: 'after' } })
  })

  it('groups finds by the band they need', async () => {
    const id = await project('Bands')
    await add(
      id,
      iron('TW-1'),
      iron('TW-2'),
      record('TW-3', { components: [{ component: 'body', material: 'gold' }] }),
    )
    const bands = value(await at.services.bandsNeeded(id))
    expect(bands.reduce((sum, { finds }) => sum + finds, 0)).toBe(3)
    const dry = bands.find(({ finds }) => finds === 2)!
    const listed = value(await at.services.listFinds({ projectId: id, order: 'number', band: dry.band }))
    expect(listed.finds.map(({ line }) => line.findNumber)).toEqual(['TW-1', 'TW-2'])
  })

  it('says what presses today, stops before all else', async () => {
    const id = await project('Start')
    await add(id, iron('TW-1'), iron('TW-2', { hazards_noticed: ['ammunition-like'] }))
    const page = value(await at.services.startPage(id))
    expect(page).toMatchObject({ finds: 2, today: '2026-11-25' })
    expect(page.stops.map(({ line }) => line.findNumber)).toEqual(['TW-2'])
    expect(page.pressing[0]!.line.findNumber).toBe('TW-2')
  })

  it("prints a site's own people with every stop, and notices who was faster", async () => {
    const id = await project('People')
    const { finds } = await add(id, iron('TW-2', { hazards_noticed: ['ammunition-like'] }))
    const [site] = value(await at.services.sitePeople(id)).sites
    const police = (name: string, version: number | null) =>
      at.services.keepContacts(
        { siteId: site!.id, contacts: [{ kind: 'police', name, reach: '999', version }] },
        conservator,
      )
    value(await police('Harbour station', null))
    expect(await police('Late', 7)).toMatchObject({
      ok: false,
      problems: { kind: 'changed-meanwhile', what: 'contact' },
    })
    const [listed] = value(await at.services.listFinds({ projectId: id, order: 'urgency' })).finds
    expect(listed!.line.stops[0]!.who).toContain('Harbour station, 999')
    expect(value(await at.services.planFinds([finds[0]!.id]))[0]!.plan.cautions[0]!.who).toContain(
      'Harbour station',
    )
  })

  it('does not take what cannot be kept', async () => {
    expect(await at.services.startProject({ name: '  ' }, assistant)).toMatchObject({
      ok: false,
      problems: { because: 'empty' },
    })
    expect(await at.services.showFind({ findId: 'none' })).toMatchObject({
      ok: false,
      problems: { kind: 'missing', what: 'find' },
    })
    const lost = await at.services.addRecords({ projectId: 'none', records: [iron('TW-1')] }, assistant)
    expect(lost).toMatchObject({ ok: false, problems: { kind: 'missing', what: 'project' } })
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
