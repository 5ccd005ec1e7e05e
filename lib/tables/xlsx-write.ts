import writeExcelFile from 'write-excel-file/node'

/** What a workbook would read as an escaped letter, and names that every object already has, are escaped letter by letter. */
function cellText(text: string): string {
  const escaped = text.replace(/_x(?=[0-9A-Fa-f]{4}_)/g, '_x005F_x')
  if (!(escaped in {})) return escaped
  return `_x${escaped.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_${escaped.slice(1)}`
}

/** A workbook of one sheet. Every cell is a text, so nothing in it can run as a formula. */
export async function writeWorkbook(
  sheet: string,
  rows: readonly (readonly string[])[],
): Promise<Uint8Array> {
  const cells = rows.map((row) =>
    row.map((text) => (text === '' ? null : { value: cellText(text), type: String })),
  )
  return writeExcelFile(cells, { sheet, stickyRowsCount: 1 }).toBuffer()
}
