import type { Problem, ProblemCode } from '../record/problem.ts'

const shown = (text: string) => (text.length > 60 ? `“${text.slice(0, 57)}…”` : `“${text}”`)
const or = (suggestion: string | undefined, otherwise: string) =>
  suggestion === undefined ? otherwise : `Did you mean ${shown(suggestion)}?`

/** What no tool can read as a table, in the words of the person who saved it. */
const files: Readonly<Record<string, string>> = {
  html: 'a web page',
  pdf: 'a PDF',
  'old-excel': 'an old Excel workbook (.xls)',
  'open-document': 'an OpenDocument file',
  'word-document': 'a Word document',
  zip: 'a zip archive',
  picture: 'a picture',
  database: 'a database file',
  binary: 'no text and no workbook',
}

const unsafe: Readonly<Record<string, string>> = {
  'no-directory': 'it is damaged or cut short',
  'too-many-entries': 'it holds far more parts than a workbook has',
  'too-large': 'it would unpack to more than a workbook should hold',
  'too-dense': 'it would unpack to far more than its size',
  'name-leaves-folder': 'it holds names that point outside of it',
  encrypted: 'it is locked with a password',
}

type Words = (problem: Problem) => string

/** What was found, and what to do about it. */
const words: Readonly<Record<ProblemCode, Words>> = {
  'empty-file': () => 'There is nothing in this file. Check that the right one was chosen.',
  'header-only': () => 'The file has headings but no rows. Check that the right file was chosen.',
  'not-a-table': ({ found }) =>
    `This is ${files[found] ?? 'no table'}. Save the records as XLSX, CSV or JSON and read that.`,
  'unsafe-workbook': ({ found }) =>
    `The workbook was not opened: ${unsafe[found] ?? 'its contents are not what it says they are'}. Open it in a spreadsheet program, save it again, and read that.`,
  'broken-workbook': () =>
    'The workbook cannot be read. Open it in a spreadsheet program, save it as XLSX again, and read that.',
  'workbook-too-slow': () =>
    'The workbook took too long to read. Save the sheet of finds as CSV and read that.',
  'no-find-number-column': () =>
    'No column is headed as the find number, so no row can be told from another. Head it “find_number”.',
  'not-of-the-store': ({ found }) =>
    `The headings ${shown(found)} are of no table of the store. Rooms are headed “room”, boxes “box”, rounds “box” and “on”, loggers “serial”, the diary “event” and “on”.`,
  'read-in-old-encoding': () =>
    'The file is not UTF-8; it was read as windows-1252. Check letters with accents.',
  'undecodable-text': ({ found }) =>
    `${found} letters could not be read and stand as �. Save the file as UTF-8 and read it again.`,
  'rows-above-heading': ({ found }) =>
    `This row stands above the headings and was not read: ${shown(found)}.`,
  'other-sheet': ({ found, suggestion }) =>
    `Only the sheet ${shown(suggestion ?? '')} was read; the sheet ${shown(found)} was not.`,
  'other-find-sheet': ({ found, suggestion }) =>
    `The sheet ${shown(found)} holds finds too, but only ${shown(suggestion ?? '')} was read. Put all finds on one sheet, or read them one after the other.`,
  'duplicate-heading': ({ found, suggestion }) =>
    `A second column means “${suggestion ?? found}”. The first is read; this one is kept beside the record. Leave one of them.`,
  'guessed-heading': ({ suggestion }) =>
    `The heading is not known; it was read as “${suggestion}”. Correct it if that is right.`,
  'unknown-column': () => 'This column is not known here. What stands in it is kept with the records.',
  'unbalanced-quote': ({ found }) =>
    `A quotation mark is opened and never closed: ${shown(found)}. The line was read as it stands; close the mark or take it out.`,
  'stray-quote': () => 'A quotation mark stands within a cell. It was read as part of the text.',
  'too-many-cells': ({ found }) =>
    `The row has more cells than there are headings; ${shown(found)} stands beyond them. A comma inside of a cell needs quotes around the cell.`,
  'broken-json': ({ found }) => `This is not valid JSON: ${shown(found)}. Mend it and read it again.`,
  'not-an-object': ({ found }) =>
    `A record must be an object with “find_number” and “components”; found ${shown(found)}.`,
  'no-find-number': () => 'The find number is missing. Write it, so that the find can be planned.',
  'no-place-name': () =>
    'The name that tells this row from others is missing. Write it, so that the row can be kept.',
  'no-day': () => 'The day is missing or was not understood. Write it as year-month-day, as 2026-11-25.',
  'cell-needed': ({ found }) =>
    `${shown(found)} cannot be kept without this. Write it and read the row again.`,
  'unlisted-find': ({ found }) =>
    `No find ${shown(found)} is kept here. Read its record first, or correct the number.`,
  'unlisted-box': ({ found }) =>
    `The box ${shown(found)} is not listed. The row is kept; list the box, or correct its name, and it counts.`,
  'place-repeated': ({ found, suggestion }) =>
    `${shown(found)} stands in row ${suggestion} already, and otherwise. The later row is used; leave only the right one.`,
  'stands-overlap': ({ found, suggestion }) =>
    `The logger stands ${shown(found)} and at the same time ${shown(suggestion ?? '')}. Until that is corrected, readings of the days in question go to where it was put last.`,
  'no-component': () =>
    'The row says nothing of what the find is made of. Write a material; “metal-unidentified” will do.',
  'no-material': () =>
    'The material is missing. The part is planned as unidentified metal until it is written.',
  'unknown-material': ({ found, suggestion }) =>
    `${shown(found)} is no material known here. ${or(suggestion, 'Choose one of the list.')} Until then the part is planned as unidentified metal.`,
  'material-not-told': () => 'The material is given as unknown. The part is planned as unidentified metal.',
  'component-renamed': ({ found, suggestion }) =>
    `Another part of this find is called ${shown(found)}; this one was called ${shown(suggestion ?? '')}. Give each part its own name.`,
  'repeated-row': ({ found }) =>
    `The part ${shown(found)} stands here a second time, word for word. It was read once.`,
  contradiction: ({ found, suggestion }) =>
    `This says ${shown(found)}, an earlier row of the same find ${shown(suggestion ?? '')}. The earlier one is used; leave only the right one.`,
  'core-disagrees': ({ found, suggestion }) =>
    `The core is given as ${shown(found)}, the radiograph shows ${shown(suggestion ?? '')}. The one with more metal is used; look again.`,
  'unknown-value': ({ found, suggestion, field }) => {
    const until =
      field === 'hazards_noticed' && suggestion !== undefined
        ? 'Until it is corrected it is taken for that, to be safe.'
        : 'Until then it counts as not recorded.'
    return `${shown(found)} is not known here. ${or(suggestion, 'Choose from the list, or put it in the notes.')} ${until}`
  },
  'several-values': ({ found }) =>
    `Only one value can stand here; found ${shown(found)}. A find of several materials has one row for each part.`,
  'listed-otherwise': ({ found, suggestion }) =>
    `${shown(found)} was read as ${shown(suggestion ?? '')}. Part values with a semicolon.`,
  'guessed-value': ({ found, suggestion }) => `${shown(found)} was read as “${suggestion}”.`,
  'near-known-kind': ({ found, suggestion }) =>
    `${shown(found)} is kept as it is. ${or(suggestion, '')}`.trim(),
  'blank-word': ({ found }) =>
    `${shown(found)} says nothing here and was read as not recorded. Leave the cell empty.`,
  formula: ({ found }) =>
    `The cell holds a formula, ${shown(found)}, not its value. Put the value in its place.`,
  'spreadsheet-error': ({ found }) =>
    `The spreadsheet could not work this cell out (${found}). Write the value itself.`,
  'not-a-number': ({ found }) =>
    `${shown(found)} is not a number. Write digits only, or leave the cell empty.`,
  'not-whole': ({ found }) => `A whole number is wanted; found ${shown(found)}.`,
  'out-of-range': ({ found, suggestion }) =>
    `${shown(found)} cannot be right; it should lie within ${suggestion}. Check the unit and the point.`,
  'ends-swapped': ({ found, suggestion }) =>
    `${shown(found)} lies beyond ${shown(suggestion ?? '')}, its other end. Both are kept aside until one is corrected.`,
  'wrong-unit': ({ found }) =>
    `The unit of ${shown(found)} is not the one of this column. Give the number in the column’s own unit.`,
  'ambiguous-number': ({ found, suggestion }) =>
    `${shown(found)} may be read in more than one way. Write ${suggestion}, if that is meant. Until then it counts as not recorded.`,
  'number-read': ({ found, suggestion }) => `${shown(found)} was read as ${suggestion}.`,
  'not-a-date': ({ found, suggestion }) =>
    `${shown(found)} is not a day. ${or(suggestion, 'Write it as year-month-day, as 2026-11-25.')}`,
  'ambiguous-date': ({ found, suggestion }) =>
    `${shown(found)} may be ${suggestion}, and nothing in the column tells which. Write it as year-month-day.`,
  'date-read': ({ found, suggestion }) => `${shown(found)} was read as ${suggestion}.`,
  'not-text': ({ found }) => `A text is wanted here; found ${shown(found)}. It is kept as it is.`,
  'unknown-test': ({ found, suggestion }) =>
    `${shown(found)} is no test known here. ${or(suggestion, 'Write it as name:result, as silver-nitrate:negative.')} Until then it counts as not done.`,
  'unknown-test-result': ({ found, suggestion }) =>
    `The result in ${shown(found)} is not known. ${suggestion === undefined ? 'Write it as the list shows.' : `Write ${suggestion}.`} Until then the test counts as not done.`,
  'test-read': ({ found, suggestion }) => `${shown(found)} was read as “${suggestion}”.`,
  'tests-disagree': ({ found }) =>
    `Two results of one test exclude each other: ${shown(found)}. Either may hold; leave only the right one.`,
  'unknown-look': ({ found, suggestion }) =>
    `${shown(found)} answers no question known here. ${or(suggestion, 'Write it as question:answer, as skin-edge:lifting-edge.')} Until then it counts as not looked at.`,
  'unknown-look-answer': ({ found, suggestion }) =>
    `The answer in ${shown(found)} is not known. Write ${suggestion}. Until then the question counts as not answered.`,
  'look-read': ({ found, suggestion }) => `${shown(found)} was read as “${suggestion}”.`,
  'looks-disagree': ({ found }) =>
    `One question has two answers: ${shown(found)}. Neither counts; leave only the right one.`,
  'no-such-part': ({ found, suggestion }) =>
    `${shown(found)} names a part that this find does not have. ${or(suggestion, 'Name one of its parts.')}`,
  'unreadable-treatment': ({ found }) =>
    `${shown(found)} does not say what was done and when. Write it as lacquered@2017-03.`,
}

/** Where it stands: `Row 5, column “core”, find TW-0412`. */
export function problemPlace(problem: Problem): string {
  const row = problem.row === null ? 'The file' : `Row ${problem.row}`
  const sheet = problem.sheet === undefined ? [] : [`sheet “${problem.sheet}”`]
  const line = problem.line === undefined || problem.line === problem.row ? [] : [`line ${problem.line}`]
  const column = problem.column ?? problem.field
  return [
    row,
    ...sheet,
    ...line,
    ...(column === null ? [] : [`column “${column}”`]),
    ...(problem.find === undefined ? [] : [`find ${problem.find}`]),
  ].join(', ')
}

/** What was found and what to do, without the place. */
export const problemAdvice = (problem: Problem): string => words[problem.code](problem)

export const problemWords = (problem: Problem): string =>
  `${problemPlace(problem)}: ${problemAdvice(problem)}`
