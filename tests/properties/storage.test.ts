import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Band, Plan } from '../../lib/engine/plan.ts'
import { burial as grounds, stateNow } from '../../lib/record/ids.ts'
import { anyRecord } from '../arbitrary/record.ts'
import { codesOf } from './statements.ts'
import { law, planned } from './plans.ts'

/** Records of which the ground and the present state are known, so that wet finds are met often. */
const fromTheGround = fc
  .tuple(anyRecord(), fc.constantFrom(...stateNow), fc.constantFrom(...grounds))
  .map(([record, state_now, ground]) => ({ ...record, state_now, burial: [ground] }))

const toldToDry = [
  'air-dry-openly',
  'dry-box',
  'weigh-until-constant',
  'perforated-bag',
  'open-the-pack',
  'bag-and-label',
]
const toldToStayWet = ['keep-wet', 'wet-tub']

const toldBy = (plan: Plan) => codesOf([...plan.handling, ...plan.packing, ...plan.steps])

const saidOf = (told: ReadonlySet<string>, codes: readonly string[]) => codes.filter((code) => told.has(code))

describe('wet or dry', () => {
  test('no plan says both keep wet and keep dry', () => {
    const met = { wet: 0, dry: 0, 'as-found': 0 }
    law(fromTheGround, (record) => {
      const plan = planned(record)
      const { keep } = plan.storage
      met[keep] += 1
      const told = toldBy(plan)
      if (keep !== 'dry') expect(saidOf(told, toldToDry)).toEqual([])
      if (keep !== 'wet') expect(saidOf(told, toldToStayWet)).toEqual([])
      if (keep === 'wet') expect(plan.storage.rhPercent).toBeNull()
    })
    for (const count of Object.values(met)) expect(count).toBeGreaterThan(50)
  })
})

/** The band every part's limits leave; its ends cross, or meet, where the limits do not. */
const leftOver = ({ storage }: Plan) => ({
  min: Math.max(...storage.components.map(({ limit }) => limit.min)),
  max: Math.min(...storage.components.map(({ limit }) => limit.max)),
})

function bandsMeet({ storage }: Plan, { min, max }: Band): void {
  expect(storage.conflict).toBeNull()
  expect(storage.interim).toBeNull()
  if (storage.keep === 'wet') return
  const band = storage.rhPercent!
  expect(band.min).toBeLessThan(band.max)
  expect(band.min).toBeGreaterThanOrEqual(min)
  expect(band.max).toBeLessThanOrEqual(max)
}

function bandsDoNotMeet({ storage }: Plan, { min, max }: Band): void {
  const { rhPercent, decidedBy, conflict, interim } = storage
  expect({ rhPercent, decidedBy }).toEqual({ rhPercent: null, decidedBy: 'conservator' })
  expect(conflict!.between.length).toBeGreaterThanOrEqual(2)
  expect(conflict!.gapPercent).toBeCloseTo(min - max)
  expect(conflict!.waysOut.length).toBeGreaterThan(0)
  expect(interim !== null).toBe(storage.keep !== 'wet')
  if (interim === null) return
  expect(interim.rhPercent.min).toBeLessThan(interim.rhPercent.max)
  expect(interim.says.strength).toBe('consider')
}

describe('one band for the whole find', () => {
  test('is given where the limits of all parts meet; where they do not, ways out and a place to wait', () => {
    let conflicts = 0
    law(anyRecord(), (record) => {
      const plan = planned(record)
      const left = leftOver(plan)
      if (left.min < left.max) return bandsMeet(plan, left)
      conflicts += 1
      bandsDoNotMeet(plan, left)
    })
    expect(conflicts).toBeGreaterThan(50)
  })

  test('temperatures are ones that can be, and nothing within the band, or where it waits, calls for action', () => {
    law(fromTheGround, (record) => {
      const { rhPercent, interim, temperatureC, act } = planned(record).storage
      const { min, max } = temperatureC
      if (min !== null && max !== null) expect(min).toBeLessThanOrEqual(max)
      // Where nothing known binds it, any humidity will do but one that grows mould.
      const band = rhPercent ?? interim?.rhPercent
      if (!band || band.max === 100) return
      for (const { aboveRhPercent = 100, belowRhPercent = 0 } of act) {
        expect(aboveRhPercent).toBeGreaterThanOrEqual(band.max)
        expect(belowRhPercent).toBeLessThanOrEqual(band.min)
      }
    })
  })
})
