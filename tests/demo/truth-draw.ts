import { addDays, type IsoDate } from '../../lib/base/calendar.ts'
import { drawFrom, type Drawn } from '../simulated/draw-from.ts'
import { raisedBy, type Raised } from '../../lib/evidence/raised.ts'
import type { Group } from '../../lib/knowledge/evidence.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { methodFacts } from '../../lib/knowledge/method-facts.ts'
import { factsOf } from '../../lib/record/facts.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import type { Chance } from './chance.ts'
import { today } from './find.ts'
import { testsShowing } from './truth-tests.ts'
import { withTruth, type Truth } from './truths.ts'

export interface Wanted {
  readonly matter: string
  readonly finds: number
  /** Only such truths, and in so many of them such an answer: what a place has of its own. */
  readonly surprise?: {
    readonly truth: string
    readonly group: string
    readonly state: string
    readonly finds: number
  }
}

export const raisedIn = (record: ConditionRecord, knowledge: Knowledge): readonly Raised[] =>
  raisedBy(factsOf(record, knowledge.vocabulary.textWords, today), knowledge)

const tries = 4000

/** A draw that agrees with all that the record says already. */
function drawn({ matter, joint, lookup }: Raised, knowledge: Knowledge, { next }: Chance, truth?: string) {
  for (let attempt = 0; attempt < tries; attempt += 1) {
    const one = drawFrom(matter, knowledge, lookup, next)
    const agrees = joint.groups.every(({ possible }, at) => possible.includes(one.states[at]!))
    if (agrees && (truth === undefined || matter.rivals[one.rival]!.id === truth)) return one
  }
  return null
}

const stateOf = (group: Group, state: number) => group.states[state]?.id ?? 'none'

/** What somebody sees by eye: most questions answered, now and then one in vain; what is to surprise is always seen. */
function seenByEye(
  { matter }: Raised,
  { states }: Drawn,
  { happens }: Chance,
  sure: string | undefined,
): readonly string[] {
  return matter.groups.flatMap((group, at) => {
    const { id, by, question } = group
    if (by !== 'eye' || question === null || (!happens(0.8) && id !== sure)) return []
    const inVain = happens(0.08) && id !== sure
    return [`${question}:${inVain ? 'unknown' : stateOf(group, states[at]!)}`]
  })
}

const methodsOf = ({ matter }: Raised): readonly string[] => [
  ...new Set(matter.groups.map(({ by }) => by).filter((by) => by !== 'eye' && by !== 'record')),
]

function measured(raised: Raised, one: Drawn, method: string, luck: Chance) {
  const groups = raised.matter.groups.flatMap((group, at) =>
    group.by === method ? [{ group, state: one.states[at]! }] : [],
  )
  const looked = groups.flatMap(({ group, state }) =>
    group.question === null ? [] : [`${group.question}:${stateOf(group, state)}`],
  )
  const read = groups.filter(({ group }) => group.question === null)
  const tests = read.length === 0 || !methodFacts[method] ? [] : testsShowing(method, read, raised, luck)
  return tests === null ? null : { looked, tests }
}

/** Whether the record, read again, shows of this matter just what was drawn, and of what was there before no less. */
function shows(record: ConditionRecord, raised: Raised, one: Drawn, knowledge: Knowledge): boolean {
  const again = raisedIn(record, knowledge).find(
    ({ matter, component }) => matter === raised.matter && component === raised.component,
  )
  return again?.joint.groups.every(({ possible }, at) => possible.includes(one.states[at]!)) === true
}

const people = ['Wharf laboratory', 'Wharf laboratory', 'bench', 'visiting metallurgist'] as const

function foundOut(record: ConditionRecord, method: string, number: number, luck: Chance): Truth['found'] {
  const first = record.recorded_on as IsoDate
  const on = addDays(first, luck.whole(15, 160))
  const latest = addDays(today, -1 - (number % 9))
  const by = luck.pick(people)
  return {
    method,
    on: on > latest ? latest : on,
    by,
    reference: by === 'bench' ? '' : `TW-L-${String(number).padStart(3, '0')}`,
    words: '',
  }
}

/** One truth for one find; null where what was drawn cannot be written into its record. */
export function truthOf(
  record: ConditionRecord,
  raised: Raised,
  wanted: Wanted,
  { number, surprising, finds }: { number: number; surprising: boolean; finds: boolean },
  knowledge: Knowledge,
  luck: Chance,
): Truth | null {
  const { surprise } = wanted
  const fresh = drawn(raised, knowledge, luck, surprise?.truth)
  if (fresh === null) return null
  const { matter, component } = raised
  const states = matter.groups.map(({ id, states: all }, at) =>
    surprise && surprising && id === surprise.group
      ? all.findIndex((state) => state.id === surprise.state)
      : fresh.states[at]!,
  )
  const one = { ...fresh, states }
  const methods = methodsOf(raised).toSorted(() => luck.next() - 0.5)
  const used = methods.slice(0, luck.whole(1, 2))
  const results = used.map((method) => measured(raised, one, method, luck))
  if (results.includes(null)) return null
  const truth: Truth = {
    find: record.find_number,
    component,
    matter: matter.id,
    truth: matter.rivals[one.rival]!.id,
    looked: [
      ...seenByEye(raised, one, luck, surprise?.group),
      ...results.flatMap((result) => result!.looked),
    ],
    tests: results.flatMap((result) => result!.tests),
    found: finds ? foundOut(record, luck.pick(methods), number, luck) : null,
  }
  return shows(withTruth(record, truth), raised, one, knowledge) ? truth : null
}
