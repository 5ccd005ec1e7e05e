import { folded } from './fold.ts'

/**
 * Find numbers in the order a person expects: TW-9 before TW-10. Only letters and digits are left, because database
 * engines disagree on how to sort anything else.
 */
export function sortKey(text: string): string {
  return folded(text)
    .replace(/[^\p{L}\p{N}]+/gu, '')
    .replace(/\d+/g, (digits) => digits.replace(/^0+(?=\d)/, '').padStart(12, '0'))
}
