import { z } from 'zod'
import { id, known, place, sentence, source, when } from './shapes.ts'

/** The written forms of the evidence base, exactly as DEVELOPERS.md shows them. An unknown key is a flaw. */
const grade = z.enum(['typical', 'frequent', 'occasional', 'rare', 'excluded'])
const odds = z.enum(['usual', 'common', 'uncommon', 'seldom', 'exceptional'])
const fits = z.record(z.string(), grade)
const share = z.number().min(0).max(1)
const positive = z.number().positive()

export const question = z.strictObject({
  id,
  asks: sentence,
  tell: sentence,
  why: sentence,
  by: z.string(),
  answers: z.array(z.strictObject({ id, label: sentence, tell: sentence })).min(1),
})

export const prior = z.strictObject({
  when: when.optional(),
  odds,
  because: sentence,
  sources: z.array(source),
})

export const settled = z.strictObject({
  part: z.strictObject({ role: z.string(), material: z.string() }).optional(),
  seen: z.array(z.string()).optional(),
  tests: z.array(z.string()).optional(),
})

export const rival = z.strictObject({
  id,
  says: sentence,
  priors: z.array(prior).min(1),
  settled: settled.optional(),
})

/** A grade that a specialist changed, and why: kept with the state, read by people only. */
const corrected = z
  .array(
    z.strictObject({
      rival: z.string(),
      from: grade,
      to: grade,
      because: sentence,
      work: z.string(),
      place,
      known,
      by: sentence,
      on: z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a day as year-month-day'),
    }),
  )
  .optional()

export const state = z.strictObject({
  id,
  says: sentence,
  when: when.optional(),
  fits,
  sources: z.array(source),
  corrected,
})

export const failure = z.strictObject({
  id,
  says: sentence,
  when: when.optional(),
  of: z.array(z.string()).min(1).optional(),
  as: z.string(),
  grade: grade.optional(),
  depth: z
    .strictObject({ line: z.string(), through: z.string(), 'crust-um': z.tuple([z.string(), z.string()]) })
    .optional(),
  sources: z.array(source),
})

export const group = z.strictObject({
  id,
  label: sentence,
  by: z.string(),
  question: z.string().optional(),
  'same-cause-as': z.string().optional(),
  states: z.array(state).min(1),
  rest: z.strictObject({ says: sentence, fits, corrected }),
  failures: z.array(failure).optional(),
})

/** Rivals and groups are read one by one, so that one slip does not hide the rest. */
export const matter = z.strictObject({
  matter: id,
  asks: sentence,
  about: z.array(z.strictObject({ evidence: z.string().optional(), seen: z.string().optional() })).min(1),
  where: when.optional(),
  contested: z.string().optional(),
  rivals: z.array(z.unknown()).min(2),
  groups: z.array(z.unknown()).min(1),
})

/** Energies in keV, mass attenuation in cm²/g; an edge stands twice, below and above. */
export const element = z.strictObject({
  id,
  symbol: z.string(),
  label: sentence,
  'density-g-per-cm3': positive,
  'lines-kev': z.record(z.string(), positive),
  'edges-kev': z.record(z.string(), positive),
  attenuation: z.array(z.tuple([positive, positive])).min(2),
  sources: z.array(source).min(1),
})

/** Parts are symbols and mass fractions. */
export const matrix = z.strictObject({
  id,
  label: sentence,
  'density-g-per-cm3': positive,
  parts: z.array(z.tuple([z.string(), share])).min(1),
  sources: z.array(source).min(1),
})
