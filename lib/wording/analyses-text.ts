import type { LeftOut, WhyLeftOut } from '../evidence/assemblage.ts'
import type { ChosenAsk, Further, MethodBatch } from '../evidence/assemblage-batches.ts'
import type { HoursFlaw } from '../evidence/assemblage-hours.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { countWords, listWords } from './list.ts'

/** How far an answer is expected to settle what is asked, from its share of what is open. */
export const settlesSteps = [
  { from: 0.75, says: 'settles nearly all of the question' },
  { from: 0.5, says: 'settles most of the question' },
  { from: 0.25, says: 'settles a good part of the question' },
  { from: 0, says: 'settles a little of the question' },
] as const

type Told = Pick<ChosenAsk, 'parts'>

/** Over all parts that are asked about: what they are expected to settle, of what is open. */
export function settlesWords({ parts }: Told): string {
  const open = parts.reduce((sum, { openBits }) => sum + openBits, 0)
  const share = open > 0 ? parts.reduce((sum, { aloneBits }) => sum + aloneBits, 0) / open : 0
  return settlesSteps.find(({ from }) => share >= from)?.says ?? settlesSteps.at(-1)!.says
}

/** The questions of an ask, each once. */
export const questionsWords = ({ parts }: Told): string =>
  [...new Set(parts.flatMap(({ matters }) => matters.map(({ asks }) => asks)))].join(' ')

/** Which parts of the find it is about; nothing where the find has only one. */
export const partsWords = ({ parts }: Told, of: number): string =>
  of > 1 ? listWords(parts.map(({ component }) => component)) : ''

/** `5 h 55 min`, `6 h`, `40 min`. */
export function hoursWords(hours: number): string {
  const minutes = Math.round(hours * 60)
  const [whole, rest] = [Math.floor(minutes / 60), minutes % 60]
  if (whole === 0) return `${rest} min`
  return rest === 0 ? `${whole.toLocaleString('en-GB')} h` : `${whole.toLocaleString('en-GB')} h ${rest} min`
}

/** What is given and what is used of it: `17 finds in 5 h 55 min of 6 h given`. */
export function batchWords({ asks, hours, places, hoursUsed }: MethodBatch): string {
  const finds = new Set(asks.map(({ find }) => find.id)).size
  const parts = asks.length > finds ? `, ${countWords(asks.length, 'part')} of them,` : ''
  const count = `${countWords(finds, 'find')}${parts}`
  return hours === null
    ? `${count} on ${countWords(places, 'place')} given`
    : `${count} in ${hoursWords(hoursUsed)} of ${hoursWords(hours)} given`
}

const namedAtMost = 4

/** `TW-0412, TW-0077 and 3 more`. */
export function someWords(names: readonly string[]): string {
  const each = [...new Set(names)]
  return each.length <= namedAtMost + 1
    ? listWords(each)
    : `${each.slice(0, namedAtMost).join(', ')} and ${each.length - namedAtMost} more`
}

type Naming = (find: string) => string

const ordinals = ['second', 'third', 'fourth', 'fifth']

/** "Another hour of X-ray fluorescence would settle most of the question for TW-0412 and TW-0077." */
export function furtherWords(
  { label }: { readonly label: string },
  batch: Pick<MethodBatch, 'oneMoreAtHours' | 'hours' | 'candidates' | 'asks'>,
  further: Further,
  nameOf: Naming,
  before = 0,
): string {
  const unit = further.hours === null ? 'place' : 'hour'
  const more = before === 0 ? `Another ${unit}` : `A ${ordinals[before - 1] ?? 'further'} further ${unit}`
  if (further.adds.length === 0) {
    if (batch.candidates === 0) return `${label} could tell nothing of what stands open on these finds.`
    if (batch.hours !== null && further.hours !== null && further.hours < batch.oneMoreAtHours - 1e-6)
      return `${more} is not enough for one more; ${hoursWords(batch.oneMoreAtHours)} in all would be.`
    return further.weightedBits > 1e-9
      ? `${more} would let the other methods take other finds.`
      : `${more} of ${label} would buy nothing more.`
  }
  const steps = Map.groupBy(further.adds, settlesWords)
  const said = settlesSteps.flatMap(({ says }) => {
    const adds = steps.get(says)
    return adds === undefined ? [] : [{ says, finds: someWords(adds.map(({ find }) => nameOf(find.id))) }]
  })
  const parts = said.map(({ says, finds }, at) => {
    const much = says.replace('settles ', '')
    return `${at === 0 ? much : much.replace('the question', 'it')} for ${finds}`
  })
  return `${more} of ${label} would settle ${parts.join('; ')}.`
}

export const leftOutWords: Readonly<Record<WhyLeftOut, string>> = {
  stop: 'A stop stands on it: it stays where it is, and nothing is asked of it, until the stop is cleared.',
  'dating-first':
    'Its sample for luminescence dating comes first, since rays would spoil the date. Note the sample with the find, as “luminescence S12”, and it is asked for.',
  samples: 'It takes samples. Nothing is sent there unless a conservator agrees to samples.',
}

/** What was left out and why, finds with the same reason together. */
export function leftOutLines(
  leftOut: readonly LeftOut[],
  knowledge: Knowledge,
  nameOf: Naming,
): readonly { readonly who: string; readonly finds: readonly string[]; readonly why: string }[] {
  const groups = Map.groupBy(leftOut, ({ method, because }) => JSON.stringify([because, method]))
  return [...groups.values()].map((group) => {
    const { method, because } = group[0]!
    const finds = group.flatMap(({ find }) => (find === null ? [] : [nameOf(find.id)])).toSorted()
    const label = method === null ? '' : (knowledge.methods[method]?.label ?? method)
    const who = [label, ...(finds.length === 0 ? [] : [listWords(finds)])]
      .filter((part) => part !== '')
      .join(', ')
    return { who, finds, why: leftOutWords[because] }
  })
}

/** What is wrong with the hours, and what to do. */
export function hoursFlawWords(flaw: HoursFlaw, knowledge: Knowledge): string {
  const label = (method: string) => knowledge.methods[method]?.label ?? method
  switch (flaw.flaw) {
    case 'nothing-given':
      return 'No hours are given. Give them for at least one method, as xrf=6,x-radiography=10.'
    case 'no-method': {
      const meant = flaw.meant.length === 0 ? '' : ` Did you mean ${listWords(flaw.meant, 'or')}?`
      const all = Object.keys(knowledge.methods).toSorted()
      return `There is no method “${flaw.given}”.${meant} There are: ${all.join(', ')}.`
    }
    case 'no-number':
      return flaw.given === ''
        ? `${label(flaw.method)}: the hours are missing. Give a number of hours, as 6 or 2.5, or of places, as “4 places”.`
        : `${label(flaw.method)}: “${flaw.given}” is no number of hours. Give one, as 6 or 2.5, or a number of places, as “4 places”.`
    case 'too-many':
      return `${label(flaw.method)}: “${flaw.given}” is more than there can be. Give the hours there are.`
    case 'twice':
      return `${label(flaw.method)} is given twice. Give it once.`
  }
}

/** How near the choice is to the best there could be. */
export function nearnessWords(worth: number, bound: number, proved: boolean): string {
  if (proved || bound <= worth + 1e-9) return 'No other choice would settle more.'
  const percent = (100 * (bound - worth)) / bound
  const most =
    percent < 0.1 ? 'a thousandth part' : `${(Math.ceil(percent * 10) / 10).toLocaleString('en-GB')} %`
  return `No other choice would settle more than ${most} more.`
}

/** What the list is made of. */
export const consideredWords = (finds: number, open: number, candidates: number): string =>
  `${countWords(finds, 'find')}; on ${open.toLocaleString('en-GB')} something stands open, and these methods could tell something of ${candidates.toLocaleString('en-GB')}.`
