import { z } from 'zod'

/** The written form of every entry, exactly as DEVELOPERS.md shows it. An unknown key is a flaw. */
export const id = z.string().regex(/^[a-z][a-z0-9-]*$/, 'an id in kebab-case')
export const sentence = z.string().min(1)
export const known = z.enum(['read', 'second-hand', 'memory', 'common-practice'])
const certainty = z.enum(['established', 'supported', 'contested', 'opinion'])
export const place = z.string().min(1).nullable()

export const work = z.strictObject({
  id,
  authors: z.array(z.string().min(1)),
  year: z.int().nullable(),
  title: sentence,
  in: z.string().optional(),
  doi: z.string().optional(),
  address: z.string().optional(),
  known,
  note: z.string().optional(),
})

export const figure = z.strictObject({
  id,
  says: sentence,
  quantity: id,
  value: z.number(),
  'as-printed': z.string(),
  unit: z.string(),
  'valid-for': sentence,
  source: z.strictObject({ work: z.string(), place }),
  known,
  certainty,
  kept: z.string().optional(),
})

export const source = z.strictObject({ work: z.string(), place, says: z.enum(['supports', 'against']), known })

const cell = z.union([
  z.array(z.string()).min(1),
  z.strictObject({ none: z.array(z.string()).min(1) }),
  z.strictObject({
    from: z.string().optional(),
    above: z.string().optional(),
    to: z.string().optional(),
    below: z.string().optional(),
  }),
])

export const when = z.record(z.string(), cell)
const range = z.strictObject({ from: z.string().optional(), to: z.string().optional() })

/** Which of these keys belong together is checked beside the decision that the rule stands in. */
const then = z.strictObject({
  answer: z.string().optional(),
  rh: range.optional(),
  temperature: range.optional(),
  'check-every-days': z.string().optional(),
  'every-days': z.string().optional(),
  look: sentence.optional(),
  say: z.string().optional(),
  to: z.string().optional(),
  step: z
    .strictObject({
      who: z.enum(['assistant', 'conservator', 'store-manager']),
      by: sentence,
      'within-days': z.string().optional(),
      until: sentence.optional(),
    })
    .optional(),
  request: z.strictObject({ question: sentence }).optional(),
  act: z
    .strictObject({ above: z.string().optional(), below: z.string().optional(), 'within-days': z.string() })
    .optional(),
})

const value = z.union([z.string(), z.number(), z.array(z.string())])

export const rule = z.strictObject({
  id,
  title: sentence,
  when,
  then,
  overrides: z.array(z.string()).optional(),
  strength: z.enum(['must', 'should', 'consider']),
  certainty,
  level: z.enum(['stop', 'warn', 'note', 'block', 'limit', 'preference']).optional(),
  call: z.string().optional(),
  order: z.number().optional(),
  text: sentence.optional(),
  because: sentence,
  caution: sentence.optional(),
  sources: z.array(source),
  contested: z.string().optional(),
  retired: sentence.optional(),
  examples: z.array(z.strictObject({ given: z.record(z.string(), value), gives: z.unknown() })).optional(),
})

export const notCovered = z.strictObject({ when, what: sentence, because: sentence, quiet: z.literal(true).optional() })

export const decision = z.strictObject({
  decision: id,
  asks: sentence,
  each: z.enum(['component', 'find']),
  policy: z.enum(['unique', 'strictest', 'collect']),
  fills: z
    .enum([
      'storage.rh',
      'storage.keep',
      'storage.temperature',
      'storage.light',
      'storage.air',
      'storage.act',
      'storage.interim',
      'storage.ways-out',
      'handling',
      'packing',
      'steps',
      'urgency',
      'inspection',
      'cautions',
      'objections',
      'requests',
      'referrals',
      'selection',
    ])
    .nullable()
    .optional(),
  answers: z.array(z.string()).optional(),
  absent: z.enum(['protective', 'silent']),
  'called-for-by': z.array(z.string()).optional(),
  facts: z.array(z.string()),
  rules: z.array(z.unknown()),
  'not-covered': z.array(z.unknown()).optional(),
})

export const method = z.strictObject({
  id,
  label: sentence,
  answers: sentence,
  cannot: sentence,
  kind: z.enum(['dating', 'looking', 'imaging', 'analysis']),
  sampling: z.boolean(),
  harm: z.enum(['none', 'touches', 'loose-powder', 'micro-sample', 'cut']),
  leave: z.boolean(),
  minutes: z.strictObject({ 'set-up': z.string(), each: z.string() }),
  who: sentence,
  order: z.number(),
  cautions: z.array(z.strictObject({ code: z.string(), text: sentence, sources: z.array(source) })),
  sources: z.array(source),
})

export const contested = z.strictObject({
  id,
  question: sentence,
  sides: z
    .array(z.strictObject({ says: sentence, figures: z.array(z.string()), sources: z.array(source) }))
    .min(2),
  follows: sentence,
  because: sentence,
})

export const task = z.strictObject({
  id,
  label: sentence,
  cautions: z
    .array(
      z.strictObject({
        code: z.string(),
        level: z.enum(['stop', 'warn', 'note']),
        text: sentence,
        sources: z.array(source),
        contested: z.string().optional(),
      }),
    )
    .min(1),
})

/** Points are `[vapour pressure in Pa, water in g per kg of dry gel]`. */
export const isotherm = z.strictObject({
  id,
  label: sentence,
  branch: z.enum(['adsorption', 'desorption']),
  'temperature-c': z.number(),
  points: z.array(z.tuple([z.number(), z.number()])).min(3),
  source: z.strictObject({ work: z.string(), place }),
  known,
  note: sentence,
})

const word = {
  label: sentence,
  means: sentence,
  tell: z.string().optional(),
  'confused-with': z.array(z.string()).optional(),
}
const fieldId = z.string().regex(/^[a-z][a-z0-9_]*$/, 'the name of a field of the record')

export const field = z.strictObject({
  id: fieldId,
  ...word,
  asks: z.string().optional(),
  lookable: z.boolean().optional(),
  seldom: z.boolean().optional(),
  why: z.string().optional(),
  'also-called': z.array(z.string()).optional(),
  values: z.array(z.strictObject({ id, ...word })).optional(),
})
export const code = z.strictObject({ id, label: sentence, means: sentence, tell: z.string().optional() })
/** `one` is printed where the value is one: `1 day`. */
export const unit = z.strictObject({ id, label: sentence, printed: z.string(), one: z.string().optional() })
export const textWord = z.strictObject({
  words: z.array(z.string().min(1)).min(1),
  not: z.array(z.string().min(1)),
  hazard: z.string().optional(),
  'object-kind': z.string().optional(),
})

export type Written<Shape extends z.ZodType> = z.infer<Shape>
