import { describe, expect } from 'vitest'
import { knowledge } from '../../knowledge-at-hand.ts'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { line, side, request } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const onSilver = { work: 'rivers-umney-2003', place: 'passage on silver', known: 'read' } as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const proposing = (
  proposed: 'silver-dip' | 'ultrasonic' | 'acid-or-edta' | 'hot-water' | 'heat',
  ...parts: Parameters<typeof planOf>[1][]
) => planOf({ ...dry, proposed: [proposed] }, ...parts).objections

describe('black fills in silver', () => {
  printed(
    { check: 'practice 22', ...onSilver, tolerance: inWords, says: 'a silver dip with niello: blocked' },
    () => {
      const objection = line(
        proposing('silver-dip', { material: 'silver', evidence: ['black-in-cut-lines'] }),
        'dip-niello',
      )
      expect(objection).toMatchObject({ level: 'block', to: 'silver-dip', precautionary: false })
      const listed = proposing(
        'silver-dip',
        { material: 'silver', evidence: ['tool-marks'] },
        { material: 'niello', role: 'inlay' },
      )
      expect(
        listed.filter(({ level }) => level === 'block').flatMap(({ components }) => components),
      ).toContain('inlay')
      return objection
    },
  )

  printed(
    {
      check: 'practice 20',
      work: 'scott-2002',
      place: 'about pp. 236–238',
      known: 'read',
      tolerance: inWords,
      says: 'black in a recess may be tarnish and proves no niello: not cleaned, not named',
    },
    () => {
      const plan = planOf(dry, { material: 'silver', evidence: ['black-in-recesses'] })
      const left = line(plan.handling, 'do-not-clean')
      expect(left.text).toMatch(/may be niello/)
      return left
    },
  )

  printed(
    {
      check: 'practice 18',
      work: 'la-niece-1983',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'black fill in cut lines: which sulphide is asked, by the phase',
    },
    () => {
      const plan = planOf(dry, { material: 'silver', evidence: ['black-in-cut-lines'] })
      const raman = request(plan, 'raman')
      expect(raman.question).toMatch(/sulphide/)
      return raman.basis
    },
  )

  printed(
    {
      check: 'practice 19',
      work: 'mozgai-2019',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'mixed silver-copper niello occurs in Roman work: no date rests on it',
    },
    () => {
      expect(knowledge.contested['niello-dating']?.follows).toMatch(/never offers it as a date/)
      return side('niello-dating', 'mozgai-2019')
    },
  )
})
