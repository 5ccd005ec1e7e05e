import { describe, expect } from 'vitest'
import { failureOf, leader, matter, rivalOf, share, stateOf, weighed } from '../../evidence/at-hand.ts'
import { figure } from '../../said.ts'
import { printed } from '../printed.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

type Find = Parameters<typeof weighed>[1]
type Part = Parameters<typeof weighed>[2]

const roman = { date_from: 150, date_to: 300 }
const ironAge = { date_from: -450, date_to: -300 }

/** Every way to answer, or leave, the questions of a matter that are asked of the eye. */
function answersByEye(of: string): readonly (readonly string[])[] {
  let all: readonly (readonly string[])[] = [[]]
  for (const { by, question, states } of matter(of).groups) {
    if (by !== 'eye') continue
    const answers = [...states.map(({ id }) => id), 'none'].map((answer) => `${question}:${answer}`)
    all = all.flatMap((looked) => [looked, ...answers.map((answer) => [...looked, answer])])
  }
  return all
}

describe('coral and enamel, weighed', () => {
  printed(
    {
      check: 'practice 25, weighed',
      work: 'furst-2016',
      place: 'abstract',
      known: 'read',
      tolerance: 'none below: the rivals keep the printed share at the least, over all answers by eye',
      says: 'by eye alone at least 15 % stays with what is not coral; Raman settles it',
    },
    () => {
      const left = figure('coral-misnamed').value / 100
      expect(left).toBe(0.15)
      const finds: readonly Find[] = [
        {},
        ironAge,
        { ...ironAge, object_kind: 'brooch' },
        { ...ironAge, burial: ['acid-sand'] },
        { ...ironAge, burial: ['calcareous', 'grave'] },
        roman,
      ]
      const combinations = answersByEye('white-pegs')
      expect(combinations.length).toBeGreaterThan(200)
      const surest = Math.max(
        ...finds.flatMap((find) =>
          combinations.map((looked) =>
            share(
              weighed('white-pegs', find, { material: 'bronze', evidence: ['white-pegs'], looked }),
              'coral',
            ),
          ),
        ),
      )
      expect(1 - surest).toBeGreaterThanOrEqual(left)
      const peg: Part = { material: 'bronze', evidence: ['white-pegs'] }
      const raman = weighed('white-pegs', { ...ironAge, tests: ['raman:calcite+carotenoid'] }, peg)
      expect(share(raman, 'coral')).toBeGreaterThan(0.95)
      const bone = weighed('white-pegs', { ...ironAge, tests: ['raman:hydroxyapatite'] }, peg)
      expect(share(bone, 'coral')).toBeLessThan(0.05)
      return [figure('coral-misnamed'), stateOf('white-pegs', 'peg-raman', 'carotenoid')]
    },
  )

  printed(
    {
      check: 'the years of the coral fashion',
      work: 'furst-2016',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: 'red coral between 600 and 100 BC shifts the odds, and no more',
    },
    () => {
      expect(figure('coral-fashion-from').value).toBe(-600)
      expect(figure('coral-fashion-to').value).toBe(-100)
      const peg: Part = { material: 'bronze', evidence: ['white-pegs'] }
      const within = weighed('white-pegs', { date_from: -600, date_to: -100 }, peg)
      const after = weighed('white-pegs', { date_from: 100, date_to: 200 }, peg)
      expect(share(within, 'coral')).toBeGreaterThan(share(after, 'coral'))
      expect(within.standing).not.toBe('settled')
      return [figure('coral-fashion-from'), figure('coral-fashion-to')]
    },
  )

  printed(
    {
      check: 'what passes for coral',
      work: 'furst-2014',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'bone, ivory, chalk and shell are mistaken for coral: all are rivals and none is shut out',
    },
    () => {
      const found = weighed('white-pegs', ironAge, { material: 'bronze', evidence: ['white-pegs'] })
      const mistaken = ['bone-or-ivory', 'shell', 'paste-filler']
      for (const id of mistaken) expect(share(found, id)).toBeGreaterThan(0.01)
      return mistaken.flatMap((id) => rivalOf('white-pegs', id).priors)
    },
  )

  printed(
    {
      check: 'practice 24, weighed',
      work: 'stapleton-freestone-bowman-1999',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'opaque red glass of copper and lead: lead in a red fill speaks for enamel',
    },
    () => {
      const part: Part = { material: 'copper', evidence: ['red-fill'] }
      const before = share(weighed('red-fill', {}, part), 'enamel')
      const found = weighed('red-fill', { tests: ['xrf:Cu+Pb'] }, part)
      expect(leader(found)).toBe('enamel')
      expect(share(found, 'enamel')).toBeGreaterThan(before)
      return stateOf('red-fill', 'fill-elements', 'lead')
    },
  )

  printed(
    {
      check: 'opaque red, green or black outside',
      work: 'common-practice',
      place: null,
      known: 'common-practice',
      tolerance: inWords,
      says: 'red only in a chip is enamel; red copper oxide in its spectrum is no proof against it',
    },
    () => {
      const part: Part = { material: 'copper-alloy', evidence: ['red-fill'] }
      const chip = weighed('red-fill', {}, { ...part, looked: ['red-break:red-in-chip'] })
      expect(leader(chip)).toBe('enamel')
      const cuprite = weighed('red-fill', { tests: ['raman:cuprite'] }, part)
      expect(share(cuprite, 'enamel')).toBeGreaterThan(0.2)
      expect(share(cuprite, 'corrosion-fill')).toBeGreaterThan(0.2)
      return [
        stateOf('red-fill', 'red-break', 'red-in-chip'),
        failureOf('red-fill', 'fill-raman', 'cuprite-in-glass'),
      ]
    },
  )

  printed(
    {
      check: 'enamels of London, weighed',
      work: 'mortimer-1994',
      place: 'summary',
      known: 'read',
      tolerance: inWords,
      says: 'lead in a glassy fill of many colours is of enamel, on copper and brass alike',
    },
    () => {
      const fill = { evidence: ['glassy-fill'], looked: ['fill-colour:several-in-pattern'] } as const
      for (const material of ['copper', 'brass'] as const) {
        const found = weighed('glassy-fill', { tests: ['xrf:Pb+Cu+Sn'] }, { material, ...fill })
        expect(leader(found)).toBe('enamel')
      }
      return stateOf('glassy-fill', 'fill-elements', 'lead')
    },
  )

  printed(
    {
      check: 'open texts 58, weighed',
      work: 'leiza-thesaurus',
      place: 'BG987D',
      known: 'read',
      tolerance: inWords,
      says: 'drops on dry-stored glass: weeping glass first',
    },
    () => {
      const found = weighed(
        'glass-drops',
        { state_now: 'dry' },
        { material: 'glass', seen: ['droplets-on-glass'] },
      )
      expect(leader(found)).toBe('glass-alkali-product')
      return rivalOf('glass-drops', 'glass-alkali-product').priors
    },
  )
})
