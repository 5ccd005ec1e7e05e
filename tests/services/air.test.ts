import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { CouponTaken } from '../../lib/services/keep-coupon.ts'
import { couponOf } from '../../lib/services/show-air-coupon.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { engines } from '../database/engines.ts'
import { day } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store phone' } as const

describe.each(engines)('the air of the store on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string) => {
    const { id } = value(await at.services.startProject({ name }, manager))
    value(
      await at.services.keepPlaces(
        { projectId: id, bytes: bytes('room\nMetal store\nCold room\n') },
        manager,
      ),
    )
    value(
      await at.services.keepPlaces(
        { projectId: id, bytes: bytes('box,room\nB10,Metal store\nB9,Metal store\n') },
        manager,
      ),
    )
    return id
  }
  const hang = (projectId: string, change: Partial<CouponTaken>) =>
    at.services.keepCoupon(
      {
        projectId,
        on: day('2026-11-01'),
        metal: 'silver',
        area_cm2: 32,
        days: 365,
        mass_change_mg: 0.3,
        method: 'mass-gain',
        ...change,
      },
      manager,
    )

  it('stands by room and box, the room itself first, the newest first, however often it is sent', async () => {
    const id = await project('By place')
    value(await hang(id, { box: 'B10' }))
    value(await hang(id, { box: 'B9' }))
    value(await hang(id, { room: 'Metal store', on: day('2025-11-01') }))
    value(await hang(id, { room: 'Metal store' }))
    expect(value(await hang(id, { room: 'Metal store' }))).toEqual({ entered: false })
    value(await hang(id, { room: 'Cold room' }))
    const air = value(await at.services.showAir(id))
    expect(
      air.rooms.map(({ room, places }) => [
        room,
        places.map(({ box, coupons }) => [box, coupons.map(({ entry }) => entry.on)]),
      ]),
    ).toEqual([
      ['Cold room', [[null, ['2026-11-01']]]],
      [
        'Metal store',
        [
          [null, ['2026-11-01', '2025-11-01']],
          ['B9', ['2026-11-01']],
          ['B10', ['2026-11-01']],
        ],
      ],
    ])
    expect(air.places).toEqual({ rooms: ['Cold room', 'Metal store'], boxes: ['B9', 'B10'] })
    expect(air.meaning.map(({ metal }) => metal)).toEqual(['silver'])
  })

  it('keeps the room that a box stood in then', async () => {
    const id = await project('Moved box')
    value(await hang(id, { box: 'B9' }))
    value(await at.services.keepPlaces({ projectId: id, bytes: bytes('box,room\nB9,Cold room\n') }, manager))
    expect(value(await at.services.showAir(id)).rooms.map(({ room }) => room)).toEqual(['Metal store'])
  })

  it('judges by the error that was written, and by an ordinary balance where none was', async () => {
    const id = await project('Errors')
    value(await hang(id, { room: 'Cold room', weighing_error_mg: 0.01 }))
    value(await hang(id, { room: 'Cold room', on: day('2026-10-01') }))
    const [place] = value(await at.services.showAir(id)).rooms[0]!.places
    const [exact, rough] = place!.coupons
    expect([exact!.read.errorTaken, rough!.read.errorTaken]).toEqual([false, true])
    if (!exact!.judged.ok || !rough!.judged.ok) throw new Error('refused')
    expect(exact!.judged.value.classes?.all).toEqual(['IC2', 'IC3'])
    // 0.1 to 0.5 mg of 0.3: from 29.7 to 164 mg/(m²·a).
    expect(rough!.judged.value.rate.low).toBeCloseTo(29.69, 1)
    expect(rough!.judged.value.rate.high).toBeCloseTo(164.06, 1)
  })

  it('keeps what cannot be judged and says why, and never gives lead a class', async () => {
    const id = await project('No result')
    value(await hang(id, { room: 'Cold room', mass_change_mg: -4, weighing_error_mg: 0.1 }))
    value(await hang(id, { room: 'Metal store', metal: 'lead', mass_change_mg: 4 }))
    const [cold, metal] = value(await at.services.showAir(id)).rooms
    const { judged } = cold!.places[0]!.coupons[0]!
    expect(judged.ok ? [] : judged.problems.map(({ code }) => code)).toEqual(['changed-the-other-way'])
    const lead = metal!.places[0]!.coupons[0]!
    expect(lead.limits).toEqual([])
    expect(lead.judged.ok && lead.judged.value.classes).toBeNull()
  })

  it('has the limits of every metal but lead, and reading on for all metals where none hung yet', async () => {
    const air = value(await at.services.showAir(await project('Empty')))
    expect(air.rooms).toEqual([])
    expect(air.limits.filter(({ limits }) => limits.length !== 5).map(({ metal }) => metal)).toEqual([
      'lead',
      'lead',
    ])
    expect(air.meaning).toHaveLength(5)
    for (const { contested, figures } of air.meaning) {
      expect(contested.filter((one) => knowledge.contested[one] === undefined)).toEqual([])
      expect(figures.filter((one) => knowledge.figures[one] === undefined)).toEqual([])
      expect(contested.length + figures.length).toBeGreaterThan(0)
    }
  })

  it.each([
    [{ weighing_error_mg: -1 }, 'weighing_error_mg'],
    [{ days: 0 }, 'days'],
    [{ area_cm2: 0 }, 'area_cm2'],
  ])('does not take a coupon that cannot be: %j', async (wrong, field) => {
    expect(await hang('any', { room: 'Cold room', ...wrong })).toMatchObject({
      ok: false,
      problems: { kind: 'not-accepted', field },
    })
  })

  it('reads coupons of a table, with the error of the balance', async () => {
    const id = await project('Table')
    const table =
      'event,on,room,metal,area_cm2,days,mass_change_mg,weighing_error_mg,method\ncoupon,2026-11-01,Metal store,Ag,32,365,"0,3",10 µg,gain\n'
    value(await at.services.keepPlaces({ projectId: id, bytes: bytes(table) }, manager))
    const [shown] = value(await at.services.showAir(id)).rooms[0]!.places[0]!.coupons
    expect(shown!.read).toEqual({
      coupon: {
        metal: 'silver',
        weighed: 'gain',
        changeMg: 0.3,
        weighingErrorMg: 0.01,
        areaM2: 0.0032,
        days: 365,
      },
      errorTaken: false,
      signTurned: false,
    })
  })

  it('estimates outdoors, and of a building says nothing', () => {
    const air = { temperatureC: 10, rhPercent: 75, so2MgPerM2Day: 10, chlorideMgPerM2Day: 5 }
    expect(at.services.judgeOutdoorAir(air, 'outdoors').ok).toBe(true)
    expect(at.services.judgeOutdoorAir(air, 'indoors')).toMatchObject({
      ok: false,
      problems: [{ code: 'not-outdoors' }],
    })
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})

describe('a loss written with its minus', () => {
  const given = { metal: 'zinc', area_cm2: 10, days: 365, method: 'mass-loss' } as const
  const of = (mass_change_mg: number) =>
    couponOf({ ...given, mass_change_mg, weighing_error_mg: 0.1 }, knowledge)

  it('is the same loss as one written without', () => {
    expect(of(-3).coupon).toEqual(of(3).coupon)
    expect([of(-3).signTurned, of(3).signTurned]).toEqual([true, false])
  })

  it('within the error of the balance the sign says nothing and stays', () => {
    expect(of(-0.05)).toMatchObject({ coupon: { changeMg: -0.05 }, signTurned: false })
  })

  it('a gain keeps its sign: it can be a flake that fell off', () => {
    expect(couponOf({ ...given, method: 'mass-gain', mass_change_mg: -3 }, knowledge)).toMatchObject({
      coupon: { changeMg: -3, weighed: 'gain' },
      signTurned: false,
    })
  })
})
