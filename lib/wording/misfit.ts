/** Why a find and its box do not go together, and what to do about it. */
const misfits = {
  'wet-in-dry': 'It is to be kept wet; this is no tub.',
  'no-one-band': 'No one humidity suits its parts; a conservator decides where it stands.',
  'too-damp': 'The box may be damper than the find bears.',
  'too-dry': 'The box may be drier than the find bears.',
  'unknown-box': 'Nobody has written what humidity this box holds.',
} as const

export function misfitWords(misfit: keyof typeof misfits): string {
  return misfits[misfit]
}
