import { describe, expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'
import { codes, daysToAct, line, methods, saying } from '../said.ts'

describe('iron from the ground', () => {
  test('a bag of nails, damp: dried unwashed and kept as a lot, for nails are counted and not treated', () => {
    const plan = planOf(
      {
        context: '1104',
        object: 'nails',
        object_kind: 'nail',
        quantity: 34,
        mass_g: 412,
        period: 'medieval',
        burial: ['free-draining', 'clay'],
        state_now: 'damp',
        days_since_lifting: 1,
      },
      { material: 'iron', known_by: 'magnet', seen: ['orange-brown-crust', 'soil-concretion'] },
    )
    expect(plan.urgency).toBe('days')
    expect(plan.storage).toMatchObject({ keep: 'dry', rhPercent: { min: 0, max: 12 }, conflict: null })
    expect(codes(plan.handling)).toEqual(
      saying('do-not-wash', 'do-not-brush', 'leave-soil-on', 'air-dry-openly', 'do-not-seal-wet'),
    )
    expect(codes(plan.packing)).toEqual(saying('bulk-by-context', 'perforated-bag', 'dry-box'))
    expect(codes(plan.packing)).not.toContain('bag-singly')
    expect(line(plan.steps, 'air-dry-openly').order).toBeLessThan(line(plan.steps, 'dry-box').order)
    expect(methods(plan)).toEqual(['x-radiography'])
    expect([plan.cautions, plan.objections]).toEqual([[], []])
  })

  test('a tinned spur with a bath proposed: no bath, because tin dissolves in it, and X-ray first', () => {
    const plan = planOf(
      {
        object: 'prick spur',
        object_kind: 'spur',
        period: 'medieval',
        burial: ['organic-urban'],
        state_now: 'dry',
        packed_in: ['dry-box'],
        proposed: ['alkaline-desalination'],
        significance: 'high',
      },
      { material: 'iron', seen: ['orange-brown-crust'], evidence: ['white-metal-sheen'] },
    )
    expect(line(plan.objections, 'desalination-plated')).toMatchObject({
      level: 'block',
      precautionary: false,
    })
    expect(line(plan.objections, 'radiograph-before-bath').level).toBe('block')
    expect(line(plan.objections, 'desalination-choice').contested).toBe('desalination')
    expect(plan.storage.rhPercent?.max).toBe(12)
    expect(codes(plan.handling)).toEqual(saying('do-not-clean', 'photograph-first'))
    expect(codes(plan.referrals)).toEqual(saying('decide-desalination', 'decide-uncovering'))
    expect(codes(plan.packing)).toEqual(saying('check-gel'))
  })

  test('a buckle with wire in its rust: recorded and imaged before anybody cleans, because inlay has come off in cleaning', () => {
    const plan = planOf(
      {
        object: 'buckle plate',
        object_kind: 'buckle',
        burial: ['grave'],
        state_now: 'dry',
        needed_for: ['publication'],
        proposed: ['investigative-cleaning'],
        tests: ['radiograph:core-partial', 'radiograph:bright-lines'],
        plates: ['X-017'],
      },
      { material: 'iron', seen: ['orange-brown-crust'], evidence: ['contrasting-wire'] },
    )
    expect(line(plan.objections, 'record-before-cleaning')).toMatchObject({
      level: 'block',
      precautionary: false,
    })
    expect(codes(plan.objections)).not.toContain('radiograph-before-cleaning')
    expect(methods(plan)).not.toContain('x-radiography')
    expect(codes(plan.steps)).toContain('file-radiograph')
    expect(codes(plan.handling)).toEqual(saying('do-not-clean', 'leave-soil-on'))
    expect(codes(plan.cautions)).toContain('legal-duty')
  })

  test('a padlock with green in its rust: not turned or shaken, because the works inside are held by corrosion', () => {
    const plan = planOf(
      {
        object: 'barrel padlock',
        object_kind: 'padlock',
        burial: ['cess'],
        state_now: 'damp',
        proposed: ['ultrasonic'],
      },
      { material: 'iron', seen: ['orange-brown-crust'], evidence: ['green-stain-in-rust'] },
    )
    expect(codes(plan.handling)).toEqual(saying('do-not-take-apart', 'do-not-clean', 'air-dry-openly'))
    expect(methods(plan)).toEqual(['x-radiography', 'ct'])
    expect(line(plan.objections, 'ultrasonic-metal')).toMatchObject({ level: 'block', to: 'ultrasonic' })
    expect(line(plan.cautions, 'infection').level).toBe('note')
  })

  test('a spearhead with the grain of its shaft: kept as dry as iron, because nothing organic is left of the wood', () => {
    const plan = planOf(
      { object: 'spearhead', object_kind: 'weapon', burial: ['grave'], state_now: 'dry', proposed: ['wash'] },
      { material: 'iron', seen: ['orange-brown-crust'], evidence: ['wood-grain'] },
      { component: 'shaft', material: 'mineral-preserved-organic', role: 'adhering' },
    )
    expect(plan.storage).toMatchObject({ rhPercent: { min: 0, max: 12 }, conflict: null, decidedBy: 'rule' })
    const blocks = plan.objections.filter(({ level, to }) => level === 'block' && to === 'wash')
    expect(codes(blocks)).toEqual(saying('wash-mineral-preserved', 'wash-traces'))
    expect(codes(plan.referrals)).toContain('ask-organics-specialist')
    expect(codes(plan.handling)).toEqual(saying('photograph-first', 'leave-soil-on', 'do-not-take-apart'))
  })

  test('a weeping blade in a box at 45 %: days, because it loses substance and the box is far too damp', () => {
    const plan = planOf(
      {
        object: 'knife blade',
        object_kind: 'knife',
        burial: ['saline'],
        state_now: 'dry',
        packed_in: ['dry-box'],
        stored_rh_percent: 45,
      },
      { material: 'iron', seen: ['orange-droplets', 'loose-flakes'], fragility: 'friable' },
    )
    expect(plan.urgency).toBe('days')
    expect(daysToAct(plan, 45)).toBe(7)
    expect(codes(plan.steps)).toEqual(saying('photograph', 'ring-conservator', 'read-the-strip'))
    expect(codes(plan.handling)).toEqual(saying('do-not-touch', 'support-fully', 'keep-crumbs'))
    expect(codes(plan.packing)).toEqual(saying('rigid-box', 'inert-foam', 'no-cotton-wool'))
    expect(codes(plan.referrals)).toContain('treat-active-corrosion')
  })

  test('a nail without metal, to be thrown out: counted, weighed and photographed first, because the crust still holds its shape', () => {
    const plan = planOf(
      {
        object: 'nail',
        object_kind: 'nail',
        burial: ['acid-sand'],
        state_now: 'dry',
        retention: 'discard-proposed',
        tests: ['radiograph:no-core', 'magnet:none'],
      },
      { material: 'iron', seen: ['orange-brown-crust'] },
    )
    expect(plan.storage.rhPercent?.max).toBe(12)
    expect(codes(plan.referrals)).toContain('mineralised-iron')
    expect(codes(plan.selection)).toEqual(
      saying('no-discard-before-record', 'no-metal-is-no-reason', 'who-signs'),
    )
    expect(codes(plan.referrals)).toContain('decide-discard')
  })

  test('an anchor fluke after a bath without readings: kept as untreated, because a treatment is known by its figures', () => {
    const bathed = {
      object: 'anchor fluke',
      burial: ['marine'],
      state_now: 'dry',
      done_already: ['desalinated'],
    } as const
    const unread = planOf(bathed, { material: 'iron', seen: ['orange-brown-crust'] })
    expect(unread.storage.rhPercent?.max).toBe(12)
    expect(methods(unread)).toContain('chloride-test')
    expect(line(unread.objections, 'desalinated-already').level).toBe('warn')
    const read = planOf(
      { ...bathed, tests: ['residual-chloride-ppm:350'] },
      { material: 'iron', seen: ['orange-brown-crust'] },
    )
    expect(read.storage.rhPercent?.max).toBe(30)
    const weeping = planOf(
      { ...bathed, tests: ['residual-chloride-ppm:350'] },
      { material: 'iron', seen: ['orange-droplets'] },
    )
    expect(weeping.storage.rhPercent?.max).toBe(12)
  })
})
