import type { EvidenceBase } from '../../lib/evidence/base.ts'
import type {
  Failure,
  Fits,
  Grade,
  Group,
  Matter,
  Prior,
  Rival,
  State,
} from '../../lib/knowledge/evidence.ts'
import type { Cell, Method } from '../../lib/knowledge/knowledge.ts'
import { stated, type Fact, type Facts, type RecordFacts } from '../../lib/record/fact.ts'

/** A matter small enough to be reckoned by hand: what tests of lib/evidence build on, none of it knowledge. */
const rivalIds = ['tin', 'silver', 'high-tin'] as const
const ours = [{ work: 'house-rule', place: null, known: 'common-practice', says: 'supports' }] as const

export const fits = (...grades: readonly Grade[]): Fits =>
  Object.fromEntries(rivalIds.map((id, at) => [id, grades[at]!]))

export const prior = (odds: Prior['odds'], ...when: readonly Cell[]): Prior => ({
  when,
  odds,
  because: 'of the trade',
  sources: ours,
  figures: [],
})

export const rival = (id: string, ...priors: readonly Prior[]): Rival => ({
  id,
  says: `It is ${id}.`,
  priors,
  settled: null,
})

export const state = (id: string, grades: Fits, ...when: readonly Cell[]): State => ({
  id,
  says: `it shows ${id}`,
  when,
  fits: grades,
  sources: ours,
  figures: [],
})

export const failure = (id: string, as: string, grade: Grade, more: Partial<Failure> = {}): Failure => ({
  id,
  says: `it goes wrong by ${id}`,
  when: [],
  of: null,
  as,
  how: { grade },
  sources: ours,
  figures: [],
  ...more,
})

export const edge: Group = {
  id: 'edge',
  label: 'How it ends',
  by: 'eye',
  question: 'edge',
  sameCauseAs: null,
  states: [
    state('lifting', fits('rare', 'frequent', 'excluded')),
    state('worn', fits('frequent', 'occasional', 'rare')),
  ],
  rest: { says: 'no edge can be seen', fits: fits('frequent', 'frequent', 'typical') },
  failures: [],
}

export const elements: Group = {
  id: 'elements',
  label: 'Elements of the skin',
  by: 'xrf',
  question: null,
  sameCauseAs: null,
  states: [
    state('silver', fits('excluded', 'typical', 'excluded'), { fact: 'xrf', any: ['Ag'] }),
    state('tin', fits('typical', 'rare', 'typical'), { fact: 'xrf', any: ['Sn'] }),
  ],
  rest: { says: 'neither was found', fits: fits('occasional', 'occasional', 'rare') },
  failures: [
    failure('crust', 'rest', 'frequent', { when: [{ fact: 'seen', any: ['compact-green'] }] }),
    failure('spread', 'tin', 'occasional', { of: ['silver'] }),
  ],
}

export const ground: Group = {
  id: 'ground',
  label: 'Where it lay',
  by: 'record',
  question: null,
  sameCauseAs: null,
  states: [state('sea', fits('rare', 'rare', 'occasional'), { fact: 'burial', any: ['marine'] })],
  rest: { says: 'it lay on land', fits: fits('typical', 'typical', 'typical') },
  failures: [],
}

export const skin: Matter = {
  id: 'skin',
  asks: 'What is the white skin?',
  about: [{ field: 'evidence', value: 'white-metal-sheen' }],
  where: [{ fact: 'material', none: ['gold'] }],
  rivals: [
    {
      ...rival('tin', prior('usual')),
      settled: { part: { role: 'coating', material: 'tin' }, seen: [], tests: [] },
    },
    {
      ...rival('silver', prior('common', { fact: 'material', any: ['copper'] }), prior('seldom')),
      settled: { part: { role: 'coating', material: 'silver' }, seen: [], tests: [] },
    },
    rival('high-tin', prior('common', { fact: 'material', any: ['bronze'] }), prior('exceptional')),
  ],
  groups: [edge, elements, ground],
  contested: null,
}

const method = (id: string, more: Partial<Method>): Method => ({
  id,
  label: id,
  answers: '',
  cannot: '',
  kind: 'analysis',
  sampling: false,
  harm: 'none',
  leave: false,
  minutes: { setUp: 30, each: 10, figures: [], known: 'common-practice' },
  who: 'A trained operator',
  order: 10,
  cautions: [],
  sources: [],
  ...more,
})

export const methods: readonly Method[] = [
  method('xrf', {}),
  method('x-radiography', { kind: 'imaging', order: 20 }),
  method('sem-eds', { sampling: true, harm: 'micro-sample', order: 60 }),
  method('luminescence', { kind: 'dating', sampling: true, order: 1 }),
]

export const baseOf = (...matters: readonly Matter[]): EvidenceBase => ({
  matters: Object.fromEntries(matters.map((matter) => [matter.id, matter])),
  questions: {
    edge: {
      id: 'edge',
      asks: 'How does it end?',
      tell: 'Tilt it.',
      why: 'A foil lifts.',
      by: 'eye',
      answers: ['lifting', 'worn'].map((id) => ({ id, label: id, tell: id })),
    },
  },
  elements: {},
  matrices: {},
  methods: Object.fromEntries(methods.map((one) => [one.id, one])),
})

export const base = baseOf(skin)

/** What somebody saw of one part with a white skin, and what else is recorded. */
export const facts = (of: Readonly<Record<string, Fact>> = {}, find: Facts = {}): RecordFacts => ({
  find,
  components: [
    {
      name: 'body',
      facts: { material: stated('copper-alloy'), evidence: stated('white-metal-sheen'), ...of },
    },
  ],
})
