const plain = /^[ -~]*$/

/** Case, accents and full-width forms folded away. */
export function fold(text: string): string {
  if (plain.test(text)) return text.toLowerCase()
  return text.normalize('NFKD').replace(/\p{M}+/gu, '').toLowerCase()
}

/** As searches compare: folded, and blanks evened out. */
export const folded = (text: string): string => fold(text).replace(/\s+/g, ' ').trim()
