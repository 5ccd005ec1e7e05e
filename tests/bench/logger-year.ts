import { bucketsOf } from '../../lib/logger/buckets.ts'
import { mergeDay, packDays, unpackDays } from '../../lib/logger/day-block.ts'
import { emptySketch, joined } from '../../lib/logger/day-sketch.ts'
import { noAnswers } from '../../lib/logger/read/log-answers.ts'
import { readLogAt } from '../../lib/services/read-log-at.ts'
import { peakMegabytes } from './logger-answers.ts'

/** Runs by itself: `logger-year.ts FILE`. A year as a store takes it in: read, packed into days with their sketches, drawn. */
const file = process.argv[2]!
const timed = async <Value>(work: () => Value | Promise<Value>): Promise<readonly [number, Value]> => {
  const start = performance.now()
  const value = await work()
  return [(performance.now() - start) / 1000, value]
}

const [readSeconds, { channels }] = await timed(() => readLogAt(file, noAnswers))
const { series } = channels[0]!
const [packSeconds, days] = await timed(() => packDays(series))
const whole = days.slice(0, -1).reduce((sketch, day) => joined(sketch, day.sketch), emptySketch)
const [addSeconds] = await timed(() => joined(whole, mergeDay(days.at(-1)!, days.at(-1)!).sketch))
// As a chart asks for it: the days come packed out of the store.
const [bucketSeconds] = await timed(() => {
  const all = unpackDays(days)
  return bucketsOf(all, all.atMs[0]!, all.atMs.at(-1)!, 1200)
})
console.log(
  JSON.stringify({
    readings: series.atMs.length,
    readSeconds,
    packSeconds,
    packedMegabytes: days.reduce((sum, { text }) => sum + text.length, 0) / 1e6,
    bucketSeconds,
    dayAddedMilliseconds: addSeconds * 1000,
    peakMegabytes: peakMegabytes(),
  }),
)
