import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, line } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const pages = (place: string) => ({ work: 'hazards-in-collections', place, known: 'read' }) as const
const dry = { state_now: 'dry', burial: ['free-draining'] } as const
type Noticed = NonNullable<Parameters<typeof planOf>[0]['hazards_noticed']>[number]
const noticing = (
  hazard: Noticed,
  material: 'copper-alloy' | 'iron' | 'steel' | 'leather' = 'copper-alloy',
) => planOf({ ...dry, hazards_noticed: [hazard] }, { material })

describe('dangers that are warned of', () => {
  printed(
    {
      check: 'practice 46',
      ...pages('asbestos'),
      tolerance: inWords,
      says: 'a gas mask or war helmet may hold asbestos',
    },
    () => {
      const mask = noticing('gas-mask-or-helmet', 'steel')
      expect(line(mask.cautions, 'asbestos')).toMatchObject({ level: 'warn', call: 'asbestos-assessor' })
      return line(mask.cautions, 'asbestos')
    },
  )

  printed(
    {
      check: 'practice 49',
      ...pages('arsenic'),
      tolerance: inWords,
      says: 'an old labelled sheath with feathers: assume pesticide',
    },
    () => {
      const sheath = noticing('old-collection-label', 'leather')
      expect(line(sheath.cautions, 'pesticide-residue')).toMatchObject({ level: 'warn', strength: 'must' })
      return line(sheath.cautions, 'pesticide-residue')
    },
  )

  printed(
    {
      check: 'practice 62',
      work: 'nih-oxygen-deficiency',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'air low in oxygen kills without warning: an alarm in the room',
    },
    () => {
      const knife = planOf(dry, { material: 'iron' }, { material: 'wood', role: 'handle' })
      const tent = line(knife.cautions, 'low-oxygen')
      expect(tent.because).toMatch(/alarm/)
      expect(tent.figures).toContain('oxygen-hazard-line')
      return tent
    },
  )

  printed(
    {
      check: 'practice 64',
      work: 'finds-scheme-field-reports',
      place: 'Shrewsbury',
      known: 'read',
      tolerance: inWords,
      says: 'a fused hoard is not split; it is locked up, reported and scanned',
    },
    () => {
      const hoard = planOf({ ...dry, object_kind: 'hoard' }, { material: 'base-silver' })
      expect(codes(hoard.handling)).toContain('do-not-take-apart')
      expect(codes(hoard.cautions)).toContain('legal-duty')
      expect(line(hoard.steps, 'tell-finds-officer').due).toBe(hoard.asOf)
      return hoard.requests.filter(({ method }) => method === 'ct').flatMap(({ basis }) => basis)
    },
  )

  printed(
    {
      check: 'practice 72',
      work: 'treasure-act-leaflet',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'gold may have to be reported: said as a duty, with no word on who owns it',
    },
    () => {
      const duty = line(planOf(dry, { material: 'gold' }).cautions, 'legal-duty')
      expect(duty).toMatchObject({ level: 'note', call: 'finds-officer' })
      expect(duty.text).toMatch(/Not legal advice/)
      expect(duty.text).not.toMatch(/own|belong/i)
      return duty
    },
  )

  printed(
    {
      check: 'practice 74',
      work: 'kent-archaeological-society-letters',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'a rusty edge: first-aider and tetanus',
    },
    () => {
      const edge = line(noticing('sharp', 'iron').cautions, 'sharp-edges')
      expect(edge).toMatchObject({ level: 'warn', call: 'first-aider' })
      expect(edge.text).toMatch(/tetanus/)
      return edge
    },
  )
})
