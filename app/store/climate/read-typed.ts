import { readQuantity } from '../../../lib/record/quantity.ts'
import { typedFaultWords } from '../../../lib/wording/climate-asked.ts'
import {
  choiceFields,
  numberFields,
  numberNames,
  type ChoiceName,
  type NumberName,
  type Typed,
} from './fields.ts'

type Choices = { readonly [Name in ChoiceName]: (typeof choiceFields)[Name][number] }

export interface ReadTyped {
  /** Null where what stands there is no number in range. */
  readonly numbers: Readonly<Record<NumberName, number | null>>
  readonly choices: Choices
  readonly wrong: Readonly<Partial<Record<NumberName, string>>>
}

/** What was chosen; the first of a list where it is not in it. */
function chosen<Option extends string>(options: readonly [Option, ...Option[]], typed: string): Option {
  return options.find((one) => one === typed) ?? options[0]
}

/** What was typed, as numbers; with decimal point or comma, with or without its unit. */
export function readTyped(typed: Typed): ReadTyped {
  const numbers: Partial<Record<NumberName, number | null>> = {}
  const wrong: Partial<Record<NumberName, string>> = {}
  for (const name of numberNames) {
    const field = numberFields[name]
    const text = typed[name].trim()
    const read = readQuantity({ units: field.units, range: [field.from, field.to] }, text)
    numbers[name] = read.ok ? read.value : null
    if (!read.ok)
      wrong[name] = typedFaultWords(
        field,
        text,
        text === '' ? 'empty' : read.code,
        'suggestion' in read ? read.suggestion : undefined,
      )
  }
  return {
    numbers: numbers as ReadTyped['numbers'],
    choices: {
      convention: chosen(choiceFields.convention, typed.convention),
      brought: chosen(choiceFields.brought, typed.brought),
      metal: chosen(choiceFields.metal, typed.metal),
      firstSalt: chosen(choiceFields.firstSalt, typed.firstSalt),
      secondSalt: chosen(choiceFields.secondSalt, typed.secondSalt),
    },
    wrong,
  }
}
