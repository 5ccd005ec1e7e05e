import type { Correction, CorrectionFault } from '../knowledge/correction.ts'

type Sentences = {
  readonly [Code in CorrectionFault['code']]: (fault: Extract<CorrectionFault, { code: Code }>) => string
}

const sentences: Sentences = {
  'no-such': ({ column, found, near }) =>
    `There is no ${column} “${found}”.${near === null ? '' : ` Did you mean ${near}?`}`,
  needed: ({ column }) =>
    column === 'because' || column === 'by' || column === 'on'
      ? `A changed grade needs “${column}”: why, by whom, and on which day.`
      : `“${column}” is empty.`,
  'not-a-day': ({ found }) => `“${found}” is not a day. Write it as year-month-day.`,
  'said-otherwise': ({ first }) => `Row ${first} gives the same place another grade. Leave only one of them.`,
  'changed-meanwhile': ({ printed, now }) =>
    `The table was printed when this grade was ${printed}; it is ${now} now. Print the table again and look at both.`,
  'not-to-be-written': ({ file }) =>
    `${file} is written in a way that cannot be changed surely. Change the grade there by hand.`,
}

/** `Row 5: There is no rival “tining”. Did you mean tinning?` */
export function correctionFaultWords(fault: CorrectionFault): string {
  const say = sentences[fault.code] as (fault: CorrectionFault) => string
  return `Row ${fault.row}: ${say(fault)}`
}

/** `white-skin, skin-edge, lifting-edge: tinning from rare to occasional, because … (AB, 2026-11-25)` */
export function correctionWords({
  matter,
  group,
  state,
  rival,
  from,
  to,
  because,
  by,
  on,
}: Correction): string {
  return `${matter}, ${group}, ${state}: ${rival} from ${from} to ${to}, because ${because} (${by}, ${on})`
}
