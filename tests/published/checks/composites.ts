import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, humidityOf, line, saying, side } from '../../said.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

const manualOnWood = { work: 'wa-museum-2017', place: 'wood', known: 'read' } as const
const archives = { work: 'unesco-2013', place: 'p. 300', known: 'read' } as const
const underWater = (place: string) =>
  ({ work: 'nautical-archaeology-society-2009', place, known: 'read' }) as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const iron = { material: 'iron', seen: ['orange-brown-crust'] } as const
const knife = planOf({ ...dry, object_kind: 'knife' }, iron, { material: 'wood', role: 'handle' })
const fromTheDitch = { state_now: 'wet', burial: ['waterlogged'] } as const
const wetKnife = planOf({ ...fromTheDitch, object_kind: 'knife' }, iron, { material: 'wood', role: 'handle' })

describe('metal with other materials', () => {
  printed(
    {
      check: 'corrosion 48',
      ...manualOnWood,
      tolerance: wholeNumber,
      says: 'iron at 12 % and wood from 40 %: 28 apart, no band, a conservator decides',
    },
    () => {
      expect(knife.storage.rhPercent).toBeNull()
      expect(knife.storage.conflict).toMatchObject({ between: ['body', 'handle'], gapPercent: 28 })
      expect(knife.storage.decidedBy).toBe('conservator')
      expect(knife.storage.interim?.says.strength).toBe('consider')
      return humidityOf(knife, 'handle')
    },
  )

  printed(
    {
      check: 'corrosion 48, archives',
      ...archives,
      tolerance: wholeNumber,
      says: 'one manual: metals below 35 %, organic matter 45–55 %: the bands do not meet',
    },
    () => {
      const bead = planOf(
        dry,
        { material: 'zinc', seen: ['white-powder'] },
        { material: 'organic-unidentified', role: 'backing' },
      )
      expect(bead.storage.conflict).toMatchObject({ between: ['body', 'backing'], gapPercent: 10 })
      return humidityOf(bead, 'backing')
    },
  )

  printed(
    {
      check: 'corrosion 51',
      work: 'fiske-center-2014',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'in a block the wood comes first, the iron second: it stays wet',
    },
    () => {
      const block = planOf({ ...fromTheDitch, lifted_as: 'block' }, iron, {
        material: 'wood',
        role: 'handle',
      })
      expect(block.storage.keep).toBe('wet')
      return line(block.storage.basis, 'wet')
    },
  )

  printed(
    {
      check: 'corrosion 52',
      ...underWater('p. 153'),
      tolerance: inWords,
      says: 'a waterlogged composite stays wet, cold and dark, and is not frozen',
    },
    () => {
      expect(wetKnife.storage).toMatchObject({ keep: 'wet', light: 'dark', rhPercent: null })
      expect(wetKnife.storage.temperatureC.max).toBeLessThan(10)
      expect(wetKnife.storage.temperatureC.min).toBeGreaterThan(0)
      expect(codes(wetKnife.handling)).toEqual(saying('keep-wet', 'keep-cool-and-dark', 'do-not-freeze'))
      return line(wetKnife.handling, 'keep-cool-and-dark')
    },
  )

  printed(
    {
      check: 'practice 6',
      ...underWater('p. 156'),
      tolerance: inWords,
      says: 'iron with wet wood stays wet with its own soil: no dry box, a conservator',
    },
    () => {
      expect(wetKnife.urgency).toBe('hours')
      expect(codes(wetKnife.steps)).toContain('ring-conservator')
      expect(codes(wetKnife.packing)).not.toContain('dry-box')
      expect(codes(wetKnife.steps)).not.toContain('dry-box')
      return wetKnife.urgencyBasis
    },
  )

  printed(
    {
      check: 'corrosion 53',
      ...underWater('p. 153'),
      tolerance: inWords,
      says: 'different metals never lie in the same water',
    },
    () => {
      const chain = planOf(
        { state_now: 'wet', burial: ['marine'] },
        { material: 'copper-alloy' },
        { material: 'lead' },
      )
      expect(chain.storage.keep).toBe('wet')
      return line(chain.packing, 'keep-metals-apart')
    },
  )

  printed(
    {
      check: 'corrosion 15, mixed show',
      work: 'watkinson-emmerson-seifert-2016',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'the 55 % of mixed displays corrodes iron: no show without a conservator',
    },
    () => {
      const shown = planOf({ ...dry, needed_for: ['display'] }, iron, {
        material: 'leather',
        role: 'backing',
      })
      return [
        line(shown.referrals, 'display-and-loan'),
        side('iron-with-organic', 'watkinson-emmerson-seifert-2016'),
      ]
    },
  )
})
