// What neither a workbook nor a terminal can hold.
// oxlint-disable-next-line no-control-regex
const unprintable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufffe\uffff]/g

const ordinary = /^[ -~]*$/

/** A text as it is kept: one kind of line end, no control characters, nothing blank around it. */
export function cleanText(text: string): string {
  if (ordinary.test(text)) return text.trim()
  return text.toWellFormed().replace(/\r\n?/g, '\n').replace(unprintable, '').trim()
}
