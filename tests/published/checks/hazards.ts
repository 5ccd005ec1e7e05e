import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, exceptions, line } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const pages = (place: string) => ({ work: 'hazards-in-collections', place, known: 'read' }) as const
const ordnance = { work: 'scott-unexploded-ordnance', place: null, known: 'read' } as const
const dry = { state_now: 'dry', burial: ['free-draining'] } as const
type Noticed = NonNullable<Parameters<typeof planOf>[0]['hazards_noticed']>[number]
const noticing = (
  hazard: Noticed,
  material: 'copper-alloy' | 'iron' | 'steel' | 'leather' = 'copper-alloy',
) => planOf({ ...dry, hazards_noticed: [hazard] }, { material })

describe('dangers that stop the work', () => {
  printed(
    {
      check: 'practice 45',
      ...ordnance,
      tolerance: inWords,
      says: 'a bullet of copper alloy and lead is ammunition: stop',
    },
    () => {
      const round = planOf({ ...dry, object: 'bullet' }, { material: 'copper-alloy' }, { material: 'lead' })
      expect(round.urgency).toBe('now')
      expect(round.cautions[0]).toMatchObject({ code: 'ammunition', level: 'stop', call: 'police' })
      expect(round.requests).toEqual([])
      return round.cautions.filter(({ code }) => code === 'ammunition')
    },
  )

  printed(
    {
      check: 'practice 45, no shape said',
      ...ordnance,
      tolerance: inWords,
      says: 'rounds were once listed as "copper alloy and lead": the shape is asked for',
    },
    () => {
      const pieces = planOf(dry, { material: 'copper-alloy' }, { material: 'lead' })
      expect(line(pieces.cautions, 'ammunition')).toMatchObject({ level: 'warn', precautionary: true })
      const brooch = planOf(
        { ...dry, object_kind: 'brooch' },
        { material: 'copper-alloy' },
        { material: 'lead' },
      )
      expect(codes(brooch.cautions)).not.toContain('ammunition')
      return line(pieces.cautions, 'ammunition')
    },
  )

  printed(
    {
      check: 'practice 47',
      ...pages('radiation'),
      tolerance: inWords,
      says: 'a luminous dial: stop, unopened, radiation adviser',
    },
    () => {
      const dial = noticing('luminous-paint')
      expect(dial.cautions[0]).toMatchObject({
        code: 'radioactive',
        level: 'stop',
        call: 'radiation-adviser',
      })
      expect(dial.cautions[0]!.text).toMatch(/Do not open/)
      expect(dial.urgency).toBe('now')
      return dial.cautions[0]!
    },
  )

  printed(
    {
      check: 'practice 48',
      work: 'cci-notes-1-7',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'silvery droplets are mercury: stop, no brush, no vacuum cleaner',
    },
    () => {
      const mirror = noticing('silvery-droplets')
      expect(mirror.cautions[0]).toMatchObject({ code: 'mercury', level: 'stop' })
      return mirror.cautions[0]!
    },
  )

  printed(
    {
      check: 'practice 73',
      work: 'conservation-distlist',
      place: '2008/1320',
      known: 'read',
      tolerance: inWords,
      says: 'hair or bone on a brooch: pause, leave it, an osteologist',
    },
    () => {
      const brooch = planOf(
        { ...dry, object_kind: 'brooch', hazards_noticed: ['bone-hair-or-skin'] },
        { material: 'copper-alloy' },
      )
      expect(brooch.cautions[0]).toMatchObject({ code: 'human-remains', level: 'stop' })
      expect(codes(brooch.referrals)).toContain('ask-osteologist')
      return brooch.cautions[0]!
    },
  )

  printed(
    {
      check: 'practice 75',
      ...ordnance,
      tolerance: inWords,
      says: 'warming a live round to dry it: blocked',
    },
    () => {
      const warming = (proposed: 'heat' | 'oven-drying' | 'hot-water') =>
        planOf({ ...dry, object_kind: 'cartridge', proposed: [proposed] }, { material: 'brass' }).objections
      const blocked = (proposed: 'heat' | 'oven-drying' | 'hot-water') =>
        warming(proposed).some(
          ({ code, to, level }) => code === 'stopped' && to === proposed && level === 'block',
        )
      expect(exceptions(['heat', 'oven-drying', 'hot-water'], blocked)).toEqual([])
      return warming('heat')
    },
  )
})
