// oxlint-disable-next-line no-control-regex
const ascii = /^[\u0000-\u007f]*$/
/** Marks that steer writing from right to left, soft hyphens, blanks of no width, a mark of byte order amid the text. */
const invisible = /[\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff]/g
/** Noughts of the scripts whose digits loggers were seen to print; nine more follow each. */
const noughts = [0x0660, 0x06f0, 0x0966, 0x09e6, 0x0e50]
const otherDigits = /[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\u09e6-\u09ef\u0e50-\u0e59]/g

const asAsciiDigit = (digit: string) => {
  const code = digit.codePointAt(0)!
  const nought = noughts.find((first) => code >= first && code <= first + 9) ?? code
  return String(code - nought)
}

export interface PlainText {
  readonly text: string
  readonly hadInvisible: boolean
  readonly hadOtherDigits: boolean
}

/**
 * What the careful reading looks at: full-width forms and special blanks as their plain ones, digits of other scripts as
 * 0–9, a true minus as a hyphen, and nothing that cannot be seen. Control characters except the tab are taken out.
 */
export function plainText(text: string): PlainText {
  // oxlint-disable-next-line no-control-regex
  const seen = text.replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
  if (ascii.test(seen)) return { text: seen, hadInvisible: false, hadOtherDigits: false }
  const bare = seen.replace(invisible, '')
  const digits = bare.replace(otherDigits, asAsciiDigit)
  const plain = digits
    .replace(/[º˚]/g, '°')
    .replace(/[−–]/g, '-')
    .replace(/٫/g, '.')
    .replace(/٬/g, '')
    .normalize('NFKC')
  return { text: plain, hadInvisible: bare !== seen, hadOtherDigits: digits !== bare }
}
