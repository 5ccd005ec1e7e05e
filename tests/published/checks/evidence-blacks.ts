import { describe, expect } from 'vitest'
import { failureOf, leader, matter, rivalOf, share, stateOf, weighed } from '../../evidence/at-hand.ts'
import { figure, side } from '../../said.ts'
import { printed } from '../printed.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

type Find = Parameters<typeof weighed>[1]
type Part = Parameters<typeof weighed>[2]

const roman = { date_from: 150, date_to: 300 }
const late = { date_from: 1150, date_to: 1250 }
const hellenistic = { date_from: -300, date_to: -100 }

const silverLines: Part = { material: 'silver', evidence: ['black-in-cut-lines'] }
const silverEyes: Part = { material: 'silver', evidence: ['black-in-recesses'] }
const inSilver = (find: Find, part: Part = silverLines) => weighed('black-fill-in-silver', find, part)

describe('niello, weighed', () => {
  printed(
    {
      check: 'practice 18, weighed',
      work: 'la-niece-1983',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'silver sulphide alone in the lines of Roman silver: niello first, tarnish still open',
    },
    () => {
      const found = inSilver({ ...roman, tests: ['xrd:acanthite'] })
      expect(leader(found)).toBe('niello')
      expect(share(found, 'silver-sulphide-tarnish')).toBeGreaterThan(0.1)
      return stateOf('black-fill-in-silver', 'phase-by-xrd', 'silver-sulphide')
    },
  )

  printed(
    {
      check: 'practice 19, weighed',
      work: 'mozgai-2019',
      place: 'abstract',
      known: 'read',
      tolerance: 'a twentieth: the date may shift the odds of niello, never the meaning of its phase',
      says: 'mixed sulphide on a Roman piece is niello, as it is on a later one',
    },
    () => {
      const mixed = ['xrd:acanthite+stromeyerite'] as const
      const early = inSilver({ date_from: 260, date_to: 280, tests: [...mixed] })
      const after = inSilver({ ...late, tests: [...mixed] })
      expect(leader(early)).toBe('niello')
      expect(Math.abs(share(early, 'niello') - share(after, 'niello'))).toBeLessThan(0.05)
      return stateOf('black-fill-in-silver', 'phase-by-xrd', 'mixed-sulphide')
    },
  )

  printed(
    {
      check: 'niello by period: the rule and its Roman exception',
      work: 'mozgai-2019',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: 'the staff of 260 to 280 lies more than 200 years before mixed niello should begin',
    },
    () => {
      expect(figure('niello-early-mixed-from').value).toBe(260)
      expect(figure('niello-early-mixed-to').value).toBe(280)
      expect(
        figure('niello-mixed-from').value - figure('niello-early-mixed-to').value,
      ).toBeGreaterThanOrEqual(200)
      expect(figure('niello-lead-from').value).toBeGreaterThan(figure('niello-mixed-from').value)
      return [figure('niello-early-mixed-from'), figure('niello-early-mixed-to'), figure('niello-mixed-from')]
    },
  )

  printed(
    {
      check: 'practice 20, weighed',
      work: 'scott-2002',
      place: 'about pp. 236–238',
      known: 'read',
      tolerance: inWords,
      says: 'black in the eyes of a silver figure: tarnish first, no proof of niello',
    },
    () => {
      const found = weighed('black-in-recesses', {}, silverEyes)
      expect(leader(found)).toBe('silver-sulphide-tarnish')
      expect(share(found, 'niello')).toBeLessThan(0.25)
      expect(share(found, 'niello')).toBeGreaterThan(0.02)
      return rivalOf('black-in-recesses', 'silver-sulphide-tarnish').priors
    },
  )

  printed(
    {
      check: 'practice 21, weighed',
      work: 'giumlia-mair-la-niece-1998',
      place: null,
      known: 'second-hand',
      tolerance: inWords,
      says: 'lead in the sulphide of a Hellenistic piece is niello all the same, and gives no date',
    },
    () => {
      for (const [of, part] of [
        ['black-fill-in-silver', silverLines],
        ['black-in-recesses', silverEyes],
      ] as const) {
        const found = weighed(of, { ...hellenistic, tests: ['xrd:acanthite+galena'] }, part)
        expect(leader(found)).toBe('niello')
        expect(Object.keys(rivalOf(of, 'niello').settled!).toSorted()).toEqual(['part', 'seen', 'tests'])
        expect(matter(of).contested).toBe('niello-dating')
      }
      return [
        stateOf('black-fill-in-silver', 'phase-by-xrd', 'lead-sulphide'),
        side('niello-dating', 'giumlia-mair-la-niece-1998'),
      ]
    },
  )

  printed(
    {
      check: 'practice 22, weighed',
      work: 'rivers-umney-2003',
      place: 'passage on silver',
      known: 'read',
      tolerance: inWords,
      says: 'a dip takes niello out: empty lines of silver with black in the corners held it',
    },
    () => {
      const part: Part = { material: 'silver', evidence: ['empty-cells'], looked: ['cell-floor:black-left'] }
      expect(leader(weighed('empty-cells', { done_already: ['silver-dip'] }, part))).toBe('niello')
      return rivalOf('empty-cells', 'niello').priors
    },
  )

  printed(
    {
      check: 'open texts D19',
      work: 'bourgarit-2025-guidelines',
      place: 'chapter I.9, note 8',
      known: 'read',
      tolerance: inWords,
      says: 'niello shines grey or blue, black enamel passes for it; niello may lie over a smooth surface',
    },
    () => {
      const flush = { material: 'bronze', evidence: ['black-in-cut-lines'] } as const
      const look = (answer: string) =>
        weighed('black-fill', roman, { ...flush, looked: ['black-sits:flush-body', `black-look:${answer}`] })
      expect(leader(look('grey-blue-shine'))).toBe('niello')
      expect(leader(look('glass-like'))).toBe('black-enamel')
      expect(share(look('dull-hard'), 'black-enamel')).toBeGreaterThan(0.05)
      const smooth = weighed('black-tarnish', {}, { material: 'silver', seen: ['black-tarnish'] })
      expect(share(smooth, 'niello')).toBeGreaterThan(0.02)
      return [
        stateOf('black-fill', 'black-look', 'grey-blue-shine'),
        ...rivalOf('black-tarnish', 'niello').priors,
      ]
    },
  )

  printed(
    {
      check: 'open texts D20 and D21',
      work: 'bourgarit-2025-guidelines',
      place: 'visual atlas 338 B; figure 345',
      known: 'read',
      tolerance: inWords,
      says: 'decayed niello grows into the corrosion beside it; inlaid copper may have gone black',
    },
    () => {
      const decayed = inSilver({}, { ...silverLines, looked: ['black-section:sulphide-into-metal'] })
      expect(share(decayed, 'niello')).toBeGreaterThan(0.05)
      const strip = weighed(
        'black-fill',
        {},
        {
          material: 'bronze',
          evidence: ['black-in-cut-lines'],
          looked: ['black-section:metal-strip'],
        },
      )
      expect(leader(strip)).toBe('blackened-inlay')
      return [
        stateOf('black-fill-in-silver', 'black-section', 'sulphide-into-metal'),
        stateOf('black-fill', 'black-section', 'metal-strip'),
      ]
    },
  )

  printed(
    {
      check: 'physics 7.1: sulphur under lead',
      work: 'epa-6200',
      place: 'section 4.7',
      known: 'second-hand',
      tolerance: inWords,
      says: 'where lead is found too, sulphur counts for less',
    },
    () => {
      const read = (elements: string) =>
        weighed('black-layer', { tests: [`xrf:${elements}`] }, { material: 'bronze', seen: ['black-layer'] })
      expect(share(read('Cu+S'), 'copper-sulphide')).toBeGreaterThan(
        share(read('Cu+Pb+S'), 'copper-sulphide'),
      )
      return failureOf('black-layer', 'layer-elements', 'lead-looks-like-sulphur')
    },
  )

  printed(
    {
      check: 'open texts E18, weighed',
      work: 'bourgarit-2025-guidelines',
      place: 'Table 10; chapter II.7',
      known: 'read',
      tolerance: 'a third of what it had: printed in words, that diffraction is weak for some sulphides',
      says: 'a diffraction without a sulphide does not rule out niello',
    },
    () => {
      const before = share(inSilver(roman), 'niello')
      expect(share(inSilver({ ...roman, tests: ['xrd:quartz'] }), 'niello')).toBeGreaterThan(before / 3)
      return failureOf('black-fill-in-silver', 'phase-by-xrd', 'weak-or-thin')
    },
  )
})

describe('other blacks, weighed', () => {
  printed(
    {
      check: 'open texts 64, weighed',
      work: 'argyropoulos-2017',
      place: 'chapter 38',
      known: 'read',
      tolerance: inWords,
      says: 'black inside a copper pan may be its tinning; a compound of copper and tin settles it',
    },
    () => {
      const pan: Part = {
        material: 'copper',
        seen: ['black-layer'],
        looked: ['black-layer-place:inside-vessel'],
      }
      const seen = weighed('black-layer', { object_kind: 'vessel' }, pan)
      expect(leader(seen)).toBe('tinning')
      expect(seen.standing).not.toBe('settled')
      const measured = weighed('black-layer', { object_kind: 'vessel', tests: ['xrd:eta-cu6sn5'] }, pan)
      expect(share(measured, 'tinning')).toBeGreaterThan(0.95)
      return stateOf('black-layer', 'layer-place', 'inside-vessel')
    },
  )

  printed(
    {
      check: 'corrosion 54 and open texts 65, weighed',
      work: 'fell-2004',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'black oxide on copper from burnt ground is of the fire',
    },
    () => {
      const found = weighed(
        'black-layer',
        { burial: ['ash-burnt'], tests: ['xrd:tenorite+cuprite'] },
        { material: 'copper-alloy', seen: ['black-layer'] },
      )
      expect(leader(found)).toBe('copper-oxide-burnt')
      return stateOf('black-layer', 'layer-phase-xrd', 'copper-oxide')
    },
  )

  printed(
    {
      check: 'open texts 15, weighed',
      work: 'parkhurst-appelo-2013',
      place: 'database',
      known: 'read',
      tolerance: inWords,
      says: 'traces of sulphide blacken silver chloride, so black over waxy grey is chloride',
    },
    () => {
      const found = weighed(
        'black-tarnish',
        { burial: ['free-draining'] },
        { material: 'silver', seen: ['black-tarnish'], looked: ['tarnish-look:over-waxy-grey'] },
      )
      expect(leader(found)).toBe('silver-chloride')
      expect(share(found, 'niello')).toBeLessThan(0.1)
      return stateOf('black-tarnish', 'tarnish-look', 'over-waxy-grey')
    },
  )
})
