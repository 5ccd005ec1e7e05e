import { isoDate, type IsoDate } from '../base/calendar.ts'
import { textOption, WrongCall, type Call } from './command.ts'

/** One of the words an option may be, the first where it was left out. */
export function choiceOption<Choice extends string>(
  call: Call,
  name: string,
  choices: readonly [Choice, ...Choice[]],
): Choice {
  const given = textOption(call, name)
  if (given === null) return choices[0]
  const chosen = choices.find((choice) => choice === given)
  if (chosen === undefined) throw new WrongCall(`--${name} is one of ${choices.join(', ')}, not "${given}".`)
  return chosen
}

export function dayOption(call: Call, name: string, otherwise: IsoDate): IsoDate {
  const given = textOption(call, name)
  if (given === null) return otherwise
  const day = isoDate(given)
  if (day === null) throw new WrongCall(`--${name} is a day as 2026-11-25, not "${given}".`)
  return day
}
