import type { WhatIfChange } from '../../../lib/services/show-what-if.ts'

/** What can be tried out with a number: between which ends, and where it leaves the store as it is. */
export const dials = {
  drier: { from: -30, to: 40, step: 1, asIs: 0 },
  leak: { from: 0, to: 95, step: 5, asIs: 0 },
  gel: { from: 0.25, to: 5, step: 0.25, asIs: 1 },
} as const

export type DialName = keyof typeof dials
export const dialNames = ['drier', 'leak', 'gel'] as const satisfies readonly DialName[]

/** Films of which figures are printed, the leakiest first. */
export const films = [
  'film-low-density-polyethylene',
  'film-high-density-polyethylene',
  'film-fluoropolymer',
] as const

export type Film = (typeof films)[number]

/** As it stands in the address and in the form; empty leaves it as it is. */
export type Typed = Readonly<Record<DialName | 'film' | 'film_then', string>>

export interface ReadChange {
  readonly change: WhatIfChange
  readonly wrong: Readonly<Partial<Record<DialName, string>>>
}

export const typedOf = (words: Readonly<Record<string, string>>): Typed => ({
  drier: words['drier'] ?? '',
  leak: words['leak'] ?? '',
  gel: words['gel'] ?? '',
  film: words['film'] ?? '',
  film_then: words['film_then'] ?? '',
})

/** A number in any usual writing within its ends; null where it is none. */
export function readNumber(
  typed: string,
  { from, to }: { readonly from: number; readonly to: number },
): number | null {
  const text = typed.replaceAll(/\s/g, '').replace(',', '.').replace('−', '-')
  const value = text === '' ? Number.NaN : Number(text)
  return Number.isFinite(value) && value >= from && value <= to ? value : null
}

export const numberFault = (typed: string, { from, to }: { readonly from: number; readonly to: number }) =>
  `Write a number from ${String(from).replace('-', '−')} to ${to}, not “${typed}”.`

/** What is to be tried; what cannot be read is left as it is, and said. */
export function readChange(typed: Typed): ReadChange {
  const wrong: Partial<Record<DialName, string>> = {}
  const read = (name: DialName): number => {
    const text = typed[name].trim()
    if (text === '') return dials[name].asIs
    const value = readNumber(text, dials[name])
    if (value === null) wrong[name] = numberFault(text, dials[name])
    return value ?? dials[name].asIs
  }
  const film = (text: string) => films.find((one) => one === text) ?? null
  const [now, then] = [film(typed.film), film(typed.film_then)]
  return {
    change: {
      drierByPercent: read('drier'),
      leakLessPercent: read('leak'),
      gelTimes: read('gel'),
      film: now !== null && then !== null && now !== then ? { now, then } : null,
    },
    wrong,
  }
}

/** The same question as an address asks it; what is left as it is stands in none. */
export function queryOf(
  place: { readonly box?: string | undefined; readonly room?: string | undefined },
  typed: Typed,
): string {
  const query = new URLSearchParams()
  if (place.box !== undefined) query.set('box', place.box)
  else if (place.room !== undefined) query.set('room', place.room)
  for (const [name, text] of Object.entries(typed)) if (text.trim() !== '') query.set(name, text.trim())
  return query.toString()
}
