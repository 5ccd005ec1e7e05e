import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { figure, line, rule, side } from '../../said.ts'
import { wholeNumber } from '../tolerance.ts'

const nails = { work: 'rimmer-watkinson-wang-2013', place: 'abstract', known: 'read' } as const
const lacquers = (place: string) => ({ work: 'boyatzis-2017', place, known: 'read' }) as const

/** Desalinated iron without a sign, watched for long in air damp enough to show one. */
const after = (...tests: readonly string[]) =>
  planOf(
    {
      state_now: 'dry',
      burial: ['free-draining'],
      done_already: ['desalinated'],
      watched_days: 800,
      stored_rh_percent: 40,
      tests,
    },
    { material: 'iron', seen: ['no-change-seen'] },
  )
const limit = (plan: ReturnType<typeof planOf>) => plan.storage.components[0]!.limit.max
const bronzeLacquered = (on: string) =>
  planOf(
    { state_now: 'dry', burial: ['free-draining'], treatments: [{ what: 'lacquered', on }] },
    { material: 'bronze', seen: ['no-change-seen'] },
  )

describe('treatments of the past', () => {
  printed(
    {
      check: 'corrosion 27',
      ...nails,
      tolerance: 'exact: "< 400 ppm" is printed as an open line, tried at 350, 399, 400 and 450',
      says: 'no treated nail below 400 ppm of chloride corroded',
    },
    () => {
      expect(figure('residual-chloride-quiet')).toMatchObject({ value: 400, unit: 'ppm' })
      const [low, under, at, over] = [350, 399, 400, 450].map((ppm) =>
        planOf(
          {
            state_now: 'dry',
            burial: ['free-draining'],
            done_already: ['desalinated'],
            tests: [`residual-chloride-ppm:${ppm}`],
          },
          { material: 'iron', seen: ['orange-brown-crust'] },
        ),
      )
      expect([low, under, at, over].map((plan) => limit(plan!))).toEqual([35, 35, 12, 12])
      return [figure('residual-chloride-quiet'), rule('rest/rest-by-chloride'), rule('salt-left/much-left')]
    },
  )

  printed(
    {
      check: 'corrosion 26',
      ...nails,
      tolerance: 'exact: "< 5 mg/l" is printed as an open line, tried at 4.9 and at 5',
      says: 'a last bath below 5 mg/l: 93 % of the nails stayed quiet, which alone frees nothing',
    },
    () => {
      expect(figure('low-bath-quiet-share')).toMatchObject({ value: 93, unit: 'percent' })
      expect(limit(after('bath-chloride-mg-l:4.9'))).toBe(35)
      expect(limit(after('bath-chloride-mg-l:5'))).toBe(12)
      const unwatched = planOf(
        { state_now: 'dry', done_already: ['desalinated'], tests: ['bath-chloride-mg-l:4.9'] },
        { material: 'iron', seen: ['orange-brown-crust'] },
      )
      expect(limit(unwatched)).toBe(12)
      return [figure('low-bath-quiet-share'), rule('salt-left/bath-clear')]
    },
  )

  printed(
    {
      check: 'corrosion 26, end point',
      work: 'cci-notes-4-5',
      place: null,
      known: 'read',
      tolerance: wholeNumber,
      says: 'a bath ends below 5 ppm',
    },
    () => {
      expect(figure('chloride-test-standard')).toMatchObject({ value: 5, unit: 'ppm' })
      expect(figure('bath-chloride-end').value).toBe(figure('chloride-test-standard').value)
      return figure('chloride-test-standard')
    },
  )

  printed(
    {
      check: 'corrosion 28',
      ...nails,
      tolerance: wholeNumber,
      says: 'at 75 °C and 75 % 90 % of untreated nails corroded, 77 % of treated ones did not',
    },
    () => {
      const numbers = [
        'nail-trial-temperature',
        'nail-trial-rh',
        'untreated-corroded-share',
        'treated-quiet-share',
        'untreated-nails',
        'treated-nails',
      ]
      expect(numbers.map((id) => figure(id).value)).toEqual([75, 75, 90, 77, 31, 35])
      return [...numbers.map(figure), side('desalination', 'rimmer-watkinson-wang-2013')]
    },
  )

  printed(
    {
      check: 'practice, contested e',
      work: 'conservation-distlist',
      place: '2013/0254',
      known: 'read',
      tolerance: wholeNumber,
      says: 'where less than 20 % is guaranteed, one adviser leaves desalination out',
    },
    () => {
      expect(figure('storage-instead-of-desalination-rh')).toMatchObject({ value: 20, unit: 'percent' })
      expect(
        line(
          planOf({ state_now: 'dry', proposed: ['alkaline-desalination'] }, { material: 'iron' }).objections,
          'desalination-choice',
        ).contested,
      ).toBe('desalination')
      return [figure('storage-instead-of-desalination-rh'), side('desalination', 'dbu-2020')]
    },
  )

  printed(
    {
      check: 'open texts 46',
      ...lacquers('introduction'),
      tolerance: 'exact: the lower of the printed 5–8 years, as 1826 days',
      says: 'a lacquer of nine years is due for review, even if it looks clear',
    },
    () => {
      expect([figure('lacquer-life-low').value, figure('lacquer-life-high').value]).toEqual([5, 8])
      expect(Math.abs(figure('lacquer-review-days').value - 5 * 365.25)).toBeLessThan(1)
      expect(bronzeLacquered('2017-11').inspection.basis.map(({ rule: id }) => id)).toContain(
        'inspection-coating/coating-old',
      )
      expect(bronzeLacquered('2023-11').inspection.basis.map(({ rule: id }) => id)).not.toContain(
        'inspection-coating/coating-old',
      )
      return bronzeLacquered('2017-11').inspection.basis
    },
  )

  printed(
    {
      check: 'open texts 47',
      ...lacquers('table 37.3'),
      tolerance: 'half of the last printed digit: 17/3 is printed as 5.7',
      says: 'mean grade of lacquers over benzotriazole 2.25, without it 5.7',
    },
    () => {
      expect(figure('lacquer-grade-stabilised').value).toBe((4 + 0 + 1 + 4) / 4)
      expect(Math.abs(figure('lacquer-grade-not-stabilised').value - (5 + 9 + 3) / 3)).toBeLessThan(0.05)
      return [figure('lacquer-grade-stabilised'), figure('lacquer-grade-not-stabilised')]
    },
  )

  printed(
    {
      check: 'open texts 57',
      work: 'finds-scheme-field-reports',
      place: 'Frome, May 2013',
      known: 'read',
      tolerance: wholeNumber,
      says: '52 503 coins were rinsed by museum conservators: who washed is asked',
    },
    () => {
      expect(figure('hoard-coins-rinsed')).toMatchObject({ value: 52503, unit: 'count' })
      const coins = planOf(
        { state_now: 'dry', object_kind: 'coin', done_already: ['washed'] },
        { material: 'copper-alloy' },
      )
      expect(line(coins.handling, 'record-what-was-done').text).toMatch(/who did it/)
      return line(coins.handling, 'record-what-was-done')
    },
  )
})
