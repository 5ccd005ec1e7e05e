import { describe, expect } from 'vitest'
import { grades } from '../../../lib/evidence/grades.ts'
import { share, failureOf, leader, methodsFor, rivalOf, stateOf, trace } from '../../evidence/at-hand.ts'
import { figure } from '../../said.ts'
import { printed } from '../printed.ts'
import { inWords } from '../tolerance.ts'

const guidelines = { work: 'bourgarit-2025-guidelines', known: 'read' } as const

describe('traces of cloth, wood, leather and hair', () => {
  printed(
    {
      check: 'open texts F26',
      work: 'finds-scheme-field-reports',
      place: 'Holford, 2012',
      known: 'read',
      tolerance: inWords,
      says: 'the grain of a haft shows on the radiograph: wood leads, and the haft is not for pulling out',
    },
    () => {
      const axe = {
        material: 'copper-alloy',
        evidence: ['wood-grain'],
        looked: ['grain-on-radiograph:grain-around-metal'],
      } as const
      const seen = trace(axe, { object_kind: 'tool' })
      expect(leader(seen)).toBe('mineral-preserved-wood')
      expect(['probable', 'settled']).toContain(seen.standing)
      return stateOf('wood-grain', 'grain-on-radiograph', 'grain-around-metal')
    },
  )

  printed(
    {
      check: 'open texts B17',
      ...guidelines,
      place: 'chapter I.1, section 3.1',
      tolerance: inWords,
      says: 'laminated rusted rods look like a bundle of thin rods: grain read on the radiograph of a rod settles nothing',
    },
    () => {
      const rod = { material: 'iron', evidence: ['wood-grain'] } as const
      const read = { ...rod, looked: ['grain-on-radiograph:grain-around-metal'] } as const
      const seen = trace(read, { object_kind: 'rod' })
      expect(share(seen, 'forging-lamination')).toBeGreaterThan(0.1)
      expect(seen.standing).not.toBe('settled')
      expect(methodsFor(read, { object_kind: 'rod' })).toContain('optical-microscopy')
      const trap = failureOf('wood-grain', 'grain-on-radiograph', 'bundle-of-rods')
      expect(trap.of).toEqual(['forging-lamination'])
      return trap
    },
  )

  printed(
    {
      check: 'evidence: prints in corrosion',
      work: 'masaryk-organic-remains',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'organic matter, its replacement and a mere print are all finds: a print does not rule cloth out',
    },
    () => {
      for (const look of [
        'weave-strand:groove',
        'weave-place:made-of-crust',
        'weave-place:pressed-into-soft',
      ]) {
        const seen = trace({ material: 'copper-alloy', evidence: ['weave-pattern'], looked: [look] })
        expect(share(seen, 'mineral-preserved-textile')).toBeGreaterThan(0.1)
      }
      return [
        stateOf('weave-pattern', 'weave-strand', 'groove'),
        stateOf('weave-pattern', 'weave-place', 'made-of-crust'),
        stateOf('weave-pattern', 'weave-place', 'pressed-into-soft'),
      ]
    },
  )

  printed(
    {
      check: 'evidence: grain of leather',
      work: 'ebsen-2019',
      place: 'abstract',
      known: 'read',
      tolerance:
        'within the band of the word: the graded chance to see a pattern against the printed share, ± 0.1',
      says: 'of 105 leather parts 37 kept a grain pattern: a plain surface is no sign against leather',
    },
    () => {
      const kept = figure('shoe-parts-with-grain')
      const all = figure('shoe-parts-examined')
      const state = stateOf('leather-like-layer', 'leather-surface', 'pores-in-pattern')
      const lost = failureOf('leather-like-layer', 'leather-surface', 'grain-side-lost')
      const share = Number(kept.value) / Number(all.value)
      const lostShare = 'grade' in lost.how ? grades[lost.how.grade][1] : 0
      const fits = state.fits['mineral-preserved-leather']!
      expect(grades[fits][1] * (1 - lostShare)).toBeGreaterThan(share - 0.1)
      expect(grades[fits][1] * (1 - lostShare)).toBeLessThan(share + 0.1)
      const plain = { material: 'copper-alloy', evidence: ['leather-like-layer'] } as const
      const looked = trace({ ...plain, looked: ['leather-surface:none'] }, { object_kind: 'buckle' })
      expect(leader(looked)).toBe('mineral-preserved-leather')
      return [state, lost, kept, all]
    },
  )

  printed(
    {
      check: 'evidence: graves with traces',
      work: 'watson-2006',
      place: 'summary page',
      known: 'read',
      tolerance: 'in direction: a grave raises the odds of cloth; 21 of 53 graves is far from never',
      says: '21 of 53 graves held metalwork with mineral-preserved organic material: graves raise cloth',
    },
    () => {
      const weave = { material: 'iron', evidence: ['weave-pattern'] } as const
      const cloth = (find: object) => share(trace(weave, find), 'mineral-preserved-textile')
      expect(cloth({ burial: ['grave'] })).toBeGreaterThan(cloth({ burial: ['clay'] }))
      const [traced, all] = [figure('graves-with-traces'), figure('graves-in-that-cemetery')]
      expect(Number(traced.value) / Number(all.value)).toBeGreaterThan(0.25)
      return [rivalOf('weave-pattern', 'mineral-preserved-textile').priors[0]!, traced, all]
    },
  )

  printed(
    {
      check: 'evidence: fibrous malachite',
      work: 'conservation-distlist',
      place: '2006/0668',
      known: 'read',
      tolerance: inWords,
      says: 'fibres on ancient bronze were crystals of malachite: crystals are a rival of every fibre on copper alloy',
    },
    () => {
      const fibres = { material: 'bronze', evidence: ['fibres'] } as const
      expect(share(trace(fibres), 'fibrous-crystals')).toBeGreaterThan(0.01)
      const seen = trace({ ...fibres, looked: ['fibre-under-microscope:crystal-faces'] })
      expect(leader(seen)).toBe('fibrous-crystals')
      return stateOf('fibres', 'fibre-under-microscope', 'crystal-faces')
    },
  )

  printed(
    {
      check: 'evidence: scales of hair',
      work: 'saunders-2012',
      place: 'opening section',
      known: 'read',
      tolerance: inWords,
      says: 'scales show only at very high magnification: a light microscope that finds none does not clear hair',
    },
    () => {
      const fibres = { material: 'iron', evidence: ['fibres'] } as const
      const before = share(trace(fibres), 'animal-fibre')
      const after = share(trace({ ...fibres, looked: ['fibre-under-microscope:none'] }), 'animal-fibre')
      expect(after).toBeGreaterThan(before / 2)
      return failureOf('fibres', 'fibre-under-microscope', 'too-low-a-power')
    },
  )
})

describe('holes, lines, relief, dots and tool marks', () => {
  printed(
    {
      check: 'open texts J6',
      work: 'finds-scheme-field-reports',
      place: '6 August 2010',
      known: 'read',
      tolerance: inWords,
      says: 'corrosion or damage alone can make a hole in a coin: such a hole is no pierced coin',
    },
    () => {
      const coin = { material: 'silver', evidence: ['openwork'] } as const
      const kind = { object_kind: 'coin' } as const
      const made = (look: string) => share(trace({ ...coin, looked: [look] }, kind), 'openwork-backing-lost')
      expect(leader(trace({ ...coin, looked: ['openwork-edge:eaten-thin'] }, kind))).toBe(
        'corrosion-perforation',
      )
      expect(leader(trace({ ...coin, looked: ['openwork-edge:torn-or-burred'] }, kind))).toBe('later-damage')
      expect(made('openwork-edge:eaten-thin')).toBeLessThan(0.05)
      expect(made('openwork-edge:made-edge')).toBeGreaterThan(0.3)
      return [
        stateOf('openwork', 'openwork-edge', 'eaten-thin'),
        stateOf('openwork', 'openwork-edge', 'torn-or-burred'),
      ]
    },
  )

  printed(
    {
      check: 'open texts G10',
      ...guidelines,
      place: 'chapter I.3, section 1.3.1',
      tolerance: inWords,
      says: 'pits of electrolytic cleaning are mistaken for casting flaws: bubbles on a stripped find are not taken for gas',
    },
    () => {
      const dots = { material: 'copper-alloy', evidence: ['punched-dots'] } as const
      const bubbles = { ...dots, looked: ['dots-rim:round-bubble'] } as const
      expect(leader(trace(bubbles, { done_already: ['air-dried'] }))).toBe('casting-porosity')
      expect(leader(trace(bubbles, { done_already: ['electrolysis'] }))).toBe('treatment-pitting')
      return [
        failureOf('punched-dots', 'dots-rim', 'cleaned-pits'),
        failureOf('punched-dots', 'dots-rim', 'cleared-pits'),
      ]
    },
  )

  printed(
    {
      check: 'evidence: abraded marks',
      ...guidelines,
      place: 'chapter I.6, section 1.4.2',
      tolerance: inWords,
      says: 'air abrasion makes cold-worked marks look as cast: on a cleaned find soft lines stay undecided',
    },
    () => {
      const soft = {
        material: 'copper-alloy',
        evidence: ['cut-lines'],
        looked: ['cutline-under-microscope:soft-as-cast'],
      } as const
      expect(leader(trace(soft, { done_already: ['air-dried'] }))).toBe('cast-line')
      expect(trace(soft, { done_already: ['cleaned'] }).standing).toBe('open')
      return failureOf('cut-lines', 'cutline-under-microscope', 'abraded-soft')
    },
  )

  printed(
    {
      check: 'evidence: as cast or cut',
      ...guidelines,
      place: 'chapter I.6, section 2.1',
      tolerance: inWords,
      says: 'marks of the model have softened edges and keep the cast surface, cut marks are sharp',
    },
    () => {
      const lines = { material: 'copper-alloy', evidence: ['cut-lines'] } as const
      expect(leader(trace({ ...lines, looked: ['cutline-bottom:soft-u'] }))).toBe('cast-line')
      expect(leader(trace({ ...lines, looked: ['cutline-bottom:sharp-v'] }))).toBe('engraved-line')
      return stateOf('cut-lines', 'cutline-bottom', 'soft-u')
    },
  )

  printed(
    {
      check: 'evidence: scratches over corrosion',
      work: 'mirrors-2021',
      place: 'caption of figure 2',
      known: 'read',
      tolerance: inWords,
      says: 'scratches that cross corrosion are later cleaning; corrosion that sits on them is younger than they are',
    },
    () => {
      const marks = { material: 'bronze', evidence: ['tool-marks'] } as const
      expect(leader(trace({ ...marks, looked: ['toolmark-and-crust:cut-through-crust'] }))).toBe(
        'cleaning-marks',
      )
      expect(leader(trace({ ...marks, looked: ['toolmark-and-crust:crust-over-them'] }))).toBe('making-marks')
      return [
        stateOf('tool-marks', 'toolmark-and-crust', 'cut-through-crust'),
        stateOf('tool-marks', 'toolmark-and-crust', 'crust-over-them'),
      ]
    },
  )

  printed(
    {
      check: 'evidence: carved in the model',
      work: 'common-practice',
      place: null,
      known: 'common-practice',
      tolerance: inWords,
      says: 'faceted, deeply cut-looking ornament on a casting is a casting, not engraving',
    },
    () => {
      const relief = { material: 'copper-alloy', evidence: ['cast-relief'] } as const
      expect(leader(trace(relief))).toBe('cast-decoration')
      const crisp = trace({ ...relief, looked: ['relief-form:crisp-with-tool-lines'] })
      expect(leader(crisp)).toBe('cast-decoration')
      expect(crisp.standing).not.toBe('settled')
      return rivalOf('cast-relief', 'cast-decoration').priors.at(-1)!
    },
  )

  printed(
    {
      check: 'evidence: punches told apart',
      work: 'mortimer-stoney-1996',
      place: 'summary page',
      known: 'read',
      tolerance: 'exact: printed whole numbers, kept as they stand',
      says: 'marks of at least 16 punches that were not round on 45 objects: one flaw that comes back is a punch',
    },
    () => {
      const dots = { material: 'copper-alloy', evidence: ['punched-dots'] } as const
      const seen = trace({ ...dots, looked: ['dots-under-microscope:same-tool'] })
      expect(leader(seen)).toBe('punched-decoration')
      const [punches, objects] = [figure('non-circular-punches'), figure('objects-with-punchmarks')]
      expect([punches.value, objects.value]).toEqual([16, 45])
      return [punches, objects, stateOf('punched-dots', 'dots-under-microscope', 'same-tool')]
    },
  )

  printed(
    {
      check: 'evidence: backs of openwork',
      work: 'common-practice',
      place: null,
      known: 'common-practice',
      tolerance: inWords,
      says: 'what lay behind openwork was meant to be seen: something dark behind it makes the backing the first thought',
    },
    () => {
      const mount = { material: 'copper-alloy', evidence: ['openwork'] } as const
      const seen = trace({ ...mount, looked: ['openwork-behind:organic-or-foil'] }, { object_kind: 'mount' })
      expect(leader(seen)).toBe('openwork-with-backing')
      return stateOf('openwork', 'openwork-behind', 'organic-or-foil')
    },
  )
})
