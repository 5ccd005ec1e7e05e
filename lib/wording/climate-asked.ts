import type { ProblemCode } from '../record/problem.ts'

export interface AskedQuantity {
  readonly label: string
  readonly unit: string
  readonly from: number
  readonly to: number
}

/** Why a number that was typed is none that can be reckoned with, and what to write. */
export function typedFaultWords(
  { label, unit, from, to }: AskedQuantity,
  typed: string,
  code: ProblemCode | 'empty',
  suggestion: string | undefined,
): string {
  const write = `Write a number from ${from} to ${to}${unit === '' ? '' : ` in ${unit}`}`
  switch (code) {
    case 'empty':
      return `${label}: ${write.toLowerCase()}.`
    case 'ambiguous-number':
      return `${label}: “${typed}” may mean ${suggestion ?? 'two numbers'}. Write it without a sign between thousands.`
    case 'wrong-unit':
      return `${label}: “${typed}” carries another unit. ${write}.`
    case 'out-of-range':
      return `${label}: “${typed}” is not from ${from} to ${to} ${unit}.`
    default:
      return `${label}: “${typed}” is no number. ${write}.`
  }
}

/** What stands where an answer would. */
export const mendFirst = 'Mend what is marked, and the answer stands here.'
