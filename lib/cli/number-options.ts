import { textOption, type Call } from './command.ts'

/** A number an option takes, in the unit its name ends with. */
export interface NumberWanted {
  readonly from: number
  readonly to: number
  /** As the range is told: `°C`, `%`. */
  readonly unit: string
  readonly required?: true
}

const number = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/

/** Every number of a call, and every fault among them: one line each, so that all can be mended at once. */
export function numberOptions<Name extends string>(
  call: Call,
  wanted: Readonly<Record<Name, NumberWanted>>,
): { readonly values: Readonly<Record<Name, number | null>>; readonly wrong: readonly string[] } {
  const wrong: string[] = []
  const read = (name: string, { from, to, unit, required }: NumberWanted): number | null => {
    const given = textOption(call, name)
    const range = `a number from ${from} to ${to} ${unit}`
    if (given === null) {
      if (required) wrong.push(`--${name} is missing: give ${range}.`)
      return null
    }
    const value = number.test(given.trim()) ? Number(given.trim().replace(',', '.')) : Number.NaN
    if (value >= from && value <= to) return value
    wrong.push(`--${name} is ${range}, not "${given}".`)
    return null
  }
  const names = Object.keys(wanted) as Name[]
  const values = Object.fromEntries(names.map((name) => [name, read(name, wanted[name])]))
  return { values: values as Record<Name, number | null>, wrong }
}
