import { describe, expect, test } from 'vitest'
import { share, leader, methodsFor, trace } from './at-hand.ts'

describe('what metal has kept of cloth, wood, leather and hair', () => {
  const weave = { material: 'iron', evidence: ['weave-pattern'] } as const

  test('twisted threads in the crust, from a grave: cloth', () => {
    const grave = { burial: ['grave'] } as const
    const seen = trace(
      { ...weave, looked: ['weave-strand:twisted-thread', 'weave-place:made-of-crust'] },
      grave,
    )
    expect(leader(seen)).toBe('mineral-preserved-textile')
    expect(seen.standing).toBe('probable')
  })

  test('a flat grid in the metal of a file: its cut, not cloth', () => {
    const file = { object_kind: 'tool' } as const
    const cut = { ...weave, looked: ['weave-crossing:flat-grid', 'weave-place:in-the-metal'] } as const
    expect(leader(trace(cut, file))).toBe('crossed-tool-marks')
  })

  test('an even print on a find wrapped in tissue is the packing, yet cloth is not struck off', () => {
    const seen = trace(
      { ...weave, looked: ['weave-place:pressed-into-soft', 'weave-evenness:machine-even'] },
      { packed_in: ['acid-free-tissue'] },
    )
    expect(leader(seen)).toBe('packing-print')
    expect(seen.standing).not.toBe('settled')
    expect(share(seen, 'mineral-preserved-textile')).toBeGreaterThan(0.02)
  })

  test('grain on a nail is wood; on a bar nobody can tell it from the iron itself', () => {
    const grain = { material: 'iron', evidence: ['wood-grain'] } as const
    expect(trace(grain, { object_kind: 'nail' }).standing).toBe('probable')
    expect(leader(trace(grain, { object_kind: 'nail' }))).toBe('mineral-preserved-wood')
    const bar = trace(grain, { object_kind: 'rod' })
    expect(bar.standing).toBe('open')
    expect(bar.rivals.slice(0, 2).map(({ id }) => id)).toEqual(
      expect.arrayContaining(['forging-lamination', 'mineral-preserved-wood']),
    )
  })

  test('grain on copper alloy is hardly ever the layers of a forging', () => {
    const green = trace({ material: 'copper-alloy', evidence: ['wood-grain'] })
    expect(share(green, 'forging-lamination')).toBeLessThan(0.05)
  })

  test('a knife handle is wood or horn until the microscope parts them', () => {
    const knife = { object_kind: 'knife' } as const
    const grain = { material: 'iron', evidence: ['wood-grain'] } as const
    expect(trace(grain, knife).standing).toBe('open')
    expect(methodsFor(grain, knife)).toContain('optical-microscopy')
    expect(leader(trace({ ...grain, looked: ['grain-under-microscope:horn-layers'] }, knife))).toBe(
      'mineral-preserved-horn-or-skin',
    )
    expect(leader(trace({ ...grain, looked: ['grain-under-microscope:vessels-and-rays'] }, knife))).toBe(
      'mineral-preserved-wood',
    )
  })

  test('a plain layer behind a strap plate is leather still; infrared that finds nothing does not clear it', () => {
    const strap = { object_kind: 'strap-fitting' } as const
    const layer = { material: 'copper-alloy', evidence: ['leather-like-layer'] } as const
    expect(leader(trace({ ...layer, looked: ['leather-surface:none'] }, strap))).toBe(
      'mineral-preserved-leather',
    )
    expect(leader(trace({ ...layer, looked: ['leather-by-ftir:none'] }, strap))).toBe(
      'mineral-preserved-leather',
    )
  })

  test('an old wax makes infrared say polymer: that alone does not make leather into packing', () => {
    const layer = {
      material: 'copper-alloy',
      evidence: ['leather-like-layer'],
      looked: ['leather-by-ftir:polymer-or-glue'],
    } as const
    const packing = (done: 'waxed' | 'air-dried') =>
      share(trace(layer, { done_already: [done] }), 'packing-remnant')
    expect(packing('waxed')).toBeLessThan(packing('air-dried') / 2)
    expect(leader(trace(layer, { done_already: ['waxed'] }))).toBe('mineral-preserved-leather')
  })

  test('fibres that branch into the soil are roots; needles that grow from bronze are crystals', () => {
    const fibres = { material: 'copper-alloy', evidence: ['fibres'] } as const
    expect(trace(fibres).standing).toBe('open')
    expect(leader(trace({ ...fibres, looked: ['fibre-shape:branching', 'fibre-bond:run-into-soil'] }))).toBe(
      'living-roots',
    )
    expect(leader(trace({ ...fibres, looked: ['fibre-bond:grow-from-surface'] }))).toBe('fibrous-crystals')
  })

  test('the same fibres are likelier roots in ploughsoil than in a bog', () => {
    const roots = (burial: 'ploughsoil' | 'peat') =>
      share(trace({ material: 'copper-alloy', evidence: ['fibres'] }, { burial: [burial] }), 'living-roots')
    expect(roots('ploughsoil')).toBeGreaterThan(5 * roots('peat'))
  })
})

describe('what was done to the surface, and what happened to it', () => {
  test('something dark behind openwork: the backing is there, and the radiograph may show it', () => {
    const mount = {
      material: 'copper-alloy',
      evidence: ['openwork'],
      looked: ['openwork-behind:organic-or-foil'],
    } as const
    expect(leader(trace(mount, { object_kind: 'mount' }))).toBe('openwork-with-backing')
    expect(methodsFor(mount, { object_kind: 'mount' })).toContain('x-radiography')
  })

  test('lines that cut through the crust are younger than it; on iron, lines are asked about inlay', () => {
    const lines = { material: 'copper-alloy', evidence: ['cut-lines'] } as const
    expect(leader(trace(lines))).toBe('engraved-line')
    expect(leader(trace({ ...lines, looked: ['cutline-and-crust:cut-through-crust'] }))).toBe('later-damage')
    const iron = { material: 'iron', evidence: ['cut-lines'] } as const
    expect(leader(trace(iron))).toBe('inlay-channel')
    expect(methodsFor(iron)[0]).toBe('x-radiography')
  })

  test('relief with soft edges was cast; on wrought iron a boss and a blister cannot be told apart', () => {
    const relief = { evidence: ['cast-relief'] } as const
    expect(leader(trace({ ...relief, material: 'copper-alloy', looked: ['relief-form:soft-edged'] }))).toBe(
      'cast-decoration',
    )
    expect(trace({ ...relief, material: 'iron' }).standing).toBe('open')
    expect(share(trace({ ...relief, material: 'iron' }), 'cast-decoration')).toBeLessThan(0.05)
  })

  test('one outline struck to many depths is a punch; every size and everywhere is decay', () => {
    const dots = { material: 'copper-alloy', evidence: ['punched-dots'] } as const
    expect(leader(trace({ ...dots, looked: ['dots-likeness:same-outline'] }))).toBe('punched-decoration')
    const pits = trace({ ...dots, looked: ['dots-likeness:every-size', 'dots-rim:ragged-pit'] })
    expect(leader(pits)).toBe('corrosion-pitting')
  })

  test('fine bright scratches through the crust of a brushed find come from the brush', () => {
    const seen = trace(
      {
        material: 'copper-alloy',
        evidence: ['tool-marks'],
        looked: ['toolmark-and-crust:cut-through-crust', 'toolmark-kind:fine-bright-scratches'],
      },
      { done_already: ['brushed'] },
    )
    expect(leader(seen)).toBe('cleaning-marks')
    expect(seen.standing).toBe('probable')
  })

  test('an answer nobody could give changes nothing', () => {
    const marks = { material: 'iron', evidence: ['tool-marks'] } as const
    expect(trace({ ...marks, looked: ['toolmark-kind:unknown'] })).toEqual(trace(marks))
  })
})
