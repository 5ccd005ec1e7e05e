import type { Choice, OptionTable } from './assemblage-problem.ts'

/**
 * A first choice: finds in the order of what they are worth above the price of the slots they take, each given the option
 * worth most after paying of those that still fit. At equal prices it is the finds that settle most for a scarce hour.
 */
export function chooseFirst(table: OptionTable, slots: readonly number[], prices: Float64Array): Choice {
  const { from, worth, uses, methods } = table
  const finds = from.length - 1
  const left = Int32Array.from(slots)
  const paid = new Float64Array(worth.length)
  const ahead = new Float64Array(finds)
  for (let find = 0; find < finds; find++) {
    for (let at = from[find]!; at < from[find + 1]!; at++) {
      let after = worth[at]!
      let cost = 0
      for (let method = 0; method < methods; method++) cost += prices[method]! * uses[at * methods + method]!
      after -= cost
      paid[at] = after
      const rate = cost > 0 ? worth[at]! / cost : worth[at]! > 0 ? Infinity : 0
      if (rate > ahead[find]!) ahead[find] = rate
    }
  }
  const order = Array.from({ length: finds }, (_, find) => find).sort(
    (a, b) => (ahead[a] === ahead[b] ? 0 : ahead[b]! - ahead[a]!) || a - b,
  )
  const choice = new Int32Array(finds)
  for (const find of order) {
    let best = from[find]!
    for (let at = from[find]!; at < from[find + 1]!; at++) {
      if (worth[at]! <= worth[best]! && paid[at]! <= paid[best]!) continue
      if (paid[at]! < paid[best]!) continue
      let fits = true
      for (let method = 0; method < methods; method++)
        if (uses[at * methods + method]! > left[method]!) fits = false
      if (fits) best = at
    }
    choice[find] = best - from[find]!
    for (let method = 0; method < methods; method++) left[method]! -= uses[best * methods + method]!
  }
  return choice
}
