import { isoDate, type IsoDate } from '../../../lib/base/calendar.ts'

/** Reads fields of a form and gathers everything that is wrong with them, so that it is told at once. */
export function formReader(form: FormData) {
  const wrong: Record<string, string> = {}
  const text = (name: string): string => {
    const value = form.get(name)
    return typeof value === 'string' ? value.trim() : ''
  }
  /** A text, or nothing where the field was left empty. */
  const words = (name: string): string | undefined => text(name) || undefined
  const needed = (name: string, says: string): string => {
    if (text(name) === '') wrong[name] = says
    return text(name)
  }
  /** A number in any usual writing, within its range; nothing where the field was left empty. */
  const number = (
    name: string,
    { from, to }: { readonly from: number; readonly to: number },
  ): number | undefined => {
    const typed = text(name)
    if (typed === '') return undefined
    const value = Number(typed.replaceAll(/\s/g, '').replace(',', '.'))
    if (Number.isFinite(value) && value >= from && value <= to) return value
    wrong[name] = `Write a number from ${from} to ${to}, not “${typed}”.`
    return undefined
  }
  const neededNumber = (name: string, range: { readonly from: number; readonly to: number }): number => {
    if (text(name) === '') wrong[name] = `Write a number from ${range.from} to ${range.to}.`
    return number(name, range) ?? range.from
  }
  const day = (name: string, today: IsoDate): IsoDate => {
    const typed = text(name)
    const date = isoDate(typed)
    if (date === null)
      wrong[name] = typed === '' ? 'Choose a day.' : `There is no day “${typed}”. Write it as 2026-11-25.`
    else if (date > today) wrong[name] = 'This day has not come yet.'
    return date ?? today
  }
  const dayOrNone = (name: string): IsoDate | undefined => {
    const typed = text(name)
    const date = isoDate(typed)
    if (typed !== '' && date === null) wrong[name] = `There is no day “${typed}”. Write it as 2026-11-25.`
    return date ?? undefined
  }
  const given = (): Readonly<Record<string, string>> =>
    Object.fromEntries(
      [...form.keys()].filter((name) => !name.startsWith('$')).map((name) => [name, text(name)]),
    )
  return { wrong, text, words, needed, number, neededNumber, day, dayOrNone, given }
}

export type FormReader = ReturnType<typeof formReader>
