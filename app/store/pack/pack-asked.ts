import type { PackAsked } from '../../../lib/services/pack-store.ts'

/** In an address a make of box stands under the name of the first of its kind. */
export const moreName = (like: string): string => `more ${like}`

const mostMore = 500

/** What the address asks for; what is no number asks for none. */
export function packAsked(projectId: string, words: Readonly<Record<string, string>>): PackAsked {
  const more = Object.entries(words).flatMap(([name, text]) => {
    const count = Math.floor(Number(text))
    return name.startsWith('more ') && count >= 1
      ? [{ like: name.slice(5), count: Math.min(count, mostMore) }]
      : []
  })
  return {
    projectId,
    begin: words['begin'] === 'afresh' ? 'afresh' : 'as-it-stands',
    more,
    longer: words['longer'] !== undefined,
  }
}
