import { describe, expect, test } from 'vitest'
import { judgeCoupon } from '../../lib/boxes/air-coupon.ts'
import { judgeOutdoors } from '../../lib/boxes/air-outdoors.ts'
import { couponMetals, type Coupon } from '../../lib/climate/coupon.ts'
import {
  couponRefusalWords,
  couponWords,
  outdoorRefusalWords,
  outdoorVerdictWords,
} from '../../lib/wording/air.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const silver: Coupon = {
  metal: 'silver',
  weighed: 'gain',
  changeMg: 0.3,
  weighingErrorMg: 0.01,
  areaM2: 0.0032,
  days: 365,
}
const judge = (change: Partial<Coupon>) => {
  const made = judgeCoupon({ ...silver, ...change }, knowledge)
  if (!made.ok) throw new Error('refused')
  return made.value
}
const words = (change: Partial<Coupon>) => couponWords(judge(change), knowledge)

describe('a coupon judged', () => {
  test('clear of every limit it has one class, and says that the limits are from memory', () => {
    expect(words({ changeMg: 0.2 }).headline).toBe('Class IC2 (low) by the silver coupon.')
    expect(words({ changeMg: 0.2 }).lines.join(' ')).toMatch(/limits of the classes are from memory/)
  })

  test('near a limit it lies in both classes and says so', () => {
    expect(words({}).headline).toBe(
      'Class IC2 (low) or IC3 (medium) by the silver coupon: too near a limit to say which.',
    )
    expect(judge({}).classes).toMatchObject({ from: 'IC2', to: 'IC3' })
  })

  test('beyond the fiercest class it says above, not the fiercest', () => {
    expect(words({ changeMg: 20 }).headline).toBe('Class above IC5 by the silver coupon.')
  })

  test('lead has no class, by gain or by loss, whatever it weighed', () => {
    for (const weighed of ['gain', 'loss'] as const) {
      expect(judge({ metal: 'lead', weighed }).classes).toBeNull()
      expect(words({ metal: 'lead', weighed, changeMg: 0 }).headline).toMatch(
        /do not know them. We do not guess/,
      )
      expect(words({ metal: 'lead', weighed }).lines.join(' ')).not.toMatch(/limits of the classes/)
    }
    expect(Object.keys(knowledge.figures).filter((id) => id.startsWith('iso-11844-1-lead'))).toEqual([])
  })

  test('every other metal has five rising limits, weighed either way, every one marked as remembered', () => {
    for (const metal of couponMetals.filter((one) => one !== 'lead'))
      for (const weighed of ['gain', 'loss'] as const) {
        const limits = [1, 2, 3, 4, 5].map(
          (at) => knowledge.figures[`iso-11844-1-${metal}-${weighed}-ic${at}`]!,
        )
        expect(limits.map(({ value }) => value)).toEqual(
          limits.map(({ value }) => value).toSorted((a, b) => a - b),
        )
        expect(new Set(limits.map(({ known }) => known))).toEqual(new Set(['memory']))
      }
  })

  test('the remembered limits of silver hang together: gain over loss is sulphur over silver', () => {
    const limit = (weighed: string, at: number) =>
      knowledge.figures[`iso-11844-1-silver-${weighed}-ic${at}`]!.value
    for (const at of [1, 2, 3, 4, 5])
      expect(limit('gain', at) / limit('loss', at) / 0.148607).toBeCloseTo(1, 1)
  })

  test('gain and the loss it stands for are one class', () => {
    const loss = judge({ weighed: 'loss', changeMg: 0.2 / 0.148607 })
    expect(loss.classes?.all).toEqual(judge({ changeMg: 0.2 }).classes?.all)
    expect(loss.thicknessNmPerYear!.nominal).toBeCloseTo(
      judge({ changeMg: 0.2 }).thicknessNmPerYear!.nominal,
      3,
    )
  })

  test('metal eaten is told from a loss, and from a gain only of silver, taken for sulphide', () => {
    expect(judge({}).assumes).toBe('silver-sulphide')
    expect(judge({ metal: 'copper' }).thicknessNmPerYear).toBeNull()
    expect(words({ metal: 'copper' }).lines.join(' ')).toMatch(/not told by a gain/)
    expect(
      judge({ metal: 'copper', weighed: 'loss', changeMg: 0.16 }).thicknessNmPerYear!.nominal,
    ).toBeCloseTo(5.58, 2)
  })

  test('too short a time, and a change the balance cannot see, are said', () => {
    expect(words({ days: 90 }).lines.join(' ')).toMatch(/hung for 90 days/)
    expect(words({ changeMg: 0.005 }).lines.join(' ')).toMatch(/cannot tell this change from none/)
    expect(words({}).lines.join(' ')).not.toMatch(/hung for|cannot tell/)
  })

  test('every refusal has words that say what to do', () => {
    const made = judgeCoupon({ ...silver, areaM2: 0, days: 0, changeMg: -1 }, knowledge)
    expect(made.ok ? [] : made.problems.map(couponRefusalWords)).toEqual([
      expect.stringMatching(/area/),
      expect.stringMatching(/days/),
      expect.stringMatching(/Hang a new one/),
    ])
  })
})

describe('a year outdoors judged', () => {
  const air = { temperatureC: 10, rhPercent: 75, so2MgPerM2Day: 10, chlorideMgPerM2Day: 5 }

  test('each metal has its range and the classes it touches', () => {
    const made = judgeOutdoors(air, 'outdoors', knowledge)
    if (!made.ok) throw new Error('refused')
    expect(made.value.map(({ metal, classes }) => [metal, ...classes.all])).toEqual([
      ['steel', 'C2', 'C3'],
      ['zinc', 'C3'],
      ['copper', 'C3', 'C4'],
      ['aluminium', 'C2'],
    ])
    const told = made.value.map((verdict) => outdoorVerdictWords(verdict, knowledge))
    expect(told[0]!.headline).toBe('Outdoors, bare steel: class C2 (low) or C3 (medium).')
    expect(told[0]!.lines[0]).toBe('Estimated 31.2 µm in the first year (between 20.9 and 46.8).')
    expect(told[3]!.headline).toMatch(/does not tell apart/)
    expect(told.every(({ lines }) => /from memory/.test(lines.join(' ')))).toBe(true)
  })

  test('the fiercest class of aluminium has no end; of the others it has', () => {
    const fierce = { temperatureC: 28.7, rhPercent: 93, so2MgPerM2Day: 150, chlorideMgPerM2Day: 700 }
    const made = judgeOutdoors(fierce, 'outdoors', knowledge)
    if (!made.ok) throw new Error('refused')
    expect(made.value.find(({ metal }) => metal === 'aluminium')!.classes.to).toBe('CX')
    expect(made.value.find(({ metal }) => metal === 'copper')!.classes.to).toBe('beyond')
  })

  test('of a store it says nothing, and why', () => {
    const indoors = judgeOutdoors(air, 'indoors', knowledge)
    expect(indoors.ok ? [] : indoors.problems.map(outdoorRefusalWords)).toEqual([
      expect.stringMatching(/hang coupons there/),
    ])
    const dry = judgeOutdoors({ ...air, rhPercent: 15 }, 'outdoors', knowledge)
    expect(dry.ok ? [] : dry.problems.map(outdoorRefusalWords)).toEqual([
      'The mean relative humidity [%] is 15; the equations were fitted from 34 to 93 and say nothing beyond.',
    ])
  })
})
