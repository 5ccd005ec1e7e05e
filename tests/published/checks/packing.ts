import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, exceptions, figure, line, saying, side } from '../../said.ts'
import { asBand, inWords, wholeNumber } from '../tolerance.ts'

const note3 = { work: 'finds-scheme-advice-notes', place: 'note 3', known: 'read' } as const
const recollections = { work: 'heritage-collections-council-1998', place: 'metals', known: 'read' } as const
const handouts = (place: string) => ({ work: 'digikulth-2026', place, known: 'read' }) as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
type Pack = NonNullable<Parameters<typeof planOf>[0]['packed_in']>[number]
const packed = (pack: Pack, material: 'iron' | 'copper-alloy' | 'lead' | 'zinc') =>
  planOf({ ...dry, packed_in: [pack] }, { material }).packing

describe('what metal is packed in', () => {
  printed(
    {
      check: 'practice 7',
      work: 'common-practice',
      place: null,
      known: 'common-practice',
      tolerance: inWords,
      says: 'forty nails: one bag a context, counted and weighed, X-rayed by the tray, dry box',
    },
    () => {
      const nails = planOf({ ...dry, object_kind: 'nail', quantity: 40 }, { material: 'iron' })
      expect(codes(nails.packing)).toEqual(saying('bulk-by-context', 'dry-box'))
      expect(codes(nails.packing)).not.toContain('bag-singly')
      expect(codes(planOf({ ...dry, object_kind: 'nail' }, { material: 'iron' }).packing)).toContain(
        'bag-singly',
      )
      expect(line(nails.packing, 'bulk-by-context').text).toMatch(/counted and weighed/)
      return line(nails.packing, 'bulk-by-context')
    },
  )

  printed(
    { check: 'practice 31', ...recollections, tolerance: inWords, says: 'PVC is replaced around any metal' },
    () => {
      const metals = ['iron', 'copper-alloy', 'lead', 'zinc'] as const
      expect(exceptions(metals, (metal) => codes(packed('pvc', metal)).includes('repack'))).toEqual([])
      expect(exceptions(metals, (metal) => codes(packed('pvc', metal)).includes('no-pvc'))).toEqual([])
      return line(packed('pvc', 'zinc'), 'no-pvc')
    },
  )

  printed(
    {
      check: 'practice 32',
      ...note3,
      tolerance: inWords,
      says: 'cotton wool is replaced; what sticks is left',
    },
    () => {
      expect(line(packed('cotton-wool', 'iron'), 'repack').text).toMatch(/Leave what sticks/)
      return [
        line(packed('cotton-wool', 'iron'), 'no-cotton-wool'),
        line(packed('cotton-wool', 'iron'), 'repack'),
      ]
    },
  )

  printed(
    {
      check: 'practice 69',
      work: 'wa-museum-2017',
      place: 'metals, preventive conservation',
      known: 'read',
      tolerance: inWords,
      says: 'metal is moved out of chipboard and wooden drawers',
    },
    () => {
      expect(codes(packed('wood', 'copper-alloy'))).toContain('no-wood-or-card')
      return line(packed('wood', 'copper-alloy'), 'repack')
    },
  )

  printed(
    {
      check: 'practice 39',
      work: 'heritage-collections-council-1998',
      place: 'silica gel',
      known: 'read',
      tolerance: asBand,
      says: 'a token sachet does nothing: 7–20 kg of gel a cubic metre',
    },
    () => {
      expect(figure('gel-dose-low')).toMatchObject({ value: 7, unit: 'kilogram-per-cubic-metre' })
      expect(figure('gel-dose-high')).toMatchObject({ value: 20, unit: 'kilogram-per-cubic-metre' })
      const box = line(packed('perforated-bag', 'iron'), 'dry-box')
      expect(box.figures).toEqual(saying('gel-dose-low', 'gel-dose-high'))
      return box
    },
  )

  printed(
    {
      check: 'practice 67',
      work: 'felt-coupon-tests',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'a felt that passed its coupon test may be let in, batch by batch',
    },
    () => {
      expect(side('felt-and-wool', 'felt-coupon-tests').says).toMatch(/batch by batch/)
      return side('felt-and-wool', 'felt-coupon-tests')
    },
  )

  printed(
    {
      check: 'open texts 50',
      work: 'conservation-distlist',
      place: '2000/1439, 2004/1337 and 2004/0285',
      known: 'read',
      tolerance: inWords,
      says: 'plywood, which a handout recommends for cases, is barred from lead',
    },
    () => {
      const barred = line(packed('wood', 'lead'), 'no-wood-or-card')
      expect(barred.text).toMatch(/plywood/)
      expect(side('plywood-cases', 'digikulth-2026')).not.toBe(side('plywood-cases', 'conservation-distlist'))
      return barred
    },
  )

  printed(
    {
      check: 'open texts 49',
      ...handouts('storerooms'),
      tolerance: asBand,
      says: 'the general store at 18 °C and 40–60 % is no place for chloride iron',
    },
    () => {
      expect(figure('general-store-rh-low')).toMatchObject({ value: 40, unit: 'percent' })
      expect(figure('general-store-rh-high')).toMatchObject({ value: 60, unit: 'percent' })
      expect(figure('store-temperature')).toMatchObject({ value: 18, unit: 'degree-celsius' })
      const iron = planOf({ ...dry, stored_rh_percent: 50, stored_temperature_c: 18 }, { material: 'iron' })
      expect(iron.storage.rhPercent!.max).toBeLessThan(figure('general-store-rh-low').value)
      return [figure('store-temperature'), side('general-store', 'digikulth-2026')]
    },
  )

  printed(
    {
      check: 'open texts 55',
      ...handouts('handling'),
      tolerance: inWords,
      says: 'nitrile without powder, not cotton',
    },
    () => {
      const gloves = line(planOf(dry, { material: 'copper-alloy' }).handling, 'wear-gloves')
      expect(gloves.text).toMatch(/powder-free nitrile/)
      return gloves
    },
  )

  printed(
    {
      check: 'practice 40',
      work: 'conservation-distlist',
      place: '2000/1058, 2000/1075',
      known: 'read',
      tolerance: wholeNumber,
      says: 'blue or pink gel holds cobalt: replaced, or thinned to 10 %',
    },
    () => {
      expect(figure('indicating-gel-share')).toMatchObject({ value: 10, unit: 'percent' })
      const gel = planOf({ ...dry, hazards_noticed: ['blue-or-pink-gel'] }, { material: 'iron' })
      expect(line(gel.cautions, 'cobalt-indicator')).toMatchObject({ level: 'warn', call: 'safety-adviser' })
      return [line(gel.cautions, 'cobalt-indicator')]
    },
  )

  printed(
    {
      check: 'practice 59',
      work: 'arches-standard',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'the plate number goes on bag and record, the plate into the archive',
    },
    () => {
      const plated = planOf({ ...dry, tests: ['radiograph:core-solid'] }, { material: 'iron' })
      const filed = line(plated.steps, 'file-radiograph')
      expect(filed.text).toMatch(/plate number/)
      return filed
    },
  )
})
