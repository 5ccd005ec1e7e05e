import { heading, quiet, quietReads, table, type Hostile } from './hostile.ts'

const bytes = (...values: readonly number[]) => Uint8Array.from(values)
const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0))
const zip = (name: string) => latin(`PK\u0003\u0004${'\0'.repeat(26)}${name}${'\u0001\u0002'.repeat(40)}`)
const refused = (name: string, file: string | Uint8Array, tells: readonly string[]): Hostile => ({
  name,
  file,
  reads: [],
  tells,
})
const wide = (text: string, order: 'le' | 'be', mark: boolean) => {
  const le = new Uint8Array(Buffer.from(`${mark ? '\ufeff' : ''}${text}`, 'utf16le'))
  return order === 'le' ? le : le.map((_, at) => le[at ^ 1]!)
}
const three = table(...quiet(3))

/** What a file may be instead of lines of readings, and what its bytes may be. */
export const files: readonly Hostile[] = [
  refused('nothing at all', '', ['empty-file']),
  refused('blank lines only', '\n \n\t\n\n', ['empty-file']),
  refused('empty bytes only', new Uint8Array(5000), ['empty-file']),
  refused('a workbook', zip('xl/workbook.xml'), ['spreadsheet-file']),
  refused('an open spreadsheet', zip('mimetypeapplication/vnd.oasis.opendocument.spreadsheet'), [
    'spreadsheet-file',
  ]),
  refused('an old workbook', bytes(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1), ['old-spreadsheet-file']),
  refused('a text document', zip('word/document.xml'), ['document-file']),
  refused('rich text', '{\\rtf1\\ansi readings}', ['document-file']),
  refused('a zip of something', zip('readings.bin'), ['archive-file']),
  refused('a gzip', bytes(0x1f, 0x8b, 8, 0), ['archive-file']),
  refused('a PDF', latin('%PDF-1.7\n1 0 obj'), ['pdf-file']),
  refused('a picture', bytes(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10), ['picture-file']),
  refused('a photograph', bytes(0xff, 0xd8, 0xff, 0xe0), ['picture-file']),
  refused('a database', latin('SQLite format 3\0'), ['database-file']),
  refused(
    'bytes of no kind',
    Uint8Array.from({ length: 700 }, (_, at) => (at * 37) % 256),
    ['binary-file'],
  ),
  refused(
    'a web page with a table',
    `<!DOCTYPE html><html><table><tr><td>2024-05-06 07:00</td><td>20</td></tr></table>`,
    ['web-page @1'],
  ),
  refused('a workbook as XML', '<?xml version="1.0"?>\n<Workbook><Row/></Workbook>', ['xml-file @1']),
  refused('JSON records', '[{"time":"2024-05-06 07:00","t":20.1,"rh":45}]', ['json-file @1']),
  refused('a JSON object', '{"readings":[1,2]}', ['json-file @1']),
  refused('JSON numbers', '[[1704067200,20,45],[1704067800,20,45]]', ['json-file @1']),
  refused('prose', 'The logger was read out on Monday.\nNothing happened.\n', ['no-readings @1']),
  refused('headings without a reading', `${heading}\n`, ['headings-only @1']),
  refused('headings below a block', `Logger: A\n\n${heading}\n\n`, ['headings-only @3']),
  {
    name: 'UTF-8 with a mark',
    file: `\ufeff${three}`,
    reads: quietReads(3),
    tells: [],
  },
  { name: 'UTF-16, little end first', file: wide(three, 'le', true), reads: quietReads(3), tells: [] },
  { name: 'UTF-16, big end first', file: wide(three, 'be', true), reads: quietReads(3), tells: [] },
  {
    name: 'UTF-16 that does not say so',
    file: wide(three, 'le', false),
    reads: quietReads(3),
    tells: ['utf-16-without-mark'],
  },
  {
    name: 'UTF-16 the other way round that does not say so',
    file: wide(three, 'be', false),
    reads: quietReads(3),
    tells: ['utf-16-without-mark'],
  },
  {
    name: 'UTF-16 cut amid a letter',
    file: wide(table(...quiet(4)), 'le', true).slice(0, -9),
    reads: quietReads(3).concat('2024-05-06 07:30 20.3 -'),
    tells: ['line-cut-short @5', 'undecodable-text @5'],
  },
  { name: 'windows-1252', file: latin(three), reads: quietReads(3), tells: ['read-in-old-encoding'] },
  {
    name: 'UTF-8 with a broken letter in a remark',
    file: Uint8Array.from([
      ...new TextEncoder().encode(table(...quiet(2), '# café')),
      0x23,
      0xe9,
      0x0a,
      ...latin(`${quiet(1, 2)[0]}\n`),
    ]),
    reads: quietReads(3),
    tells: ['comment-lines @4 ×2', 'undecodable-text @5'],
  },
  {
    name: 'empty bytes for lines',
    file: table(...quiet(3), '\0\0\0\0\0\0', ...quiet(2, 3)),
    reads: quietReads(5),
    tells: ['zero-bytes @5'],
  },
  {
    name: 'empty bytes at the end, as memory set aside',
    file: three + '\0'.repeat(9000),
    reads: quietReads(3),
    tells: ['zero-bytes @5'],
  },
  {
    name: 'an empty byte amid a number',
    file: table(...quiet(3), quiet(1, 3)[0]!.replace('20.', '2\x000.'), ...quiet(1, 4)),
    reads: quietReads(5),
    tells: ['zero-bytes @5'],
  },
  {
    name: 'lines that end in a carriage return only',
    file: three.replaceAll('\n', '\r'),
    reads: quietReads(3),
    tells: ['lone-carriage-returns @1'],
  },
  {
    name: 'one lone carriage return among line feeds',
    file: table(`${quiet(1)[0]}\r${quiet(1, 1)[0]}`, ...quiet(2, 2)),
    reads: quietReads(4),
    tells: ['lone-carriage-returns @2'],
  },
  {
    name: 'carriage return and line feed mixed with line feeds',
    file: table(...quiet(4).map((line, at) => (at % 2 ? `${line}\r` : line))),
    reads: quietReads(4),
    tells: [],
  },
  {
    name: 'a line of ten megabytes',
    file: table(...quiet(3), 'x'.repeat(10_000_000), ...quiet(2, 3)),
    reads: quietReads(5),
    tells: ['line-too-long @5'],
  },
  {
    name: 'a line of ten megabytes before the headings',
    file: `${'9,'.repeat(5_000_000)}\n${three}`,
    reads: quietReads(3),
    tells: ['line-too-long @1'],
  },
  {
    name: 'three megabytes of remarks before the headings',
    file: '# a remark that says nothing\n'.repeat(110_000) + three,
    reads: quietReads(3),
    tells: [],
  },
  {
    name: 'marks of writing from right to left',
    file: table(`\u200f${quiet(1)[0]}\u200e`, ...quiet(2, 1)),
    reads: quietReads(3),
    tells: ['invisible-marks @2'],
  },
  {
    name: 'blanks that do not break',
    file: table(...quiet(2), '2024-05-06\u00a007:20,\u202f20.2\u00a0,45.2'),
    reads: quietReads(3),
    tells: [],
  },
  {
    name: 'Arabic digits',
    file: table(...quiet(2), '٢٠٢٤-٠٥-٠٦ ٠٧:٢٠,٢٠٫٢,٤٥٫٢'),
    reads: quietReads(3),
    tells: ['other-digits @4'],
  },
  {
    name: 'full-width digits and marks',
    file: table(...quiet(2), '２０２４－０５－０６ ０７：２０，２０．２，４５．２'),
    reads: quietReads(3),
    tells: [],
  },
]
