import { parseArgs } from 'node:util'
import { ruleFigures } from './rules.ts'

/** `npm run bench [-- rules|plans|csv …]`: prints our figures beside their peers of the same run, as ratios. */
const benches: Readonly<Record<string, () => Promise<void>>> = {
  rules: async () => {
    console.log('rule matching (records a second, ratio to hand-written code)')
    for (const { rules, name, perSecond, ratio } of await ruleFigures()) {
      console.log(
        `  ${String(rules).padStart(5)} rules  ${name.padEnd(32)} ${Math.round(perSecond).toLocaleString('en').padStart(10)}  ${ratio.toPrecision(3)}×`,
      )
    }
  },
}

const { positionals } = parseArgs({ allowPositionals: true })
const chosen = positionals.length > 0 ? positionals : Object.keys(benches)
for (const name of chosen) {
  const bench = benches[name]
  if (!bench) throw new Error(`No bench "${name}". There are: ${Object.keys(benches).join(', ')}.`)
  await bench()
}
