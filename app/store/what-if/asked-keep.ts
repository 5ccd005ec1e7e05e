import { numberFault, readNumber } from './asked-change.ts'

export const keepFields = {
  limit: { from: 3, to: 60, start: '15' },
  months: { from: 1, to: 120, start: '12' },
} as const

export interface ReadKeep {
  readonly box: string | null
  readonly limitRhPercent: number
  readonly days: number
  readonly wrong: Readonly<Partial<Record<keyof typeof keepFields, string>>>
}

const daysAMonth = 365.25 / 12

/** Keep this box under so much for so long; what cannot be read is taken as it is first offered, and said. */
export function readKeep(words: Readonly<Record<string, string>>): ReadKeep {
  const wrong: Partial<Record<keyof typeof keepFields, string>> = {}
  const read = (name: keyof typeof keepFields): number => {
    const { start, ...ends } = keepFields[name]
    const text = words[name]?.trim() ?? ''
    const value = text === '' ? null : readNumber(text, ends)
    if (value === null && text !== '') wrong[name] = numberFault(text, ends)
    return value ?? Number(start)
  }
  const box = words['keep']?.trim() ?? ''
  return {
    box: box === '' ? null : box,
    limitRhPercent: read('limit'),
    days: Math.round(read('months') * daysAMonth),
    wrong,
  }
}
