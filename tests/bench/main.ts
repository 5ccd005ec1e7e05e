import { parseArgs } from 'node:util'
import { boxFigures } from './boxes.ts'
import { evidenceFigures } from './evidence.ts'
import { guidedFigures } from './guided.ts'
import { keystrokeFigures, type Spread } from './keystrokes.ts'
import { loggerFigures } from './logger.ts'
import { smallFigures, storeFigures } from './packing.ts'
import { planFigures } from './plans.ts'
import { requestFigures } from './requests.ts'
import { rowFigures } from './rows.ts'
import { ruleFigures } from './rules.ts'

/** `npm run bench [-- rules|plans|rows|keystrokes|logger|packing|boxes|guided|evidence|requests …]`: prints our figures beside their peers of the same run, as ratios. */
const benches: Readonly<Record<string, () => Promise<void>>> = {
  rules: async () => {
    console.log('rule matching (records a second, ratio to hand-written code)')
    for (const { rules, name, perSecond, ratio } of await ruleFigures()) {
      console.log(
        `  ${String(rules).padStart(5)} rules  ${name.padEnd(32)} ${Math.round(perSecond).toLocaleString('en').padStart(10)}  ${ratio.toPrecision(3)}×`,
      )
    }
  },
  plans: async () => {
    const figures = planFigures()
    const whole = (number: number) => Math.round(number).toLocaleString('en')
    console.log(`plans of ${whole(figures.records)} records under ${figures.rules} rules, one core`)
    console.log(`  records read as facts   ${whole(figures.factsPerSecond)} a second`)
    console.log(`  all decisions           ${whole(figures.decidedPerSecond)} a second`)
    console.log(`  whole plans             ${whole(figures.plansPerSecond)} a second`)
    const { median, p95 } = figures.lookNextMilliseconds
    console.log(
      `  look next               ${median.toFixed(1)} ms median, ${p95.toFixed(1)} ms at the 95th percentile`,
    )
  },
  rows: async () => {
    const { rows, plans, seconds, peakMegabytes } = await rowFigures()
    console.log(
      `${rows.toLocaleString('en')} rows of one CSV, ${plans.toLocaleString('en')} plans printed by the command`,
    )
    console.log(`  ${seconds.toFixed(0)} s, at most ${peakMegabytes.toFixed(0)} MB`)
  },
  evidence: async () => {
    const figures = evidenceFigures()
    const share = (part: number) => `${(100 * part).toFixed(1)} %`
    console.log(`${figures.findsEach} finds drawn from each of ${figures.matters} matters`)
    console.log(
      `  80 % ranges hold in ${share(figures.held.share)} of ${figures.held.cases.toLocaleString('en')} cases; least in ${figures.least.matter} (${share(figures.least.share)}), most in ${figures.most.matter} (${share(figures.most.share)})`,
    )
    for (const { stated, came, cases } of figures.deciles)
      console.log(`  stated ${share(stated)}, came true ${share(came)} (${cases.toLocaleString('en')})`)
    console.log(`  one find with three matters weighed in ${figures.weighMilliseconds.toFixed(2)} ms`)
  },
  logger: async () => {
    const { readings, bytes, rounds, byteLoop, ours, duckdb, answers, disagree, year } = await loggerFigures()
    const whole = (number: number) => Math.round(number).toLocaleString('en')
    const times = (seconds: number) => `${(seconds / byteLoop.seconds).toFixed(2)}× the byte loop`
    const cpu = (seconds: number) => `processor ${seconds.toFixed(2)} s`
    console.log(
      `${whole(readings)} readings of a logger, ${whole(bytes)} bytes; medians of ${rounds} rounds in turn`,
    )
    console.log(
      `  each byte looked at once       ${byteLoop.seconds.toFixed(2)} s (${cpu(byteLoop.cpuSeconds)}), at most ${whole(byteLoop.peakMegabytes)} MB`,
    )
    console.log(
      `  ours, read and all answers     ${ours.seconds.toFixed(2)} s, ${times(ours.seconds)} (${cpu(ours.cpuSeconds)}, ${(ours.cpuSeconds / byteLoop.cpuSeconds).toFixed(2)}×), at most ${whole(ours.peakMegabytes)} MB`,
    )
    console.log(`    of that reading              ${ours.readSeconds.toFixed(2)} s`)
    console.log(
      `  DuckDB on two threads          ${duckdb.seconds.toFixed(2)} s, ${(duckdb.seconds / ours.seconds).toFixed(1)}× ours (${cpu(duckdb.cpuSeconds)}, ${(duckdb.cpuSeconds / ours.cpuSeconds).toFixed(1)}×), at most ${whole(duckdb.peakMegabytes)} MB`,
    )
    console.log(
      `  other limits on what is loaded ${ours.newLimitsSeconds.toFixed(2)} s, ${times(ours.newLimitsSeconds)}`,
    )
    console.log(
      `  all that the tool tells        ${ours.everythingSeconds.toFixed(2)} s more, ${times(ours.readSeconds + ours.everythingSeconds)} with reading`,
    )
    console.log(
      `  ${disagree.length === 0 ? 'both answer alike' : `they disagree: ${disagree.join('; ')}`}: in band ${answers.shareInBand.toFixed(8)}, ${answers.longExcursions} long excursions, highest day ${answers.highestDayRhPercent.toFixed(6)} %, ${answers.percentiles.join(' and ')} %, ${answers.months.length} months`,
    )
    console.log(
      `a year of ${whole(year.readings)} readings: read in ${(year.readSeconds * 1000).toFixed(0)} ms, packed into days in ${(year.packSeconds * 1000).toFixed(0)} ms (${year.packedMegabytes.toFixed(1)} MB), drawn from them in ${(year.bucketSeconds * 1000).toFixed(0)} ms, a day added in ${year.dayAddedMilliseconds.toFixed(1)} ms; at most ${whole(year.peakMegabytes)} MB`,
    )
  },
  packing: async () => {
    const store = storeFigures()
    console.log(`${store.finds.toLocaleString('en')} finds given to boxes`)
    console.log(
      `  at once    ${(store.milliseconds / 1000).toFixed(2)} s: ${store.boxes} boxes, ${store.boxes - store.bound} above the bound; first fit by size ${store.firstFit}`,
    )
    console.log(`  longer     ${(store.longerMilliseconds / 1000).toFixed(1)} s: ${store.longerBoxes} boxes`)
    console.log(
      'items of two sizes, three seeds: bins of ours / of HiGHS in 20 s each / of first fit / bound; time as a ratio',
    )
    for (const one of await smallFigures()) {
      const exact = one.exact.map((bins) => bins ?? '?').join(' ')
      console.log(
        `  ${String(one.items).padStart(3)} ${(one.classes ? 'classes' : 'plain').padEnd(8)} ${one.ours.join(' ')} / ${exact} / ${one.firstFit.join(' ')} / ${one.bound.join(' ')}   ${one.oursMilliseconds.toFixed(0)} ms, the solver ${Math.round(one.solverMilliseconds / one.oursMilliseconds).toLocaleString('en')}× as long`,
      )
    }
  },
  boxes: async () => {
    const figures = boxFigures()
    const milliseconds = (number: number) => `${number.toFixed(1)} ms`
    console.log('a box with a year of its logger, one core')
    console.log(`  its leak                ${milliseconds(figures.learnMilliseconds)}`)
    console.log(`  a year foretold         ${milliseconds(figures.forecastMilliseconds)}`)
    console.log(`  whether it departs      ${milliseconds(figures.departureMilliseconds)}`)
    console.log(`a store of ${figures.boxes} boxes, one in ten under a logger`)
    console.log(`  leaks, renewals, departures of all    ${figures.storeSeconds.toFixed(1)} s`)
    console.log(`  of that, boxes of one model pooled    ${figures.poolSeconds.toFixed(1)} s`)
    console.log(`  where a logger would tell most        ${figures.logNextSeconds.toFixed(1)} s`)
  },
  guided: async () => {
    const percent = (share: number) => `${(share * 100).toFixed(1)} %`
    for (const [name, one] of Object.entries(guidedFigures())) {
      console.log(
        `${one.finds.toLocaleString('en')} finds ${name === 'drawn' ? 'drawn from the knowledge' : 'of the demo'}, led by the first question each time; ${one.full.toFixed(1)} facts in a full record`,
      )
      console.log(
        `  facts until the plan is that of the full record   ${percent(one.needed.mean)} on average, ${percent(one.needed.median)} median`,
      )
      console.log(`  finds that reach it                               ${percent(one.reached)}`)
      console.log(
        `  facts when nothing more is asked                  ${percent(one.stopped)}, ${one.overshoot.toFixed(1)} more than were needed`,
      )
      console.log(`  questions the full record cannot answer           ${one.inVain.toFixed(1)} a find`)
      console.log(
        `  what still differs                                ${Object.entries(one.differs)
          .map(([part, count]) => `${part} ${count}`)
          .join(', ')}`,
      )
      const { median, p95, worst } = one.milliseconds
      console.log(
        `  the next question                                 ${median.toFixed(1)} ms median, ${p95.toFixed(1)} ms at the 95th percentile, ${worst.toFixed(0)} ms at worst`,
      )
    }
  },
  requests: async () => {
    const figures = await requestFigures()
    const milliseconds = (number: number) => `${Math.round(number).toLocaleString('en')} ms`
    console.log(`${figures.finds.toLocaleString('en')} finds and the hours of a few methods, one core`)
    console.log(
      `  chosen, three methods          ${milliseconds(figures.chooseMilliseconds)}, ${figures.gapPercent.toFixed(4)} % below the bound`,
    )
    console.log(
      figures.solverMilliseconds === null
        ? '  HiGHS                          not done in a minute'
        : `  HiGHS                          ${milliseconds(figures.solverMilliseconds)}, ${figures.solverAheadPercent!.toFixed(4)} % above ours`,
    )
    console.log(
      `  all that is open weighed too   ${milliseconds(figures.gainsMilliseconds)}, ${figures.lists} finds sent`,
    )
    console.log(`  what hangs on it, the first time ${milliseconds(figures.stakesMilliseconds)} more`)
  },
  keystrokes: async () => {
    const figures = await keystrokeFigures()
    console.log(`Intake with ${figures.rows} rows: from a key to the paint of the row's plan`)
    const lines: readonly (readonly [string, Spread])[] = [
      [`${figures.keystrokes} keystrokes`, figures.milliseconds],
      [`${figures.changedPlan} that changed the plan`, figures.changedPlanMilliseconds],
      ['in a bare text field', figures.bareFieldMilliseconds],
    ]
    for (const [name, milliseconds] of lines) console.log(`  ${name.padEnd(26)} ${spreadWords(milliseconds)}`)
    console.log(`  load of the machine        ${figures.load.toFixed(1)} on ${figures.cores} cores`)
  },
}

function spreadWords({ median, p95, worst }: Spread): string {
  return `${median.toFixed(0)} ms median, ${p95.toFixed(0)} ms at the 95th percentile, ${worst.toFixed(0)} ms at worst`
}

const { positionals } = parseArgs({ allowPositionals: true })
const chosen = positionals.length > 0 ? positionals : Object.keys(benches)
for (const name of chosen) {
  const bench = benches[name]
  if (!bench) throw new Error(`No bench "${name}". There are: ${Object.keys(benches).join(', ')}.`)
  await bench()
}
