import { writeFileSync } from 'node:fs'
import { knowledge } from '../knowledge-at-hand.ts'
import { assemblage } from './assemblage.ts'
import { chance } from './chance.ts'
import { raisedIn, truthOf, type Wanted } from './truth-draw.ts'
import { truthsFile, type Truth } from './truths.ts'

/**
 * `node tests/demo/write-truths.ts`, then `write.ts`: draws anew what some finds of the demo are in truth. Only needed
 * where the finds themselves, or ids of the evidence base, have changed.
 */
const wanted: readonly Wanted[] = [
  {
    matter: 'white-skin',
    finds: 8,
    // Tin that lifts like a foil: here the words of the evidence base are wrong, and the score has to say so.
    surprise: { truth: 'tinning', group: 'skin-edge', state: 'lifting-edge', finds: 6 },
  },
  ...Object.entries({
    'gold-film': 5,
    'compact-green': 4,
    'orange-crust': 3,
    'iron-black': 3,
    'black-layer': 2,
    'black-tarnish': 3,
    'grey-on-lead': 2,
    'iron-inlay': 2,
    'bright-in-rust': 2,
    'red-layer': 2,
    'pale-green': 2,
    'orange-spots': 2,
    'warty-green': 1,
    'black-fill': 1,
    'wood-grain': 2,
    'glass-skin': 1,
    'silver-grey': 1,
    'brassy-glint': 1,
    'white-on-lead': 1,
    'deep-blue': 1,
  }).map(([matter, finds]) => ({ matter, finds })),
]

const plain = assemblage(1234, { truths: false }).records
const newest = [...new Map(plain.map((record) => [record.find_number, record])).values()].filter(
  (record) => record.hazards_noticed === undefined && record.recorded_on! < '2026-11-10',
)
const luck = chance(5678)
const drawn: Truth[] = []
/** Every eighth has not come back from the laboratory yet. */
const open = (number: number) => number % 8 === 7
for (const one of wanted) {
  const candidates = newest.flatMap((record) => {
    if (drawn.some(({ find }) => find === record.find_number)) return []
    const raised = raisedIn(record, knowledge).find(
      ({ matter, settled }) => matter.id === one.matter && settled === null,
    )
    return raised ? [{ record, raised, lot: luck.next() }] : []
  })
  let surprises = one.surprise?.finds ?? 0
  let left = one.finds
  for (const { record, raised } of candidates.toSorted((a, b) => a.lot - b.lot)) {
    if (left === 0) break
    const surprising = surprises > 0
    const number = drawn.length + 1
    const finds = one.surprise !== undefined || !open(number)
    const truth = Array.from({ length: 20 }).reduce(
      (known: Truth | null) =>
        known ?? truthOf(record, raised, one, { number, surprising, finds }, knowledge, luck),
      null,
    )
    if (truth === null) continue
    drawn.push(truth)
    left -= 1
    if (surprising) surprises -= 1
  }
  if (left > 0) console.error(`${one.matter}: ${left} finds too few`)
}
/** Two turned out to be nothing that anybody had thought of. */
const others = new Set([17, 34])
const all = drawn.map((truth, at) =>
  others.has(at) && truth.found
    ? {
        ...truth,
        truth: 'none-of-these',
        found: { ...truth.found, words: 'Modern paint, laid over the crust.' },
      }
    : truth,
)
writeFileSync(truthsFile, all.map((truth) => `${JSON.stringify(truth)}\n`).join(''))
console.log(`${all.length} finds, ${all.filter(({ found }) => found).length} identified`)
