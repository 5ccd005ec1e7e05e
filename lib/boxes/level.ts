import { sortKey } from '../base/sort-key.ts'
import type { LevelSearch } from './level-better.ts'
import { doneBy, hoursIn, levelTurns, weekOn, type Turn } from './level-turns.ts'
import type {
  LevelledPlan,
  Means,
  Missing,
  NotInTime,
  PlannedRenewal,
  RenewalDue,
  WeekOfWork,
} from './level-work.ts'
import { grams, stockOf, stockThrough } from './stock.ts'

/**
 * Renewals levelled over weeks: none beyond the hours, the oven or the gel of a week, as few late as can be found, and no
 * earlier than need be, for gel that is renewed early is gel used up for nothing. What comes late is named with what is missing.
 */
export function levelRenewals(dues: readonly RenewalDue[], means: Means, search: LevelSearch): LevelledPlan {
  const turns = levelTurns(dues, means, search)
  return { weeks: weeksOf(turns, means), notInTime: notInTime(turns, dues, means, search) }
}

const shelfKey = ({ room, shelf, box }: RenewalDue): string =>
  [room, shelf, box].map((word) => sortKey(word)).join(' ')

function byShelf(a: Pick<Turn, 'due'>, b: Pick<Turn, 'due'>): number {
  const [one, other] = [shelfKey(a.due), shelfKey(b.due)]
  return one < other ? -1 : Number(one > other)
}

function weeksOf(turns: readonly Turn[], means: Means): readonly WeekOfWork[] {
  const perWeek = Map.groupBy(turns, ({ week }) => week)
  const used = Array.from({ length: means.weeks }, (_, week) =>
    (perWeek.get(week) ?? []).reduce((sum, { due }) => sum + grams(due.gelKg), 0),
  )
  const stock = stockThrough(used, stockOf(means))
  if (stock === null) throw new Error('The levelled plan uses more gel than there is.')
  return stock.map(({ usedG, driedG, dryG, spentG }, week): WeekOfWork => {
    const own = (perWeek.get(week) ?? []).toSorted(byShelf)
    const batches =
      means.oven === null ? 0 : Math.max(0, Math.ceil(driedG / grams(means.oven.kgPerBatch) - 1e-9))
    return {
      on: weekOn(means, week),
      renewals: own.map((turn) => planned(turn, week, means)),
      minutes: own.length * means.minutesPerBox,
      hoursThere: hoursIn(means, week),
      gelKg: usedG / 1000,
      batches,
      driedKg: driedG / 1000,
      ovenHours: batches * (means.oven?.hoursPerBatch ?? 0),
      dryKg: dryG / 1000,
      spentKg: spentG / 1000,
    }
  })
}

function planned(turn: Turn, week: number, means: Means): PlannedRenewal {
  const { due, turn: number, safeOn, deadline } = turn
  return { due, turn: number, safeOn, week, by: doneBy(means, turn), late: week > deadline }
}

const isLate = ({ week, deadline }: Turn): boolean => week === null || week > deadline
const turnKey = ({ due, turn }: Turn): string => `${turn} ${due.box}`

/** What is tried in turn: had there been more of this, would it have come in time? */
const tried: readonly (readonly Missing[])[] = [
  ['hours'],
  ['oven'],
  ['gel'],
  ['hours', 'oven'],
  ['hours', 'gel'],
]

function notInTime(
  turns: readonly Turn[],
  dues: readonly RenewalDue[],
  means: Means,
  search: LevelSearch,
): readonly NotInTime[] {
  const late = turns.filter(isLate)
  // The week in which it would have come with more of something; what was overdue before is at its best in the first.
  const wanting = late.filter(({ week, deadline }) => week === null || deadline >= 0 || week > 0)
  const better = new Map<string, readonly Missing[]>()
  for (const more of tried) {
    const open = wanting.filter((turn) => !better.has(turnKey(turn)))
    if (open.length === 0) break
    const then = new Map(levelTurns(dues, withMore(means, more), search).map((turn) => [turnKey(turn), turn]))
    for (const turn of open) {
      const other = then.get(turnKey(turn))
      if (other === undefined || !isLate(other) || (other.deadline < 0 && other.week === 0))
        better.set(turnKey(turn), more)
    }
  }
  return late.toSorted(byShelf).map((turn) => ({
    due: turn.due,
    turn: turn.turn,
    safeOn: turn.safeOn,
    week: turn.week,
    overdue: turn.deadline < 0,
    missing: wanting.includes(turn) ? (better.get(turnKey(turn)) ?? (['hours', 'oven', 'gel'] as const)) : [],
  }))
}

function withMore(means: Means, more: readonly Missing[]): Means {
  const hoursPerWeek = more.includes('hours') ? means.hoursPerWeek.map(() => Infinity) : means.hoursPerWeek
  const oven = more.includes('oven')
    ? { kgPerBatch: means.oven?.kgPerBatch ?? 1, batchesPerWeek: 1e6, hoursPerBatch: 0 }
    : means.oven
  return { ...means, hoursPerWeek, oven, dryKg: more.includes('gel') ? Infinity : means.dryKg }
}
