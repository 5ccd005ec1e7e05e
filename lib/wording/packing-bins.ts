import type { PlainPacking } from '../boxes/bins-pack.ts'
import type { BinFlaw } from '../boxes/bins-read.ts'
import { countWords } from './list.ts'

const shown = (value: unknown): string => {
  const text = value === undefined ? 'nothing' : JSON.stringify(value)
  return text.length > 40 ? `${text.slice(0, 37)}…` : text
}

/** Items are counted from 1, as people count; `assignment` counts bins from 0, as programs do. */
export function binFlawWords(flaw: BinFlaw): string {
  switch (flaw.code) {
    case 'not-json':
      return `This is no JSON (${flaw.found}). Give an object like { "capacity": 150, "items": [42, 69] }.`
    case 'no-object':
      return 'Give one object like { "capacity": 150, "items": [42, 69] }.'
    case 'capacity':
      return `"capacity" is ${shown(flaw.found)}. Give a number above 0.`
    case 'no-items':
      return '"items" is no list. Give the sizes of the items as a list of numbers.'
    case 'size':
      return `Item ${flaw.item + 1} is ${shown(flaw.found)}. Give a number above 0.`
    case 'too-large':
      return `Item ${flaw.item + 1} is ${flaw.size}, more than the ${flaw.capacity} a bin holds. Take it out, or give a larger capacity.`
    case 'too-fine':
      return `${flaw.item === null ? '"capacity"' : `Item ${flaw.item + 1}`} is ${flaw.found}. Give at most six digits behind the point.`
    case 'too-many':
      return `There are ${flaw.items.toLocaleString('en-GB')} items; at most ${flaw.most.toLocaleString('en-GB')} are packed at once.`
  }
}

export function packedWords({ bins, lowerBound, assignment }: PlainPacking): string {
  const contents = Array.from({ length: bins }, (): number[] => [])
  assignment.forEach((bin, item) => contents[bin]!.push(item + 1))
  const most = bins === lowerBound ? 'No packing needs fewer.' : `No packing needs fewer than ${lowerBound}.`
  return [
    `${countWords(assignment.length, 'item')} in ${countWords(bins, 'bin')}. ${most}`,
    ...contents.map((items, bin) => `  ${String(bin + 1).padStart(4)}  ${items.join(', ')}`),
  ].join('\n')
}
