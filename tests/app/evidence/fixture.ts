import type { Interpretation, Plan, Request } from '../../../lib/engine/plan.ts'
import type { Matter, Question } from '../../../lib/knowledge/evidence.ts'
import type { Knowledge, Method } from '../../../lib/knowledge/knowledge.ts'
import type { ConditionRecord } from '../../../lib/record/record.ts'
import { knowledge as small, statement } from '../fixture.ts'

/** One invented matter with all that a screen shows of it. */
const cited = [{ work: 'example-1999', place: 'p. 3', known: 'read' }] as const
const source = { ...cited[0], says: 'supports' } as const
const label = (id: string, text: string) => ({ id, label: text, means: '', tell: '' })

const rival = (id: string): Matter['rivals'][number] => ({
  id,
  says: `It is ${id}.`,
  priors: [
    {
      when: [{ fact: 'material', any: ['bronze'] }],
      odds: 'seldom',
      because: 'Of bronze.',
      sources: [source],
      figures: [],
    },
    { when: [], odds: 'common', because: 'Of the rest.', sources: [source], figures: [] },
  ],
  settled: null,
})

const group = (id: string, by: string, question: string | null): Matter['groups'][number] => ({
  id,
  label: `Group ${id}`,
  by,
  question,
  sameCauseAs: null,
  states: [
    {
      id: 'shown',
      says: `it shows ${id}`,
      when: question === null ? [{ fact: 'xrf', any: ['Sn'] }] : [],
      fits: { tinning: 'typical', silvering: 'rare', solder: 'excluded' },
      sources: [source],
      figures: [],
    },
  ],
  rest: {
    says: `it does not show ${id}`,
    fits: { tinning: 'occasional', silvering: 'frequent', solder: 'typical' },
  },
  failures: [
    {
      id: 'crust',
      says: 'a crust hides it',
      when: [],
      of: ['silvering'],
      as: 'rest',
      how: { grade: 'occasional' },
      sources: [source],
      figures: [],
    },
  ],
})

export const matter: Matter = {
  id: 'white-skin',
  asks: 'What is the white skin?',
  about: [{ field: 'evidence', value: 'white-metal-sheen' }],
  where: [],
  rivals: [rival('tinning'), rival('silvering'), rival('solder')],
  groups: [group('edge', 'eye', 'edge'), group('colour', 'eye', 'colour'), group('elements', 'xrf', null)],
  contested: 'tin-or-silver',
}

const question = (id: string, asks: string): Question => ({
  id,
  asks,
  tell: 'Look along it.',
  why: '',
  by: 'eye',
  answers: [{ id: 'shown', label: 'Shown', tell: 'It is there.' }],
})

const xrf: Method = {
  id: 'xrf',
  label: 'X-ray fluorescence',
  answers: '',
  cannot: '',
  kind: 'analysis',
  sampling: false,
  harm: 'touches',
  leave: true,
  minutes: { setUp: 15, each: 20, figures: [], known: 'common-practice' },
  who: 'A trained user',
  order: 1,
  cautions: [],
  sources: [],
}

export const knowledge: Knowledge = {
  ...small,
  matters: { 'white-skin': matter },
  questions: { edge: question('edge', 'How does it end?'), colour: question('colour', 'What colour is it?') },
  methods: { xrf },
  contested: {
    'tin-or-silver': { id: 'tin-or-silver', question: 'Tin or silver?', sides: [], follows: '', because: '' },
  },
  vocabulary: {
    ...small.vocabulary,
    fields: {
      ...small.vocabulary.fields,
      evidence: {
        ...small.vocabulary.fields['seen']!,
        id: 'evidence',
        label: 'Traces seen',
        values: [label('white-metal-sheen', 'White metal sheen')],
      },
    },
    codes: {
      ...small.vocabulary.codes,
      tinning: label('tinning', 'Tinning'),
      silvering: label('silvering', 'Silvering'),
      solder: label('solder', 'Solder line'),
    },
  },
}

export const interpretation = (
  id: string,
  probability: number,
  range: readonly [number, number],
  more: Partial<Interpretation> = {},
): Interpretation => ({
  component: 'plate',
  about: 'white-metal-sheen',
  interpretation: id,
  probability,
  range,
  matter: 'white-skin',
  says: `It is ${id}.`,
  standing: 'likelier',
  for: [],
  against: [],
  ...more,
})

export const interpretations: Plan['interpretations'] = [
  interpretation('tinning', 0.62, [0.48, 0.71], {
    for: [{ group: 'edge', says: 'it thins out', strength: 'strong', sources: cited }],
    against: [{ group: 'colour', says: 'it is dull', strength: 'slight', sources: cited }],
  }),
  interpretation('silvering', 0.35, [0.2, 0.47]),
  interpretation('solder', 0.03, [0.01, 0.12]),
]

export const record: ConditionRecord = {
  find_number: 'TW-0001',
  components: [
    { component: 'plate', material: 'bronze', looked: ['edge:shown'] },
    { component: 'pin', material: 'iron' },
  ],
} as ConditionRecord

export const request: Request = {
  method: 'xrf',
  question: 'What is the white skin?',
  rank: 1,
  gainBits: 0.6,
  sampling: false,
  who: 'A trained user',
  cautions: ['Only in its chamber.'],
  components: ['plate'],
  basis: [{ ...statement, code: 'xrf', rule: 'evidence/white-skin', text: 'What is the white skin?' }],
  means: [
    {
      component: 'plate',
      matter: 'white-skin',
      group: 'elements',
      outcome: 'it shows elements',
      chance: 0.6,
      interpretation: 'tinning',
      probability: 0.97,
      standing: 'likelier',
      changes: [{ part: 'storage', code: 'rh-percent', text: '', rhPercent: { min: 0, max: 35 } }],
    },
    {
      component: 'plate',
      matter: 'white-skin',
      group: 'elements',
      outcome: 'it does not show elements',
      chance: 0.4,
      interpretation: 'silvering',
      probability: 0.7,
      standing: 'likelier',
      changes: [],
    },
  ],
  misleads: [{ says: 'a crust hides it', sources: cited }],
  ifConservatorAgrees: false,
}

export const plan = { interpretations, requests: [request], lookNext: [] } as unknown as Plan
