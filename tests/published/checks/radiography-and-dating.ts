import { describe, expect } from 'vitest'
import { knowledge } from '../../knowledge-at-hand.ts'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, figure, line, methods, request } from '../../said.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

const guidelines = (place: string) => ({ work: 'bourgarit-2025-guidelines', place, known: 'read' }) as const
const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const crucible = { material: 'casting-waste' } as const
const dated = planOf({ ...dry, needed_for: ['luminescence-dating'] }, crucible, {
  material: 'iron',
  role: 'adhering',
})

describe('radiographs and dates', () => {
  printed(
    {
      check: 'open texts 34',
      ...guidelines('chapter II.8, section 1; chapter II.3, section 1'),
      tolerance: inWords,
      says: 'luminescence is sampled before any X-ray',
    },
    () => {
      expect(methods(dated)[0]).toBe('luminescence')
      expect(codes(dated.steps)).toContain('luminescence-first')
      expect(codes(dated.steps)).not.toContain('book-x-radiography')
      expect(codes(planOf(dry, { material: 'iron' }).steps)).toContain('book-x-radiography')
      return dated.requests[0]!.basis
    },
  )

  printed(
    {
      check: 'open texts 35',
      ...guidelines('chapter II.8, section 1'),
      tolerance: wholeNumber,
      says: 'X-rayed already: the date may read up to 1000 years too old',
    },
    () => {
      expect(figure('luminescence-age-inflation')).toMatchObject({ value: 1000, unit: 'year' })
      const late = planOf(
        { ...dry, needed_for: ['luminescence-dating'], tests: ['body/radiograph:dense-specks'] },
        crucible,
      )
      expect(late.requests[0]!.question).toMatch(/How much dose did the X-ray give/)
      return late.requests[0]!.basis
    },
  )

  printed(
    {
      check: 'open texts 40',
      ...guidelines('II.3, section 1.4'),
      tolerance: wholeNumber,
      says: 'one view is not enough: two at least',
    },
    () => {
      expect(figure('radiograph-views').value).toBe(2)
      const block = planOf({ ...dry, lifted_as: 'block' }, { material: 'iron' })
      const plate = request(block, 'x-radiography')
      expect(plate.basis.flatMap(({ figures }) => figures)).toContain('radiograph-views')
      return plate.basis
    },
  )

  printed(
    {
      check: 'open texts 45',
      ...guidelines('II.3, section 1.6'),
      tolerance: wholeNumber,
      says: '10 mm of aluminium look like 3 mm of bronze: grey names no metal',
    },
    () => {
      expect(figure('radiograph-same-grey-aluminium')).toMatchObject({ value: 10, unit: 'millimetre' })
      expect(figure('radiograph-same-grey-bronze')).toMatchObject({ value: 3, unit: 'millimetre' })
      return [figure('radiograph-same-grey-aluminium'), figure('radiograph-same-grey-bronze')]
    },
  )

  printed(
    {
      check: 'practice 60',
      work: 'hms-datasheet-14',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'a bright dot is dense, and is not yet silver',
    },
    () => {
      expect(knowledge.methods['x-radiography']!.cannot).toMatch(/Name the metal/)
      const specks = planOf({ ...dry, tests: ['radiograph:dense-specks'] }, { material: 'iron' })
      expect(JSON.stringify(specks.requests)).not.toMatch(/silver inlay/i)
      expect(specks.storage.components.map(({ component }) => component)).toEqual(['body'])
      return knowledge.methods['x-radiography']!
    },
  )

  printed(
    {
      check: 'corrosion 66, selection',
      work: 'johnson-1991',
      place: 'pp. 396–398',
      known: 'read',
      tolerance: inWords,
      says: 'nothing is selected before all iron has been X-rayed',
    },
    () => {
      const lump = planOf(
        { ...dry, object_kind: 'unidentified-lump', retention: 'discard-proposed' },
        { material: 'iron' },
      )
      expect(codes(lump.selection)).toContain('never-discard-unidentified')
      expect(line(lump.selection, 'no-discard-before-record').text).toMatch(/X-rayed/)
      return line(lump.selection, 'no-discard-before-record')
    },
  )
})
