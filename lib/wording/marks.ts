import type { Urgency } from '../engine/plan.ts'
import type { Certainty, Known, Strength, Who } from '../knowledge/knowledge.ts'

/** The short words that stand beside advice: how soon, how strong, how sure, how known, by whom. */
export const urgencyWords: Readonly<Record<Urgency, { readonly label: string; readonly means: string }>> = {
  now: { label: 'Now', means: 'Stop what you are doing and see to this first.' },
  hours: { label: 'Hours', means: 'See to it before the end of the day.' },
  days: { label: 'Days', means: 'See to it within days.' },
  weeks: { label: 'Weeks', means: 'See to it within weeks.' },
  planned: { label: 'Planned', means: 'Give it a place in the programme.' },
  routine: { label: 'Routine', means: 'Nothing presses; look at it on the usual round.' },
}

export const urgencies = [
  'now',
  'hours',
  'days',
  'weeks',
  'planned',
  'routine',
] as const satisfies readonly Urgency[]

export const strengthWords: Readonly<Record<Strength, string>> = {
  must: 'Must',
  should: 'Should',
  consider: 'Consider',
}

export const certaintyWords: Readonly<Record<Certainty, string>> = {
  established: 'well established',
  supported: 'supported by published work',
  contested: 'contested',
  opinion: 'an opinion',
}

export const knownWords: Readonly<Record<Known, { readonly label: string; readonly means: string }>> = {
  read: { label: 'read', means: 'The passage was read in the work itself.' },
  'second-hand': { label: 'second-hand', means: 'Read in another work that quotes it.' },
  memory: {
    label: 'from memory',
    means: 'Remembered, not yet looked up. It may hold you back, never let you go ahead.',
  },
  'common-practice': {
    label: 'common practice',
    means: 'The trade works this way; nobody printed it for us.',
  },
}

export const whoWords: Readonly<Record<Who, string>> = {
  assistant: 'finds assistant',
  conservator: 'conservator',
  'store-manager': 'store manager',
}
