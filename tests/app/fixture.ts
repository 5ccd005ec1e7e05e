import type { Caution, Statement, Storage } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'

/** A knowledge just large enough to draw with; its figures and works are invented. */
export const knowledge: Knowledge = {
  hash: 'sha256-fixture',
  works: {
    'example-1999': {
      id: 'example-1999',
      authors: ['Ada Example', 'Bo Sample'],
      year: 1999,
      title: 'Keeping things dry',
      known: 'read',
    },
  },
  figures: {
    'example-ceiling': {
      id: 'example-ceiling',
      says: 'The highest humidity of the example',
      quantity: 'relative-humidity',
      value: 99,
      asPrinted: '99',
      unit: 'percent',
      validFor: 'examples',
      source: { work: 'example-1999', place: 'p. 3' },
      known: 'memory',
      certainty: 'supported',
    },
  },
  decisions: [
    {
      id: 'storage-humidity',
      asks: 'How dry?',
      each: 'component',
      policy: 'strictest',
      fills: 'storage.rh',
      answers: [],
      absent: 'protective',
      calledForBy: [],
      facts: ['core'],
      notCovered: [],
      rules: [
        {
          id: 'iron-active',
          title: 'Iron that may corrode is kept dry',
          when: [],
          then: { kind: 'band', to: 99 },
          overrides: [],
          strength: 'should',
          certainty: 'supported',
          level: 'limit',
          call: null,
          order: 1,
          text: '',
          because: '',
          caution: null,
          sources: [],
          figures: [],
          contested: null,
          retired: null,
          examples: [],
        },
      ],
    },
  ],
  methods: {},
  contested: {},
  tasks: {},
  isotherms: {},
  matters: {},
  questions: {},
  elements: {},
  matrices: {},
  vocabulary: {
    fields: {
      core: {
        id: 'core',
        label: 'Core',
        means: '',
        tell: 'A radiograph shows it.',
        asks: 'Is there metal left inside?',
        lookable: true,
        alsoCalled: [],
        values: [{ id: 'solid', label: 'solid metal', means: '', tell: '' }],
      },
      seen: {
        id: 'seen',
        label: 'Seen',
        means: '',
        tell: 'Look at all sides.',
        asks: 'What do you see?',
        lookable: true,
        alsoCalled: [],
        values: [
          { id: 'bright-orange-spots', label: 'Bright orange spots', means: '', tell: 'Fresh rust in dots.' },
          { id: 'pale-green-powder', label: 'Pale green powder', means: '', tell: '' },
        ],
      },
    },
    codes: { ammunition: { id: 'ammunition', label: 'May be ammunition', means: '', tell: '' } },
    units: { percent: { id: 'percent', label: 'percent', printed: '%' } },
    textWords: [],
    contacts: {},
  },
}

export const statement: Statement = {
  code: 'dry-box',
  text: 'Keep it in the driest box.',
  strength: 'should',
  certainty: 'supported',
  rule: 'storage-humidity/iron-active',
  because: 'Salts take up water.',
  components: ['blade'],
  precautionary: true,
  sources: [{ work: 'example-1999', place: 'p. 3', known: 'read' }],
  facts: [{ fact: 'core', component: 'blade', said: 'absent', value: '' }],
  figures: ['example-ceiling'],
  also: [],
}

export const stop: Caution = {
  ...statement,
  code: 'ammunition',
  text: 'Leave it where it is and keep everybody away.',
  precautionary: false,
  level: 'stop',
  who: 'Police: desk, 000',
  call: 'police',
}

export const storage: Storage = {
  rhPercent: { min: 0, max: 15 },
  interim: null,
  act: [],
  light: 'ordinary',
  air: [],
  decidedBy: 'rule',
  precautionary: false,
  temperatureC: { min: null, max: null },
  conflict: null,
  keep: 'dry',
  basis: [],
  components: [
    { component: 'blade', limit: { min: 0, max: 15 }, preference: null, basis: [] },
    { component: 'handle', limit: { min: 0, max: 100 }, preference: { min: 40, max: 55 }, basis: [] },
  ],
}

export const quarrel: Storage = {
  ...storage,
  rhPercent: null,
  decidedBy: 'conservator',
  conflict: { between: ['blade', 'handle'], gapPercent: 20, waysOut: [] },
  components: [
    { component: 'blade', limit: { min: 0, max: 15 }, preference: null, basis: [] },
    { component: 'handle', limit: { min: 35, max: 60 }, preference: null, basis: [] },
  ],
}
