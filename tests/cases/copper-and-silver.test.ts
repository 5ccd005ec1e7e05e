import { describe, expect, test } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import { planOf } from '../record-at-hand.ts'
import { codes, line, methods, saying, request } from '../said.ts'

describe('copper alloy, silver and gold', () => {
  test('a coin with pale green powder in its envelope: isolated and dry, because that powder is chloride until tested', () => {
    const plan = planOf(
      {
        object: 'coin',
        object_kind: 'coin',
        burial: ['ploughsoil'],
        state_now: 'dry',
        packed_in: ['paper-envelope'],
        needed_for: ['dating'],
      },
      { material: 'copper-alloy', seen: ['pale-green-powder', 'powder-in-bag'], extent: 'patches' },
    )
    expect(plan.urgency).toBe('days')
    expect(plan.storage.rhPercent).toEqual({ min: 0, max: 35 })
    expect(codes(plan.packing)).toEqual(saying('repack', 'dry-box', 'keep-metals-apart', 'no-wood-or-card'))
    expect(codes(plan.handling)).toEqual(saying('do-not-clean', 'wear-gloves', 'keep-crumbs'))
    expect(methods(plan)).toEqual(['x-radiography', 'chloride-test', 'xrd'])
    expect(codes(plan.referrals)).toEqual(saying('treat-active-corrosion', 'ask-coin-specialist'))
    expect(plan.inspection.everyDays).toBe(30)
  })

  test('an enamelled brooch on an iron pin: no single humidity, because glass wants 35 % and iron rusts above 12', () => {
    const plan = planOf(
      {
        object: 'plate brooch',
        object_kind: 'brooch',
        burial: ['free-draining'],
        state_now: 'dry',
        packed_in: ['perforated-bag'],
      },
      { material: 'copper-alloy', seen: ['compact-green'], evidence: ['red-fill', 'empty-cells'] },
      { material: 'enamel', role: 'inlay', seen: ['chalky-fill'] },
      { material: 'iron', role: 'pin' },
    )
    expect(plan.storage).toMatchObject({ rhPercent: null, decidedBy: 'conservator' })
    expect(plan.storage.conflict).toMatchObject({ between: ['inlay', 'pin'], gapPercent: 23 })
    expect(plan.storage.interim).toMatchObject({ rhPercent: { min: 35, max: 42 }, checkEveryDays: 7 })
    expect(codes(plan.packing)).toContain('no-dry-box')
    expect(codes(plan.packing)).not.toContain('dry-box')
    expect(codes(plan.handling)).toEqual(saying('do-not-clean', 'do-not-take-apart', 'photograph-first'))
    expect(methods(plan)).toContain('optical-microscopy')
  })

  test('a gilded mount to be brushed and warmed: neither, because the gold sits on the corrosion and may hold mercury', () => {
    const plan = planOf(
      {
        object: 'mount',
        object_kind: 'mount',
        burial: ['free-draining'],
        state_now: 'dry',
        packed_in: ['cotton-wool'],
        proposed: ['dry-brush', 'heat'],
      },
      { material: 'copper-alloy', seen: ['compact-green'], evidence: ['gold-coloured-film', 'cast-relief'] },
    )
    expect(line(plan.objections, 'brush-traces')).toMatchObject({ level: 'block', to: 'dry-brush' })
    expect(line(plan.objections, 'heat-metal')).toMatchObject({ level: 'block', to: 'heat' })
    expect(line(plan.cautions, 'mercury').level).toBe('warn')
    expect(codes(plan.handling)).toEqual(saying('do-not-touch', 'do-not-clean'))
    expect(codes(plan.packing)).toEqual(saying('repack', 'no-cotton-wool'))
    expect(request(plan, 'xrf').question).toMatch(/two spots/)
    expect(plan.urgency).toBe('routine')
  })

  test('a mount with pale blue powder from a wooden drawer: wood and glass are looked at first, because blue is not bronze disease', () => {
    const plan = planOf(
      { object: 'mount', object_kind: 'mount', burial: ['clay'], state_now: 'dry', packed_in: ['wood'] },
      { material: 'copper-alloy', seen: ['pale-blue-powder'] },
      { component: 'stud', material: 'glass', role: 'inlay' },
    )
    expect(plan.storage.rhPercent).toEqual({ min: 35, max: 42 })
    expect(codes(plan.packing)).toEqual(saying('repack', 'no-wood-or-card', 'no-dry-box'))
    expect(methods(plan)).toContain('xrd')
    expect(codes(plan.referrals)).toContain('judge-activity')
    expect(codes(plan.referrals)).not.toContain('treat-active-corrosion')
  })

  test('a silver spoon with black in its lines, to be dipped for a show: no dip, because the black may be niello', () => {
    const plan = planOf(
      {
        object: 'spoon',
        object_kind: 'spoon',
        burial: ['free-draining'],
        state_now: 'dry',
        packed_in: ['wool-or-felt'],
        proposed: ['silver-dip', 'ultrasonic'],
        needed_for: ['display'],
      },
      { material: 'silver', seen: ['black-tarnish', 'brittle-cracks'], evidence: ['black-in-cut-lines'] },
    )
    const blocked = plan.objections
      .filter(({ level }) => level === 'block')
      .map(({ to, code }) => `${to}: ${code}`)
    expect(blocked).toEqual(
      saying('silver-dip: dip-niello', 'silver-dip: dip-brittle', 'ultrasonic: ultrasonic-metal'),
    )
    expect(plan.storage).toMatchObject({ light: 'dark', rhPercent: { min: 0, max: 45 } })
    expect(plan.storage.air).toEqual(saying('no-sulphur', 'low-oxygen'))
    expect(codes(plan.packing)).toEqual(saying('repack', 'no-rubber-or-wool'))
    expect(methods(plan)).toEqual(saying('xrf', 'raman', 'x-radiography'))
    expect(codes(plan.referrals)).toContain('display-and-loan')
  })

  test('a bronze candlestick lacquered in 2014: looked at twice a year, because a lacquer fails before it shows', () => {
    const plan = planOf(
      {
        object: 'candlestick',
        burial: ['organic-urban'],
        state_now: 'dry',
        stored_rh_percent: 48,
        treatments: [{ what: 'lacquered', on: '2014' }],
      },
      { material: 'bronze', seen: ['no-change-seen'] },
    )
    expect(plan.urgency).toBe('routine')
    expect(plan.inspection).toMatchObject({ everyDays: 180, nextOn: '2027-05-24' })
    expect(plan.inspection.look).toMatch(/reviewed the coating/)
    expect(line(plan.objections, 'lacquered-already').level).toBe('warn')
    expect(plan.storage.components[0]).toMatchObject({ limit: { max: 55 }, preference: { max: 45 } })
  })

  test('a dress pin due on loan in six days, sealed in plastic: weeks, because a date presses and nothing corrodes', () => {
    const plan = planOf(
      {
        object: 'dress pin',
        object_kind: 'dress-pin',
        burial: ['calcareous'],
        state_now: 'dry',
        packed_in: ['sealed-bag'],
        needed_for: ['loan'],
        needed_by: '2026-12-01' as IsoDate,
      },
      { material: 'copper-alloy', seen: ['compact-green'], evidence: ['punched-dots'] },
    )
    expect(plan.urgency).toBe('weeks')
    expect(codes(plan.packing)).toEqual(saying('repack', 'perforated-bag', 'guard-edges'))
    expect(codes(plan.packing)).not.toContain('dry-box')
    expect(methods(plan)[0]).toBe('photography')
  })

  test('a gold ring to be washed: not washed, because gold keeps its residues and may have to be reported', () => {
    const plan = planOf(
      {
        object: 'finger ring',
        object_kind: 'ring',
        burial: ['free-draining'],
        state_now: 'dry',
        proposed: ['wash'],
      },
      { material: 'gold', seen: ['bare-metal'] },
      { material: 'gemstone', role: 'setting' },
    )
    expect(line(plan.objections, 'wash-metal').level).toBe('block')
    expect(line(plan.cautions, 'legal-duty')).toMatchObject({ level: 'note', call: 'finds-officer' })
    expect(codes(plan.referrals)).toContain('ask-finds-officer')
    expect(plan.urgency).toBe('routine')
  })
})
