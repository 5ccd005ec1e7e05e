import { describe, expect, it } from 'vitest'
import { tellLog, type LogAsked } from '../../lib/services/tell-log.ts'
import { chanceWords } from '../../lib/wording/logger-limits.ts'
import { logLines, logText, zoneSaid } from '../../lib/wording/logger-text.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { at, day, every, hour, start, workedDay } from '../logger/at-hand.ts'

const asked: LogAsked = {
  maxRhPercent: 15,
  minRhPercent: null,
  sensorErrorRhPercent: 3,
  floorRhPercent: null,
  percentiles: [7, 50, 93],
  percentileMethod: 'linear',
  doseMethod: 'rectangle',
}
type Readings = ReturnType<typeof every>
const lines = (series: Readings, more: Partial<LogAsked> = {}) =>
  logLines(tellLog({ name: '', serial: null, series }, { ...asked, ...more }, knowledge), 'UTC')
const said = (series: Readings, more: Partial<LogAsked> = {}) => lines(series, more).join(' ')

describe('what a log says', () => {
  it('tells how long, how far and when', () => {
    const text = said(every(hour, workedDay))
    expect(text).toContain(
      '24 readings, one every 1 h, 1 March 2026, 00:00 to 23:00 (UTC); nothing is missing.',
    )
    expect(text).toContain(
      '11 h above 15 %, 46 % of the time, at one time; worst 27 % on 1 March 2026, 12:00.',
    )
    expect(text).toContain('In all 66 %·h beyond it.')
    expect(text).toContain('A sensor that is off by 3 % may make that anything from 7 h to 24 h.')
    expect(text).toContain('No temperature was read.')
  })

  it('tells how sure a reading near the limit is', () => {
    const text = said(every(hour, [12, 13, 12]))
    expect(text).toContain('Never above 15 %.')
    expect(text).toContain('9 % chance that a reading of 13 % was really over 15 %.')
    expect(said(every(hour, [2, 2, 2]))).not.toContain('chance')
    expect(said(every(hour, [12, 12, 12]))).toContain(
      'Never above 15 %, not even if the sensor is off by 3 %.',
    )
    expect([0.0001, 0.0912, 0.9999].map(chanceWords)).toEqual([
      'less than 1 % chance',
      '9 % chance',
      'more than 99 % chance',
    ])
  })

  it('tells what is missing', () => {
    const holes = at(
      [0, 1, 2, 20, 21, 22].map((n) => start + n * hour),
      [10, 10, 10, 10, 10, 10],
    )
    const text = said(holes)
    expect(text).toContain('1 gap, the longest 18 h from 1 March 2026, 02:00; 26.1 % of the time was read.')
    expect(text).toContain('hardly stand')
  })

  it('tells of a floor, and never a mean below it as if it were read', () => {
    const flat = every(hour, [...Array<number>(40).fill(10), ...Array.from({ length: 20 }, (_, n) => 11 + n)])
    const text = said(flat, { maxRhPercent: 8 })
    expect(text).toContain(
      'This logger reads nothing below 10 %, as its flat line shows: 67 % of its readings lie there',
    )
    expect(text).toContain('For 40 h nobody can tell: the logger does not read so low.')
    expect(text).toContain('Mean at most ')
  })

  it('tells both ends of a band, and that it was still beyond when the readings end', () => {
    const text = said(every(hour, [50, 44, 50, 56]), { maxRhPercent: 55, minRhPercent: 45 })
    expect(text).toContain('1 h below 45 %')
    expect(text).toContain('worst 56 % on 1 March 2026, 03:00, and still so when the readings end')
  })

  it('tells the seasonal band of a long log, for organic materials', () => {
    const long = every(
      6 * hour,
      Array.from({ length: 4 * 420 }, (_, n) => 50 + 5 * Math.sin((n * Math.PI) / 2)),
    )
    expect(said(long, { maxRhPercent: null })).toMatch(
      /seasonal level it swings from -\d.*for organic materials/,
    )
    expect(said(every(day, [50, 51]), { maxRhPercent: null })).not.toContain('seasonal')
  })

  it('tells the water in the air', () => {
    expect(said(every(hour, [50, 50], [20, 20]))).toContain(
      'Temperature 20 °C throughout; 8.6 g of water in a cubic metre of air; dew would form at 9.3 °C.',
    )
    expect(said(every(hour, [15, 15], [20, 20]))).toContain('frost would form at -6.6 °C')
  })

  it('tells nothing of nothing', () => {
    expect(lines(every(hour, []))).toEqual(['No humidity was read.', 'No temperature was read.'])
  })

  it('fits a terminal', () => {
    const told = tellLog({ name: '', serial: null, series: every(hour, workedDay) }, asked, knowledge)
    expect(
      logText(told, 'UTC')
        .split('\n')
        .every((line) => line.length <= 96 && line.startsWith('  ')),
    ).toBe(true)
  })

  it('says by which clock it was read', () => {
    expect(zoneSaid({ timeZone: { zone: 'UTC', how: 'assumed' } })).toContain('--time-zone')
    expect(zoneSaid({ timeZone: { zone: 'Europe/London', how: 'answered' } })).toContain('Europe/London')
  })
})
