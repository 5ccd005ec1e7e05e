import { describe, expect } from 'vitest'
import { knowledge } from '../../knowledge-at-hand.ts'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, figure, line, rule, side } from '../../said.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

const drying = {
  work: 'cardiff-guidance-storage',
  place: 'Immediate post-excavation actions, method 2',
  known: 'read',
} as const
const inhibitors = { work: 'casaletto-basilissi-2017', place: null, known: 'read' } as const
const tannin = (who: string) =>
  ({ work: 'conservation-distlist', place: `2001/0591 and 2001/0603 (${who})`, known: 'read' }) as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
type Part = Parameters<typeof planOf>[1]
type Proposal = NonNullable<Parameters<typeof planOf>[0]['proposed']>[number]
const against = (proposed: Proposal, ...parts: readonly Part[]) =>
  planOf({ ...dry, proposed: [proposed] }, ...parts).objections
const blocks = (proposed: Proposal, ...parts: readonly Part[]) =>
  codes(against(proposed, ...parts).filter(({ level, to }) => level === 'block' && to === proposed))
/** Iron on which somebody has looked for traces and noted only the marks of tools. */
const plainIron = {
  material: 'iron',
  seen: ['orange-brown-crust'],
  evidence: ['tool-marks'],
  core: 'solid',
} as const

describe('treatments that somebody has in mind', () => {
  printed(
    {
      check: 'practice 41',
      ...drying,
      tolerance: wholeNumber,
      says: 'metal may be dried in an oven at 90 °C for 48 h: here plain iron, and a conservator asked',
    },
    () => {
      expect(figure('oven-iron-temperature')).toMatchObject({ value: 90, unit: 'degree-celsius' })
      expect(figure('oven-iron-hours')).toMatchObject({ value: 48, unit: 'hour' })
      expect(blocks('oven-drying', plainIron)).toEqual([])
      expect(line(against('oven-drying', plainIron), 'oven-iron')).toMatchObject({
        level: 'warn',
        to: 'oven-drying',
      })
      return line(against('oven-drying', plainIron), 'oven-iron')
    },
  )

  printed(
    {
      check: 'practice, contested c',
      work: 'finds-scheme-advice-notes',
      place: 'note 1',
      known: 'read',
      tolerance: inWords,
      says: 'another note keeps finds from heaters because quick drying cracks them',
    },
    () => side('oven-drying', 'finds-scheme-advice-notes'),
  )

  printed(
    {
      check: 'practice 55',
      ...tannin('Bailey'),
      tolerance: inWords,
      says: 'tannin is no recognised cure for salty iron: warned, contested',
    },
    () => {
      const said = against('tannic-acid', { ...plainIron, seen: ['bright-orange-spots'] })
      expect(line(said, 'tannate-contested')).toMatchObject({ level: 'warn', contested: 'tannic-acid' })
      return line(said, 'tannate-contested')
    },
  )

  printed(
    {
      check: 'practice 55, other side',
      ...tannin('Roth'),
      tolerance: inWords,
      says: 'another found it surprisingly successful',
    },
    () => {
      expect(knowledge.contested['tannic-acid']?.sides).toHaveLength(2)
      return rule('objections-coatings/tannic-acid-iron')
    },
  )

  printed(
    {
      check: 'practice 56',
      work: 'madsen-1967',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'an inhibitor hardly gets under old lacquer: a conservator decides',
    },
    () => {
      const lacquered = planOf(
        { ...dry, proposed: ['benzotriazole'], done_already: ['lacquered'] },
        { material: 'bronze' },
      )
      expect(line(lacquered.objections, 'inhibitor-on-coating')).toMatchObject({
        level: 'warn',
        to: 'benzotriazole',
      })
      expect(codes(lacquered.referrals)).toContain('decide-coating')
      return line(lacquered.objections, 'inhibitor-on-coating')
    },
  )

  printed(
    {
      check: 'practice 57',
      ...inhibitors,
      tolerance: inWords,
      says: 'benzotriazole is toxic: a laboratory, and nobody else',
    },
    () => {
      const plan = planOf({ ...dry, proposed: ['benzotriazole'] }, { material: 'bronze' })
      expect(line(plan.objections, 'inhibitor-choice').text).toMatch(/laboratory/)
      expect(codes(plan.cautions)).toContain('solvent-vapour')
      return [line(plan.objections, 'inhibitor-choice'), side('benzotriazole', 'casaletto-basilissi-2017')]
    },
  )

  printed(
    {
      check: 'practice 58',
      work: 'logan-1998',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'the furnace loses the evidence of how the iron was made',
    },
    () => {
      expect(blocks('hydrogen-furnace', plainIron)).toContain('furnace-metal')
      return line(against('hydrogen-furnace', plainIron), 'furnace-metal')
    },
  )

  printed(
    {
      check: 'practice 52',
      work: 'bourgarit-2025-guidelines',
      place: 'chapter II.5; Table 10',
      known: 'memory',
      tolerance: inWords,
      says: 'a sample, or a cleaned spot, needs leave in writing',
    },
    () => {
      const permission = line(against('sampling', { material: 'bronze' }), 'sampling-permission')
      expect(permission.text).toMatch(/in writing/)
      return permission
    },
  )

  printed(
    {
      check: 'practice 17',
      work: 'frontiers-gilded-buckle-2020',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'green breaks through gilding: chloride beneath, and no rubbing',
    },
    () => {
      const gilded = planOf(dry, {
        material: 'copper-alloy',
        seen: ['pale-green-powder'],
        evidence: ['gold-coloured-film'],
      })
      expect(gilded.storage.rhPercent!.max).toBe(35)
      expect(codes(gilded.handling)).toContain('do-not-touch')
      return line(gilded.handling, 'do-not-clean')
    },
  )
})
