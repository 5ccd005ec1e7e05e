import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, figure, line, saying, side, request } from '../../said.ts'
import { inWords, printedDecimal, wholeNumber } from '../tolerance.ts'

const sulphideDose = { work: 'ankersmit-2005', place: 'abstract', known: 'read' } as const
const inSulphide = { work: 'kim-payer-1999', place: '§19', known: 'read' } as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const proposing = (
  proposed: 'silver-dip' | 'ultrasonic' | 'acid-or-edta' | 'hot-water' | 'heat',
  ...parts: Parameters<typeof planOf>[1][]
) => planOf({ ...dry, proposed: [proposed] }, ...parts).objections

describe('silver and gold', () => {
  printed(
    {
      check: 'corrosion 39',
      ...sulphideDose,
      tolerance: printedDecimal,
      says: 'silver shows a dose of 2.5 ppb years of sulphide',
    },
    () => {
      expect(figure('silver-sulphide-dose')).toMatchObject({ value: 2.5, unit: 'ppb-year' })
      const silver = planOf(dry, { material: 'silver' })
      expect(silver.storage.air).toContain('no-sulphur')
      return line(silver.storage.basis, 'no-sulphur')
    },
  )

  printed(
    {
      check: 'open texts 12',
      ...inSulphide,
      tolerance: wholeNumber,
      says: 'from 15 to 75 % tarnish only doubles, so clean air comes first',
    },
    () => {
      expect(figure('silver-humid-dry-ratio')).toMatchObject({ value: 2, unit: 'ratio' })
      expect(figure('silver-test-dry-rh').value).toBe(15)
      expect(figure('silver-test-damp-rh').value).toBe(75)
      return [figure('silver-humid-dry-ratio'), side('silver-humidity', 'kim-payer-1999')]
    },
  )

  printed(
    {
      check: 'open texts 13',
      work: 'kim-payer-1999',
      place: '§19 and §31',
      known: 'read',
      tolerance: inWords,
      says: 'without oxygen silver does not tarnish',
    },
    () => {
      const tarnishing = planOf(dry, { material: 'silver', seen: ['black-tarnish'] })
      expect(tarnishing.storage.air).toContain('low-oxygen')
      expect(planOf(dry, { material: 'silver', seen: ['lavender-grey-waxy'] }).storage.air).not.toContain(
        'low-oxygen',
      )
      return line(tarnishing.storage.basis, 'low-oxygen')
    },
  )

  printed(
    {
      check: 'open texts 14',
      work: 'kim-payer-1999',
      place: '§26',
      known: 'read',
      tolerance: printedDecimal,
      says: 'half a layer of water on silver at 15 %, two and a half at 75 %',
    },
    () => {
      expect(figure('silver-water-layers-dry')).toMatchObject({ value: 0.5, unit: 'monolayer' })
      expect(figure('silver-water-layers-damp')).toMatchObject({ value: 2.5, unit: 'monolayer' })
      return [figure('silver-water-layers-dry'), figure('silver-water-layers-damp')]
    },
  )

  printed(
    {
      check: 'practice 30',
      work: 'finds-scheme-advice-notes',
      place: 'note 3',
      known: 'read',
      tolerance: inWords,
      says: 'felt and rubber are replaced around silver',
    },
    () => {
      const inFelt = planOf({ ...dry, packed_in: ['wool-or-felt'] }, { material: 'silver' })
      expect(codes(inFelt.packing)).toEqual(saying('repack', 'no-rubber-or-wool'))
      return [line(inFelt.packing, 'repack'), line(inFelt.packing, 'no-rubber-or-wool')]
    },
  )

  printed(
    {
      check: 'practice 53',
      work: 'conservation-distlist',
      place: '1998/1023',
      known: 'read',
      tolerance: inWords,
      says: 'brittle silver in an ultrasonic bath: blocked',
    },
    () => {
      const objection = line(
        proposing('ultrasonic', { material: 'silver', seen: ['brittle-cracks'] }),
        'ultrasonic-metal',
      )
      expect(objection.level).toBe('block')
      return objection
    },
  )

  printed(
    {
      check: 'practice 54',
      work: 'museum-l-2007',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'hot water on a coin: blocked',
    },
    () => {
      const objection = line(
        planOf({ ...dry, object_kind: 'coin', proposed: ['hot-water'] }, { material: 'base-silver' })
          .objections,
        'hot-water-metal',
      )
      expect(objection.level).toBe('block')
      return objection
    },
  )

  printed(
    {
      check: 'practice 65',
      work: 'jersey-heritage-2016',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'no acid even on gold: it wipes out residues',
    },
    () => {
      const objection = line(proposing('acid-or-edta', { material: 'gold' }), 'acid-gold')
      expect(objection.level).toBe('block')
      return objection
    },
  )

  printed(
    {
      check: 'corrosion 62',
      work: 'marchand-2014',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'grey-lavender on buried silver is its chloride, not tarnish to be taken off',
    },
    () => {
      const horn = { material: 'silver', seen: ['lavender-grey-waxy'] } as const
      expect(request(planOf(dry, horn), 'xrf').question).toMatch(/chlorine/)
      const dip = line(proposing('silver-dip', horn), 'dip-brittle')
      expect(dip).toMatchObject({ level: 'block', precautionary: false })
      return dip
    },
  )
})
