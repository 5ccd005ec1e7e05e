import { describe, expect, test } from 'vitest'
import { noAnswers } from '../../../lib/logger/read/log-answers.ts'
import { openReading } from '../../../lib/logger/read/open-reading.ts'
import { readLog } from '../../../lib/logger/read/read-log.ts'
import { everything } from './everything.ts'
import { bytesOf, heading, quiet, quietReads, readsOf } from './hostile.ts'

const answers = { ...noAnswers, timeZone: 'UTC' }

/** What reading a text costs: lines read with care and templates tried, the same on every machine. */
function stepsOf(text: string): number {
  const reading = openReading(answers, {})
  reading.feed(bytesOf(text))
  const { outcome } = reading.end()
  return 'state' in outcome ? outcome.state.steps : 0
}

const small = everything.filter(
  (given): given is typeof given & { readonly file: string } =>
    typeof given.file === 'string' && given.file.length < 20_000 && given.reads.length > 0,
)

describe('a hostile file forty times as long', () => {
  test.each(small)('costs no more than in proportion: $name', ({ file }) => {
    const times = 40
    const whole = file.endsWith('\n') ? file : `${file}\n`
    const lines = whole.split('\n').length
    const steps = stepsOf(whole.repeat(times))
    expect(steps).toBeGreaterThan(0)
    // Every line may be tried with each of the templates kept, and read with care; a new heading is surveyed once more.
    expect(steps).toBeLessThanOrEqual(times * (1.2 * stepsOf(whole) + 64 + 2 * lines))
  })
})

/** Pieces that patterns may trip over when they are repeated to the longest line. */
const pieces = [
  ...'1 ,;\t|".-:(%°a=#\\/\'[{<٠é',
  '1 ',
  '1,',
  "1'",
  '1.',
  ' "',
  '""',
  '( ',
  '2024-',
  '1/',
  '5 May ',
  'e+',
  '10:',
  'temp ',
  'rh% ',
  '\ufffd',
  '\u200f',
  '- ',
  '=1',
]
const longest = 65_000
const filled = (piece: string) => piece.repeat(Math.ceil(longest / piece.length)).slice(0, longest)

describe('a line of one thing over and over', () => {
  test.each(pieces)('comes to an end, and the readings about it are read: %j', (piece) => {
    const long = filled(piece)
    const file = [heading, ...quiet(2), long, `2024-05-06 07:20,${long},45.2`, ...quiet(2, 3)].join('\n')
    const read = readsOf(readLog(bytesOf(`${file}\n`), answers))
    expect(read).toEqual(expect.arrayContaining([...quietReads(2), ...quietReads(2, 3)]))
  })

  test.each(pieces)('is no heading that holds up the rest: %j', (piece) => {
    const long = filled(piece)
    const block = `${long}\nname: ${long}\n`
    const read = readsOf(readLog(bytesOf(`${block}${heading}\n${quiet(3).join('\n')}\n`), answers))
    expect(read).toEqual(quietReads(3))
    const over = `time,${long},t °C,rh %\n${quiet(2)
      .map((line) => line.replace(',', ',x,'))
      .join('\n')}\n`
    expect(readLog(bytesOf(over), answers).rows.lines).toBe(3)
  })
})
