import { parseArgs } from 'node:util'
import { keystrokeFigures, type Spread } from './keystrokes.ts'
import { planFigures } from './plans.ts'
import { rowFigures } from './rows.ts'
import { ruleFigures } from './rules.ts'

/** `npm run bench [-- rules|plans|rows|keystrokes …]`: prints our figures beside their peers of the same run, as ratios. */
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
