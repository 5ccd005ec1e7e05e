import type { LogProblem, LogProblemCode } from '../logger/log-problem.ts'

type Words = (problem: LogProblem) => string

const shown = (text: string) => `“${text}”`
const many = (count: number) => count.toLocaleString('en-GB')
const lines = ({ count }: LogProblem) => (count === 1 ? 'one line' : `${many(count)} lines`)
const cells = ({ count }: LogProblem) => (count === 1 ? 'one value' : `${many(count)} values`)
const readings = ({ count }: LogProblem) => (count === 1 ? 'one reading' : `${many(count)} readings`)
const asCsv = 'Save the readings as CSV from the logger’s own program and read that.'

/** What was found, and what to do about it. */
const words: Readonly<Record<LogProblemCode, Words>> = {
  // the file
  'empty-file': () => 'There is nothing in this file. Check that the right one was chosen.',
  'spreadsheet-file': () => 'This is a spreadsheet. Save its sheet of readings as CSV and read that.',
  'old-spreadsheet-file': () =>
    'This is an old spreadsheet (.xls). Save its sheet of readings as CSV and read that.',
  'document-file': () => `This is a text document. ${asCsv}`,
  'pdf-file': () => `This is a PDF; its figures cannot be read back. ${asCsv}`,
  'picture-file': () => `This is a picture; its figures cannot be read back. ${asCsv}`,
  'archive-file': () => 'This is an archive of files. Unpack it and read the file of readings.',
  'database-file': () => `This is a database file. ${asCsv}`,
  'binary-file': () => `This is no text: perhaps the logger’s own format. ${asCsv}`,
  'web-page': () =>
    'This is a web page, whatever its name says. Open it in a spreadsheet program, save the table as CSV, and read that.',
  'json-file': () => `This is JSON, not lines of readings. ${asCsv}`,
  'xml-file': () => `This is XML, not lines of readings. ${asCsv}`,
  'no-readings': ({ found }) =>
    `No line of it is a reading with a date, a time and a value. It begins ${shown(found)}. Check that the right file was chosen.`,
  'headings-only': () => 'There are headings and no readings. Check that the logger was read out.',
  'no-stamp-column': ({ found }) =>
    `No column tells when: ${shown(found)}. Have the logger’s program write date and time with each reading.`,
  'dates-missing': ({ found }) =>
    `There are times of day and no dates: ${shown(found)}. Have the logger’s program write the date with each reading.`,
  'no-value-column': ({ found }) =>
    `No column is of temperature or humidity: ${shown(found)}. Say which it is, or choose another file.`,
  'no-humidity': () => 'The file holds no humidity. Only its temperatures were read.',
  'no-temperature': () => 'The file holds no temperature. Only its humidities were read.',
  'read-in-old-encoding': () =>
    'The file is not UTF-8; it was read as windows-1252. Check names with accents.',
  'utf-16-without-mark': () => 'The file is UTF-16 and does not say so; it was read as that.',
  'undecodable-text': (problem) =>
    `Letters that could not be read stand as � on ${lines(problem)}, first ${shown(problem.found)}. Numbers and dates are not touched by it.`,
  'zero-bytes': (problem) =>
    `There are empty bytes in ${lines(problem)}: memory that was never written. They were passed over; look whether readings are missing there.`,
  'invisible-marks': (problem) =>
    `Marks that cannot be seen stood in ${lines(problem)}; they were passed over.`,
  'other-digits': (problem) => `Digits of another script were read as 0 to 9 on ${lines(problem)}.`,
  'lone-carriage-returns': () => 'Lines end in an old way here; each was read as a line of its own.',
  'one-reading': () => 'There is one reading only. Check that the logger was read out completely.',
  'all-in-one-moment': (problem) =>
    `All readings carry the same moment, ${problem.found}; only the first was kept. The logger’s clock stood still: have it looked at.`,
  // the table
  'heading-repeated': ({ count }) =>
    `The headings stand in it ${count === 1 ? 'once' : `${many(count)} times`} more; what follows them was read on.`,
  'second-table': ({ found }) => `Another table begins here, headed ${shown(found)}; it was read too.`,
  'columns-changed': ({ found }) =>
    `From here on the columns stand in another order: ${shown(found)}. They were read as they are headed.`,
  'columns-seem-swapped': ({ found }) =>
    `Temperature and humidity seem to change places here (${found}) though the headings do not say so. They were read as headed: compare with another logger.`,
  'delimiter-changed': (problem) =>
    `The cells of ${lines(problem)} are parted by another mark than the rest: ${shown(problem.found)}. They were read; check them.`,
  'decimal-marks-mixed': (problem) =>
    `The decimal mark changes in ${cells(problem)}, first ${shown(problem.found)}. Each was read by its own mark; check them.`,
  'decimal-comma-between-commas': ({ found }) =>
    `Commas part the cells and the decimals alike: ${shown(found)}. Two cells were read as one number each time; have the file written with semicolons.`,
  'thousands-marks': (problem) =>
    `There are marks between thousands in ${cells(problem)}, first ${shown(problem.found)}; they were passed over.`,
  'column-not-read': ({ found }) => `The column ${shown(found)} was not read.`,
  'column-repeated': ({ found }) =>
    `The column ${shown(found)} stands there twice with the same values; it was read once.`,
  'channel-without-values': ({ found }) =>
    `${found === '' ? 'The sensor' : `The sensor ${shown(found)}`} gave no value in the whole file. Check that it is connected.`,
  'too-many-sensors': (problem) =>
    `The column that names the sensor names more than anybody has: ${lines(problem)} were not read. Say what that column is.`,
  // the line
  'line-not-read': (problem) =>
    `Between the readings ${problem.count === 1 ? 'stands one line that is none' : `stand ${many(problem.count)} lines that are none`}, first ${shown(problem.found)}. They were passed over.`,
  'comment-lines': (problem) =>
    `There are remarks between the readings, first ${shown(problem.found)}; they were passed over.`,
  'footer-lines': (problem) =>
    `Below the readings ${problem.count === 1 ? 'stands a line' : `stand ${many(problem.count)} lines`} that is none of them, first ${shown(problem.found)}.`,
  'line-too-long': (problem) =>
    `A line is far too long to be a reading (${lines(problem)}), beginning ${shown(problem.found)}. It was passed over: look whether the file is damaged.`,
  'line-cut-short': ({ found }) =>
    `The last line is cut short: ${shown(found)}. What may be incomplete of it was left out; read the logger out again.`,
  'too-few-cells': (problem) =>
    `Cells are missing on ${lines(problem)}, first ${shown(problem.found)}. What stands there was read; the rest counts as not measured.`,
  'too-many-cells': (problem) =>
    `There are more cells than columns on ${lines(problem)}, first ${shown(problem.found)}. Those beyond the last column were not read.`,
  'quote-not-closed': (problem) =>
    `A quotation mark is opened and never closed on ${lines(problem)}, first ${shown(problem.found)}. The line was read as if it were not there.`,
  // the stamp
  'stamp-missing': (problem) =>
    `The date and time are missing on ${lines(problem)}, first ${shown(problem.found)}. Without them the reading has no place; it was left out.`,
  'stamp-unreadable': (problem) =>
    `The date and time cannot be read on ${lines(problem)}, first ${shown(problem.found)}. Those readings were left out.`,
  'date-does-not-exist': (problem) =>
    `There is no such day on ${lines(problem)}, first ${shown(problem.found)}. Those readings were left out.`,
  'time-does-not-exist': (problem) =>
    `There is no such time on ${lines(problem)}, first ${shown(problem.found)}. Those readings were left out.`,
  'stamp-without-time': (problem) =>
    `There is a date and no time on ${lines(problem)}, first ${shown(problem.found)}. It was read as midnight: check that.`,
  'hour-24': (problem) => `${shown(problem.found)} was read as midnight of the next day (${lines(problem)}).`,
  'leap-second': (problem) => `${shown(problem.found)} is a leap second; it was read as the second after it.`,
  'year-of-two-digits': ({ found }) =>
    `Years are written with two digits; they were read as of 1970 to 2069, so that the first is ${found}.`,
  'clocks-mixed': (problem) =>
    `Some times say AM or PM and others do not (${lines(problem)}, first ${shown(problem.found)}). Each was read as it stands: check those before one o’clock and after noon.`,
  'date-orders-mixed': (problem) =>
    `The dates of ${lines(problem)} contradict the order of all others, first ${shown(problem.found)}. Those readings were left out; look whether two files were joined.`,
  'offsets-mixed': (problem) =>
    `Some stamps say how far their clock is from UTC and others do not (${lines(problem)}, first ${problem.found}). Those without were read in the zone of the file.`,
  'clock-not-set': (problem) =>
    `The clock of the logger was not set for ${readings(problem)}, first ${problem.found}. Their moment is not known and they were left out: set the clock, and write down when it was changed.`,
  'clock-set-back': (problem) =>
    `The clock runs back by more than a day (${problem.found}). The readings were put in order by their stamps: find out whether the clock was reset.`,
  'clock-jumps-ahead': (problem) =>
    `More than a year lies between two readings (${problem.found}). Find out whether the logger was idle or its clock was wrong.`,
  'stamps-in-future': (problem) =>
    `${readings(problem)} are later than the day the file was handed over, first ${problem.found}. They were kept: check the logger’s clock.`,
  'stamps-backward': (problem) =>
    `Time runs back at ${lines(problem)} (first ${problem.found}). The readings were put in order.`,
  'newest-first': () => 'The newest reading stands first; the file was read from its end.',
  'reading-repeated': (problem) =>
    `The same reading stands there again on ${lines(problem)}, first ${problem.found}. It was kept once; that is harmless.`,
  'readings-disagree': (problem) =>
    `${problem.count === 1 ? 'One moment is' : `${many(problem.count)} moments are`} told a second time with other values, first ${problem.found}. The first of the file was kept: look whether two loggers were joined.`,
  'unknown-time-zone': ({ found }) =>
    `${shown(found)} is no time zone known here. Give one as Europe/London, or a fixed offset as +01:00.`,
  'zone-said-in-file': ({ found }) =>
    `The file says itself how its clock was set (${shown(found)}); it was read by that. If it is wrong, give a fixed offset such as +01:00.`,
  'skipped-by-clock-change': (problem) =>
    `${readings(problem)} carry a time that clocks of this zone skipped in spring, first ${problem.found}. They were left out: if the logger’s clock is never changed, give its fixed offset instead.`,
  'hour-told-twice': (problem) =>
    `${readings(problem)} fall into the hour that clocks show twice in autumn, and nothing tells which is meant, first ${problem.found}. The first showing was taken.`,
  'clock-not-changed': ({ found }) =>
    `The readings run on over a change of the clocks without a break: the logger’s clock was left alone. The file was read so (${found}). If its clock was set otherwise, give its fixed offset.`,
  // the value
  'empty-cells': (problem) =>
    `There is no value in ${many(problem.count)} ${problem.count === 1 ? 'cell' : 'cells'} of this column; those count as not measured.`,
  'sensor-error': (problem) =>
    `The logger wrote ${shown(problem.found)} in place of ${cells(problem)}: the sensor gave none. If it goes on, have the sensor looked at.`,
  'value-unreadable': (problem) =>
    `There is no number in ${cells(problem)} of this column, first ${shown(problem.found)}. Those count as not measured.`,
  'formula-cell': (problem) =>
    `A formula stands in place of ${cells(problem)}, first ${shown(problem.found)}. Save the file with the values themselves.`,
  'wrong-unit': (problem) =>
    `The unit behind ${cells(problem)} is not one of this column, first ${shown(problem.found)}. Those were left out.`,
  'humidity-out-of-range': (problem) =>
    `A relative humidity cannot be ${problem.found} %: ${cells(problem)} were left out. Have the sensor looked at.`,
  'humidity-over-100': (problem) =>
    `${cells(problem)} of humidity lie above 100 %, first ${problem.found}: water on the sensor, or its error. They were kept as they are.`,
  'humidity-as-fraction': () =>
    'Humidities of this column are told as parts of one; they were read as percent.',
  'temperature-out-of-range': (problem) =>
    `A store cannot have had ${problem.found} degrees: ${cells(problem)} were left out. Check the unit, then the sensor.`,
  'read-as-fahrenheit': () => 'Temperatures of this column are in °F; they were turned into °C.',
  'read-as-kelvin': () => 'Temperatures of this column are in K; they were turned into °C.',
}

/** Where it stands: `Line 5, column “RH (%)”`. */
export function logProblemPlace({ line, column, count }: LogProblem): string {
  const where = line === null ? 'The file' : `${count > 1 ? 'From line' : 'Line'} ${many(line)}`
  return column === null || column === '' ? where : `${where}, column “${column}”`
}

const begun = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1)

/** What was found and what to do, without the place. */
export const logProblemAdvice = (problem: LogProblem): string => begun(words[problem.code](problem))

export const logProblemWords = (problem: LogProblem): string =>
  `${logProblemPlace(problem)}: ${logProblemAdvice(problem)}`
