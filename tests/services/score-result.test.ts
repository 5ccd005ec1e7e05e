import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { thoughtBefore } from '../../lib/field/thought.ts'
import { hazardsIn } from '../../lib/record/hazard-words.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import type { ResultGiven } from '../../lib/services/enter-result.ts'
import { engines } from '../database/engines.ts'
import { assistant, conservator, day, record } from '../database/samples.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { stage, value, type Stage } from './world.ts'

const plate = {
  component: 'plate',
  role: 'body',
  material: 'copper-alloy',
  evidence: ['white-metal-sheen'],
} as const

const sheen = (find: string, more: Partial<ConditionRecord> = {}) =>
  record(find, { recorded_on: day('2026-11-01'), components: [plate], ...more })

const result: Omit<ResultGiven, 'findId'> = {
  component: 'plate',
  method: 'xrf',
  on: day('2026-11-20'),
  byWhom: 'The laboratory',
  reference: 'R 7',
  words: 'Three spots, all alike.',
  report: ['xrf:Cu+Sn'],
  found: { matter: 'white-skin', interpretation: 'tinning' },
}

describe.each(engines)('a result that comes in, on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  let projects = 0
  const find = async (one: ConditionRecord) => {
    const name = `Result ${(projects += 1)}`
    const projectId = value(await at.services.startProject({ name }, assistant)).id
    return value(await at.services.addRecords({ projectId, records: [one] }, assistant)).finds[0]!.id
  }
  const shown = async (findId: string) => value(await at.services.showFind({ findId }))
  const enter = async (findId: string, more: Partial<ResultGiven> = {}, by = conservator) => {
    const entered = await at.services.enterResult({ ...result, ...more, findId }, by)
    if (!entered.ok) throw new Error(JSON.stringify(entered.problems))
    return entered.value
  }

  it('is a new record of its day; the one before stays as it was', async () => {
    const before = sheen('TW-1', { notes: 'From the ditch.', tests: ['magnet:none', 'xrf:unknown'] })
    const id = await find(before)
    const { recordId, alreadyThere } = await enter(id)
    const { history } = await shown(id)
    expect(history.map(({ kept }) => kept.recordedOn)).toEqual(['2026-11-20', '2026-11-01'])
    expect(history[0]!.kept.id).toBe(recordId)
    expect(alreadyThere).toBe(false)
    expect(history[1]!.kept.record).toEqual(before)
    expect(history[0]!.kept.record).toEqual({
      ...before,
      recorded_on: '2026-11-20',
      recorded_by: 'Bo Lathe',
      tests: ['magnet:none', 'xrf:Cu+Sn'],
      notes:
        'From the ditch.\nX-ray fluorescence, The laboratory, R 7, 20 November 2026 (xrf:Cu+Sn): Three spots, all alike.',
    })
    expect(history[0]!.plans).toHaveLength(1)
  })

  it('is held against what was thought without it, whichever came first', async () => {
    const [together, after] = [await find(sheen('TW-1')), await find(sheen('TW-1'))]
    const { identification } = await enter(together)
    await enter(after, { found: null })
    const later = await enter(after, { report: [] })
    const without = thoughtBefore(
      sheen('TW-1'),
      { component: 'plate', matter: 'white-skin', method: 'xrf' },
      knowledge,
      day('2026-11-25'),
    )
    expect(identification!.thought).toEqual(without)
    expect(later.identification!.thought).toEqual(without)
    expect((await shown(after)).history).toHaveLength(2)
    expect((await shown(together)).now.interpretations.every(({ standing }) => standing === 'settled')).toBe(
      true,
    )
  })

  it('that settles what was asked is asked for no more, on the page and on paper; the plan it is issued with says so', async () => {
    const id = await find(sheen('TW-1'))
    const asks = async () => {
      const [printed] = value(await at.services.planFinds([id]))
      const plans = [(await shown(id)).now, printed!.plan]
      return plans.map(({ requests }) => requests.some(({ gainBits }) => gainBits !== null))
    }
    expect(await asks()).toEqual([true, true])
    await enter(id)
    expect(await asks()).toEqual([false, false])
    const issued = (await shown(id)).history[0]!.plans[0]!.plan
    const standings = issued.interpretations.map(({ standing }) => standing)
    expect(new Set(standings)).toEqual(new Set(['settled']))
  })

  it('is kept once, however often it is sent', async () => {
    const id = await find(sheen('TW-1'))
    const first = await enter(id)
    const again = await enter(id)
    expect(again).toMatchObject({ recordId: first.recordId, alreadyThere: true })
    expect(again.identification!.id).toBe(first.identification!.id)
    const { history, identifications } = await shown(id)
    expect([history.length, identifications.length]).toEqual([2, 1])
  })

  it('of two people at once loses neither', async () => {
    const id = await find(sheen('TW-1'))
    const one = { method: 'xrf', report: ['xrf:Cu+Sn'], found: null }
    const other = { method: 'x-radiography', report: ['radiograph:core-solid'], found: null }
    const third = { method: 'raman', report: ['raman:cassiterite'], found: null }
    const person = (name: string) => ({ ...conservator, name, device: `computer of ${name}` })
    await Promise.all([one, other, third].map((each, at) => enter(id, each, person(`Reader ${at}`))))
    const newest = (await shown(id)).history[0]!.kept.record
    expect(newest.tests?.toSorted()).toEqual(['radiograph:core-solid', 'raman:cassiterite', 'xrf:Cu+Sn'])
  })

  it('names its part where there are several, and takes the place of answers before it', async () => {
    const other = { component: 'pin', role: 'pin', material: 'iron' } as const
    const looked = ['skin-edge:lifting-edge', 'skin-section:none']
    const id = await find(sheen('TW-1', { components: [{ ...plate, looked }, other] }))
    await enter(id, { method: 'xrf', found: null })
    const section = Object.values(knowledge.questions).find(({ by }) => by === 'sem-eds')!
    const answer = section.answers[0]!.id
    await enter(id, { method: 'sem-eds', report: [`${section.id}:none`], found: null })
    await enter(id, { method: 'sem-eds', report: [`${section.id}:${answer}`], reference: 'R 8', found: null })
    const { record: newest } = (await shown(id)).history[0]!.kept
    expect(newest.tests).toEqual(['plate/xrf:Cu+Sn'])
    expect(newest.components[1]).toEqual(other)
    expect(newest.components[0]!.looked).toContain('skin-edge:lifting-edge')
    expect(newest.components[0]!.looked!.filter((text) => text.startsWith(section.id))).toEqual([
      `${section.id}:${answer}`,
    ])
    expect(newest.notes).toContain('X-ray fluorescence of plate')
  })

  it('that tells nothing takes nothing away', async () => {
    const id = await find(sheen('TW-1', { tests: ['xrf:Cu+Ag'] }))
    await enter(id, { report: ['xrf:unknown'], found: null })
    const { record: newest } = (await shown(id)).history[0]!.kept
    expect(newest.tests).toEqual(['xrf:Cu+Ag'])
    expect(newest.notes).toContain('xrf:unknown')
  })

  it('older than the last look is not hidden behind it', async () => {
    const id = await find(sheen('TW-1', { recorded_on: day('2026-11-24') }))
    await enter(id)
    const { kept } = (await shown(id)).history[0]!
    expect(kept.record.tests).toEqual(['xrf:Cu+Sn'])
    expect(kept.recordedOn).toBe('2026-11-24')
  })

  it('moves the find nowhere: its record names the box in which it lay that day', async () => {
    const id = await find(sheen('TW-1', { box: 'B1' }))
    const { project } = await shown(id)
    const boxes = 'box,room\nB1,Store\nB2,Store\n'
    const moved = 'event,on,site_code,find_number,move,box\nmoved,2026-11-10,TW,TW-1,to-box,B2\n'
    for (const text of [boxes, moved]) {
      const table = { projectId: project.id, bytes: new TextEncoder().encode(text) }
      expect(value(await at.services.keepPlaces(table, assistant)).unreadableRows).toBe(0)
    }
    const lies = async () =>
      value(await at.services.listFinds({ projectId: project.id, order: 'number', limit: 1 })).finds[0]!.line
        .box
    expect(await lies()).toBe('B2')
    await enter(id)
    expect(await lies()).toBe('B2')
    expect((await shown(id)).history[0]!.kept.record.box).toBe('B2')
  })

  it.each([
    ['component', { component: 'pin' }],
    ['method', { method: 'guess', report: [] }],
    ['method', { method: '' }],
    ['on', { on: day('2027-01-01') }],
    ['byWhom', { byWhom: ' ' }],
    ['reference', { reference: 'x'.repeat(121) }],
    ['report', { report: [], found: null, words: ' ' }],
    ['report.xrd', { report: ['xrd:cassiterite'] }],
    ['report.skin-edge', { report: ['skin-edge:lifting-edge'] }],
    ['report.xrf', { report: ['xrf:Copper'] }],
    ['matter', { found: { matter: 'black-fill', interpretation: 'niello' } }],
    ['interpretation', { found: { matter: 'white-skin', interpretation: 'niello' } }],
  ])('is refused where its %s cannot be', async (field, wrong) => {
    const id = await find(sheen('TW-1'))
    const entered = await at.services.enterResult({ ...result, ...wrong, findId: id }, conservator)
    expect(entered.ok || entered.problems.map((one) => one.kind === 'not-accepted' && one.field)).toEqual([
      field,
    ])
    expect((await shown(id)).history).toHaveLength(1)
  })

  it('is told of everything that is wrong with it at once, and nothing of it is kept', async () => {
    const id = await find(sheen('TW-1'))
    const wrong = { component: 'pin', on: day('2027-01-01'), byWhom: '', report: ['xrd:x', 'xrf:Cu'] }
    const entered = await at.services.enterResult({ ...result, ...wrong, findId: id }, conservator)
    expect(entered.ok || entered.problems).toHaveLength(4)
    expect((await shown(id)).identifications).toEqual([])
    const gone = await at.services.enterResult({ ...result, findId: 'no-such' }, conservator)
    expect(gone).toMatchObject({ ok: false, problems: [{ kind: 'missing', what: 'find' }] })
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})

it('no method is called by a word that would raise an alarm when it stands in the notes', () => {
  const words = knowledge.vocabulary.textWords
  const loud = Object.values(knowledge.methods).filter(
    ({ label }) => hazardsIn(label, words, false).length > 0,
  )
  expect(loud).toEqual([])
})
