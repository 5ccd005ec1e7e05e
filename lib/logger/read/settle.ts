import type { Channel } from '../series.ts'
import { checkClock, tellFuture, type StampSpan } from './clock-range.ts'
import { channelsFrom, partsOf } from './join-channels.ts'
import type { LogQuestion } from './log-answers.ts'
import type { LogForm } from './log-form.ts'
import { decideMoments } from './moments.ts'
import { settleOrder } from './order-settle.ts'
import { readStamp } from './stamp-text.ts'
import type { Store } from './store.ts'
import type { Survey } from './survey.ts'
import { inTimeOrder } from './time-order.ts'
import { checkValues } from './value-check.ts'
import { decideUnits, type UnitsDecided } from './value-units.ts'
import type { WalkState } from './walk-state.ts'

export interface Settled {
  readonly channels: readonly Channel[]
  readonly asks: readonly LogQuestion[]
  readonly dates: LogForm['dates']
  readonly timeZone: LogForm['timeZone']
  readonly units: UnitsDecided
  readonly rows: {
    readonly read: number
    readonly empty: number
    readonly unreadable: number
    readonly repeated: number
    readonly disagreeing: number
    readonly backward: number
  }
}

/** How dates are written where their numbers leave no choice. */
function plainDates(survey: Survey): LogForm['dates'] {
  const { stamp } = survey.layout
  if (stamp.kind === 'counted') return { order: null, how: 'counted' }
  const column = stamp.kind === 'split' ? stamp.date : stamp.column
  const date = readStamp(survey.rows[0]?.cells[column] ?? '')?.date
  return date?.kind === 'day' && date.written === 'month-named'
    ? { order: null, how: 'month-named' }
    : { order: 'year-first', how: 'year-stands-first' }
}

function unitsBehind(survey: Survey) {
  const behind = (quantity: string) =>
    survey.layout.values
      .filter((value) => value.quantity === quantity)
      .some(({ column }) => survey.rows.some((row) => (row.seen[column]?.unit ?? null) !== null))
  return { temperature: behind('temperature'), humidity: behind('humidity') }
}

/** What can only be settled once every line was seen: units, date order, time zone, order of time, which sensor is which. */
export function settle(state: WalkState, survey: Survey): Settled {
  const { book, answers } = state
  const stores = state.tables.flatMap((table) => [...table.stores.values()]).filter(({ count }) => count > 0)
  const order = settleOrder(stores, state.order, plainDates(survey), answers, book)
  const units = decideUnits(stores, answers, unitsBehind(survey))
  const spans = new Map<Store, StampSpan | null>()
  let empty = 0
  let unreadable = state.unreadable + order.lost
  for (const store of stores) {
    empty += checkValues(store, units, book)
    const checked = checkClock(store, book)
    unreadable += checked.dropped
    spans.set(store, checked.span)
  }
  const moments = decideMoments(stores, answers, survey.zoneHint, book)
  const sums = { repeated: 0, disagreeing: 0, backward: 0 }
  const ordered = new Map<Store, ReturnType<typeof inTimeOrder>>()
  for (const store of stores) {
    tellFuture(store, answers.receivedAtMs ?? null, book)
    const own = inTimeOrder(store, moments.shiftedOnly ? (spans.get(store) ?? null) : null, book)
    ordered.set(store, own)
    sums.repeated += own.repeated
    sums.disagreeing += own.disagreeing
    sums.backward += own.backward
  }
  const parts = state.tables.flatMap((table) =>
    [...table.stores].flatMap(([sensor, store]) => {
      const own = ordered.get(store)
      return own ? partsOf(own, store.slots, table.serials.get(sensor) ?? survey.serial) : []
    }),
  )
  const { channels, disagreeing, silent } = channelsFrom(parts)
  for (const name of silent) book.note('channel-without-values', null, name)
  return {
    channels,
    asks: [...(order.ask ? [order.ask] : []), ...moments.asks, ...units.asks],
    dates: order.dates,
    timeZone: moments.timeZone,
    units,
    rows: {
      ...sums,
      disagreeing: sums.disagreeing + disagreeing,
      read: channels.reduce((sum, { series }) => sum + series.atMs.length, 0),
      empty,
      unreadable: unreadable + moments.skipped,
    },
  }
}
