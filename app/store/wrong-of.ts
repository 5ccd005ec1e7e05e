import { daysBetween, type IsoDate } from '../../lib/base/calendar.ts'
import type { BoxLine } from '../../lib/services/show-store.ts'
import { wrongOrder, type Wrong } from '../../lib/wording/store-wrong.ts'

interface Asked {
  readonly today: IsoDate
  /** How long a box that needs a humidity may stay unread before that is said [d]. */
  readonly roundEveryDays: number
  /** What must be known before anybody goes to it: stops of the finds in it. */
  readonly stops?: readonly string[]
}

/** What is wrong with a box, most pressing first. */
export function wrongOf(line: BoxLine, asked: Asked): readonly Wrong[] {
  return [
    ...[...(asked.stops ?? []), ...line.stops.map(({ text }) => text)].map(
      (says) => ({ code: 'stop', says }) as const,
    ),
    ...humidityWrong(line),
    ...lidWrong(line),
    ...contentsWrong(line),
    ...gelWrong(line, asked.today),
    ...unread(line, asked),
  ].toSorted((a, b) => wrongOrder.indexOf(a.code) - wrongOrder.indexOf(b.code))
}

function humidityWrong({ newest, needs }: BoxLine): readonly Wrong[] {
  if (newest === null || needs === null) return []
  const { lowRhPercent: low, highRhPercent: high } = newest
  if (high > needs.max && needs.max < 100)
    return [{ code: 'above', seen: newest, limitRhPercent: needs.max, certain: low > needs.max }]
  if (low < needs.min && needs.min > 0)
    return [{ code: 'below', seen: newest, limitRhPercent: needs.min, certain: high < needs.min }]
  return []
}

function lidWrong({ lid, outlook }: BoxLine): readonly Wrong[] {
  if (lid?.state === 'not-seated') return [{ code: 'lid-not-seated', since: lid.on }]
  const since = outlook?.departedSince ?? null
  return since === null ? [] : [{ code: 'departed', since }]
}

/** Bands that only touch are no band: no box holds a single figure. */
const touches = (needs: BoxLine['needs']) => needs !== null && needs.min >= needs.max

function contentsWrong({ disagree, needs, misfits, tub }: BoxLine): readonly Wrong[] {
  const wrong: Wrong[] = []
  if (tub?.pastItsDays === true && tub.daysHeld !== null)
    wrong.push({ code: 'tub-past', daysHeld: tub.daysHeld, daysAllowed: tub.daysAllowed })
  if (tub?.waterDue === true) wrong.push({ code: 'water-due', changedOn: tub.waterChangedOn })
  if (disagree || touches(needs)) wrong.push({ code: 'disagree' })
  if (misfits.length > 0) wrong.push({ code: 'misfits', finds: misfits.length })
  return wrong
}

function gelWrong({ outlook }: BoxLine, today: IsoDate): readonly Wrong[] {
  const renewal = outlook?.renewOn ?? null
  if (renewal === null) return []
  const { early, late } = renewal
  if (late !== null && late <= today) return [{ code: 'past-date', early, late }]
  return early !== null && early <= today ? [{ code: 'perhaps-due', late }] : []
}

/** Only where a humidity is asked for does it matter that nobody has looked. */
function unread(
  { needs, unreadSince, tub, finds }: BoxLine,
  { today, roundEveryDays }: Asked,
): readonly Wrong[] {
  if (tub !== null || finds === 0 || needs === null || (needs.min <= 0 && needs.max >= 100)) return []
  if (unreadSince !== null && daysBetween(unreadSince, today) <= roundEveryDays) return []
  return [{ code: 'unread', since: unreadSince }]
}

export const stopsIn = (wrong: readonly Wrong[]): readonly string[] =>
  wrong.flatMap((one) => (one.code === 'stop' ? [one.says] : []))

/** What a person is sent to today. Nobody is sent to a stop; that nobody has looked is a matter for the walk. */
export const presses = ({ code }: Wrong): boolean =>
  code !== 'stop' && code !== 'unread' && code !== 'perhaps-due'

/** Boxes with the most pressing first; of those that press alike the worse, then in shelf order. */
export function mostPressingFirst<Line extends { readonly wrong: readonly Wrong[] }>(
  lines: readonly Line[],
): readonly Line[] {
  const first = ({ wrong }: Line) => wrong.find(({ code }) => code !== 'stop')
  const rank = (line: Line) => {
    const worst = first(line)
    return worst === undefined ? wrongOrder.length : wrongOrder.indexOf(worst.code)
  }
  const worse = (line: Line) => {
    const worst = first(line)
    return worst === undefined ? 0 : howMuch(worst)
  }
  return lines.toSorted((a, b) => rank(a) - rank(b) || worse(b) - worse(a))
}

/** How bad it is among its like: beyond by how much, for how long, how many. */
function howMuch(wrong: Wrong): number {
  switch (wrong.code) {
    case 'above':
      return (wrong.certain ? 100 : 0) + wrong.seen.lowRhPercent - wrong.limitRhPercent
    case 'below':
      return (wrong.certain ? 100 : 0) + wrong.limitRhPercent - wrong.seen.highRhPercent
    case 'tub-past':
      return wrong.daysHeld - wrong.daysAllowed
    case 'misfits':
      return wrong.finds
    case 'past-date':
      return -Date.parse(wrong.late)
    case 'lid-not-seated':
    case 'departed':
      return -Date.parse(wrong.since)
    default:
      return 0
  }
}
