import { civilText } from './civil.ts'
import { turnRound, type OrderSeen } from './date-order.ts'
import type { DateOrder, LogAnswers, LogQuestion } from './log-answers.ts'
import type { LogForm } from './log-form.ts'
import { standing, stepsOf, usualStep, type Steps } from './order-evidence.ts'
import type { ProblemBook } from './problem-book.ts'
import { dateOrders } from './stamp-text.ts'
import { lineOf, numbersOnly, shortYear, type Store } from './store.ts'

export interface OrderDecided {
  readonly dates: LogForm['dates']
  readonly ask: LogQuestion | null
  /** Readings whose date no longer means a day. */
  readonly lost: number
}

/** Orders that explain as many dates as the best one does. */
function candidates(seen: OrderSeen): readonly DateOrder[] {
  const least = Math.min(...dateOrders.map((order) => seen.misses[order]))
  return dateOrders.filter(
    (order) => seen.misses[order] === least && (order !== 'year-first' || seen.yearMayLead),
  )
}

/** The stamps of a store under another order, apart from it. */
function under(store: Store, from: DateOrder, to: DateOrder): Float64Array {
  const civilMs = store.civilMs.slice(0, store.count)
  if (from !== to) turnRound({ ...store, civilMs, deferred: [] }, from, to)
  return civilMs
}

function byReadings(store: Store, now: DateOrder, open: readonly DateOrder[]): readonly DateOrder[] {
  const usual = usualStep(store.civilMs, store.count)
  const steps = new Map<DateOrder, Steps>()
  for (const order of open) {
    const civilMs = under(store, now, order)
    steps.set(order, stepsOf(civilMs, store.count, usual))
  }
  return standing(steps, usual)
}

function examples(store: Store): LogQuestion['examples'] {
  const places = [0, Math.floor(store.count / 2), store.count - 1]
  return [...new Set(places)]
    .filter((place) => place >= 0 && !Number.isNaN(store.civilMs[place]!))
    .map((place) => ({ line: lineOf(store, place), text: civilText(store.civilMs[place]!) }))
}

const isNumbers = (store: Store) => store.dateForms.values.some((form) => (form & numbersOnly) !== 0)

function ordered(stores: readonly Store[], seen: OrderSeen, answers: LogAnswers) {
  const open = candidates(seen)
  const turn = (to: DateOrder) => {
    for (const store of stores) turnRound(store, seen.order, to)
    seen.order = to
  }
  if (open.length === 1) {
    if (open[0] !== seen.order) turn(open[0]!)
    return { how: 'day-above-12', because: null } as const
  }
  if (answers.dateOrder && open.includes(answers.dateOrder)) {
    if (seen.order !== answers.dateOrder) turn(answers.dateOrder)
    return { how: 'answered', because: null } as const
  }
  const main = stores.filter(isNumbers).reduce((a, b) => (b.count > a.count ? b : a))
  const left = byReadings(main, seen.order, open)
  if (left.length > 0 && !left.includes(seen.order)) turn(left[0]!)
  if (left.length === 1) return { how: 'order-of-readings', because: null } as const
  return { how: 'assumed', because: 'both-orders-fit', open: left } as const
}

function tellShortYears(stores: readonly Store[], book: ProblemBook): void {
  const short = stores.find((store) => store.dateForms.values.some((form) => (form & shortYear) !== 0))
  if (short) {
    const at = short.dateForms.values.findIndex((form) => (form & shortYear) !== 0)
    const place = short.dateForms.starts[at]!
    book.note('year-of-two-digits', lineOf(short, place), civilText(short.civilMs[place]!))
  }
}

/** More than one date in ten against the best order is no slip of the pen. */
const slips = 0.1

/** Settles which number of a date is the day, once all of them were seen. */
export function settleOrder(
  stores: readonly Store[],
  seen: OrderSeen,
  otherwise: LogForm['dates'],
  answers: LogAnswers,
  book: ProblemBook,
): OrderDecided {
  if (!stores.some(isNumbers)) {
    tellShortYears(stores, book)
    return { dates: otherwise, ask: null, lost: 0 }
  }
  const decided = ordered(stores, seen, answers)
  tellShortYears(stores, book)
  let lost = 0
  for (const store of stores) {
    for (const { place, numbers } of store.deferred) {
      book.note('date-orders-mixed', lineOf(store, place), numbers.join('/'))
      lost++
    }
  }
  const contradicted = seen.misses[seen.order] > seen.dates * slips && answers.dateOrder === null
  const main = stores.filter(isNumbers).reduce((a, b) => (b.count > a.count ? b : a))
  const ask: LogQuestion | null =
    decided.because === null && !contradicted
      ? null
      : {
          about: 'date-order',
          answers: contradicted
            ? ['day-first', 'month-first']
            : (decided.open ?? ['day-first', 'month-first']),
          proposed: seen.order,
          because: contradicted ? 'stamps-contradict' : 'both-orders-fit',
          examples: examples(main),
        }
  return { dates: { order: seen.order, how: decided.how }, ask, lost }
}
