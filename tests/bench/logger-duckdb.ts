import { DuckDBInstance } from '@duckdb/node-api'
import { asked, clocks, peakMegabytes, type Answers } from './logger-answers.ts'

/**
 * Runs by itself: `logger-duckdb.ts FILE`. The same questions in SQL, on two threads, put as well as we know: moments as plain
 * timestamps and whole milliseconds (with a time zone everything takes several times as long), the step computed once.
 */
const file = process.argv[2]!.replaceAll("'", "''")
const took = clocks()
const instance = await DuckDBInstance.create(':memory:', { threads: '2' })
const db = await instance.connect()
const rows = async (sql: string) =>
  (await db.runAndReadAll(sql)).getRowsJS() as (number | bigint | string)[][]
const first = async (sql: string) => (await rows(sql))[0]!.map(Number)

const { band, longestStepMs, windowMs } = asked
const minute = 60_000
await db.run(
  `create table reading as select time as moment, temperature_c as t, rh_percent as rh from read_csv('${file}', types = {'time': 'TIMESTAMP'})`,
)
await db.run(`create table step as
  select epoch_ms(moment) as ms, rh, lead(epoch_ms(moment)) over (order by moment) - epoch_ms(moment) as step from reading`)
const [readings, shareInBand] = (await first(`
  select count(*),
    sum(step) filter (step <= ${longestStepMs} and rh between ${band.minRhPercent} and ${band.maxRhPercent})
      / sum(step) filter (step <= ${longestStepMs})
  from step`)) as [number, number]
const [longExcursions] = (await first(`
  with edge as (
    select ms, step, rh > ${asked.excursionRhPercent} as over,
      lag(rh > ${asked.excursionRhPercent} and step <= ${longestStepMs}, 1, false) over (order by ms) as goes_on
    from step),
  run as (
    select ms, step, sum(case when goes_on then 0 else 1 end) over (order by ms) as run from edge where over)
  select count(*) from (
    select min(ms) as began, max(ms + case when step <= ${longestStepMs} then step else ${minute} end) as ended
    from run group by run)
  where ended - began > ${asked.excursionHours} * 3600000`)) as [number]
const [highestDayRhPercent] = (await first(`
  select max(mean) from (
    select ms, avg(rh) over (order by ms range between ${windowMs - minute} preceding and current row) as mean from step)
  where ms >= (select min(ms) from step) + ${windowMs - minute}`)) as [number]
const percentiles = await first(
  `select ${asked.percentiles.map((percent) => `quantile_cont(rh, ${percent / 100})`).join(', ')} from reading`,
)
const months = (
  await rows(`
  select strftime(month, '%Y-%m'), n, rh_mean, rh_min, rh_max, t_mean, t_min, t_max from (
    select date_trunc('month', moment) as month, count(*) as n,
      avg(rh) as rh_mean, min(rh) as rh_min, max(rh) as rh_max, avg(t) as t_mean, min(t) as t_min, max(t) as t_max
    from reading group by 1)
  order by 1`)
).map(([month, count, ...values]) => {
  const three = ([mean, min, max]: readonly number[]) => ({ mean: mean!, min: min!, max: max! })
  const numbers = values.map(Number)
  return {
    month: String(month),
    readings: Number(count),
    rhPercent: three(numbers.slice(0, 3)),
    temperatureC: three(numbers.slice(3)),
  }
})
const ran = took()
const answers: Answers = { readings, shareInBand, longExcursions, highestDayRhPercent, percentiles, months }
console.log(JSON.stringify({ ...ran, peakMegabytes: peakMegabytes(), answers }))
