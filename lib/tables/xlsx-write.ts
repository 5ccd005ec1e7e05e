import writeExcelFile from 'write-excel-file/node'

const unit = (code: number) => `_x${code.toString(16).toUpperCase().padStart(4, '0')}_`

/** What the writer of workbooks drops without a word: the mark of a lost letter, and the code points that are none. */
const dropped = /[\ufffd\p{Noncharacter_Code_Point}]/gu

/** What a workbook would read as an escaped letter, and names that every object already has, are escaped letter by letter. */
function cellText(text: string): string {
  const escaped = text.replace(/_x(?=[0-9A-Fa-f]{4}_)/g, '_x005F_x').replace(dropped, (letter) =>
    letter
      .split('')
      .map((half) => unit(half.charCodeAt(0)))
      .join(''),
  )
  if (!(escaped in {})) return escaped
  return `${unit(escaped.charCodeAt(0))}${escaped.slice(1)}`
}

type Rows = readonly (readonly string[])[]

const cellsOf = (rows: Rows) =>
  rows.map((row) => row.map((text) => (text === '' ? null : { value: cellText(text), type: String })))

/** A workbook of one sheet. Every cell is a text, so nothing in it can run as a formula. */
export async function writeWorkbook(sheet: string, rows: Rows): Promise<Uint8Array> {
  return writeExcelFile(cellsOf(rows), { sheet, stickyRowsCount: 1 }).toBuffer()
}

/** The same of several sheets, in their order. */
export async function writeSheets(
  sheets: readonly { readonly sheet: string; readonly rows: Rows }[],
): Promise<Uint8Array> {
  return writeExcelFile(
    sheets.map(({ sheet, rows }) => ({ data: cellsOf(rows), sheet, stickyRowsCount: 1 })),
  ).toBuffer()
}
