import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { Coupon } from '../../../app/store/air/coupon.tsx'
import { Limits } from '../../../app/store/air/limits.tsx'
import { indoorLimits, judgeCoupon } from '../../../lib/boxes/air-coupon.ts'
import { isoDate } from '../../../lib/base/calendar.ts'
import type { Coupon as CouponGiven } from '../../../lib/record/store-diary.ts'
import type { CouponShown } from '../../../lib/services/show-air.ts'
import { couponOf } from '../../../lib/services/show-air-coupon.ts'
import { knowledge } from '../../knowledge-at-hand.ts'

const silver: CouponGiven = {
  metal: 'silver',
  area_cm2: 32,
  days: 365,
  mass_change_mg: 0.3,
  weighing_error_mg: 0.01,
  method: 'mass-gain',
}

function shown(change: Partial<CouponGiven>): CouponShown {
  const { weighing_error_mg, ...given } = { ...silver, ...change }
  const whole: CouponGiven = weighing_error_mg === undefined ? given : { ...given, weighing_error_mg }
  const read = couponOf(whole, knowledge)
  return {
    entry: {
      id: 'c1',
      kind: 'coupon',
      projectId: 'p',
      version: 1,
      createdAt: 0,
      box: null,
      room: 'Metal store',
      findId: null,
      on: isoDate('2026-11-01')!,
      atMs: null,
      given: whole,
      by: { name: 'Cy Warden', role: 'store-manager', device: 'x' },
    } as unknown as CouponShown['entry'],
    read,
    judged: judgeCoupon(read.coupon, knowledge),
    limits: indoorLimits(read.coupon, knowledge),
  }
}
const draw = (change: Partial<CouponGiven> = {}) =>
  render(<Coupon shown={shown(change)} knowledge={knowledge} />).container

describe('a coupon on the page', () => {
  test('astride a limit names both classes, in words and on the drawing', () => {
    const page = draw()
    expect(screen.getByRole('heading').textContent).toMatch(/IC2 \(low\) or IC3 \(medium\)/)
    expect(screen.getByRole('img').getAttribute('aria-label')).toMatch(/It lies in IC2 or IC3\.$/)
    expect([...page.querySelectorAll('[data-touched="true"]')].map(({ textContent }) => textContent)).toEqual(
      ['IC2', 'IC3'],
    )
  })

  test('limits known from memory carry the mark, and lead to their figures', () => {
    const page = draw()
    expect(page.querySelectorAll('figcaption [data-known="memory"]')).toHaveLength(1)
    expect(page.querySelectorAll('tbody [data-known="memory"]')).toHaveLength(5)
    expect(page.querySelector('tbody a')?.getAttribute('href')).toBe(
      '/sources/figures/iso-11844-1-silver-gain-ic1',
    )
    expect(page.textContent).toMatch(/limits of the classes are from memory/)
  })

  test('lead has no class, no limit and no table, and says so', () => {
    const page = draw({ metal: 'lead' })
    expect(page.textContent).toMatch(/we do not know them. We do not guess/)
    expect(page.textContent).not.toMatch(/IC\d/)
    expect(page.querySelector('table')).toBeNull()
    expect(screen.getByRole('img').getAttribute('aria-label')).toMatch(/their limits are not known/)
  })

  test('above the fiercest class has a place on the ladder and a line in the table', () => {
    const page = draw({ mass_change_mg: 20 })
    expect(page.querySelector('[data-touched="true"]')?.textContent).toBe('above')
    expect(within(screen.getByRole('table', { hidden: true })).getByText('no limit')).toBeTruthy()
  })

  test('what had to be taken is said, and what cannot be judged shows no ladder', () => {
    const { weighing_error_mg: _, ...without } = silver
    render(<Coupon shown={{ ...shown({}), read: couponOf(without, knowledge) }} knowledge={knowledge} />)
    expect(document.body.textContent).toMatch(/± 0.2 mg is taken/)
    const page = draw({ mass_change_mg: -5 })
    expect(page.querySelector('[role="img"]')).toBeNull()
    expect(page.textContent).toMatch(/Hang a new one/)
    expect(page.textContent).toMatch(/5 ± 0.01 mg lighter as it came down/)
  })
})

describe('the limits of the classes', () => {
  test('name lead as unknown and mark every other as remembered', () => {
    const ways = ['gain', 'loss'] as const
    const limits = (['silver', 'lead'] as const).flatMap((metal) =>
      ways.map((weighed) => ({ metal, weighed, limits: indoorLimits({ metal, weighed }, knowledge) })),
    )
    const { container } = render(<Limits limits={limits} knowledge={knowledge} />)
    const rows = [...container.querySelectorAll('tbody tr')].map(({ textContent }) => textContent)
    expect(rows).toHaveLength(4)
    expect(rows.filter((row) => /from memory/.test(row ?? ''))).toHaveLength(2)
    expect(rows.filter((row) => /^lead.*not known to us/.test(row ?? ''))).toHaveLength(2)
  })
})
