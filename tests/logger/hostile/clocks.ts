import { quiet, quietReads, table, type Hostile } from './hostile.ts'

const lines = (stamps: readonly string[]) => table(...stamps.map((stamp, at) => `${stamp},20,45.${at % 10}`))
const out = (stamps: readonly string[]) => stamps.map((stamp, at) => `${stamp} 20 ${Number(`45.${at % 10}`)}`)
const two = (number: number) => String(number).padStart(2, '0')
/** Half hours from the first on, as a clock shows that nobody changes. */
const halves = (day: string, fromHour: number, count: number) =>
  Array.from({ length: count }, (_, at) => `${day} ${two(fromHour + (at >> 1))}:${at % 2 ? '30' : '00'}`)

const spring = '2024-03-31'
const autumn = '2024-10-27'

/** What the change of the clocks does to a file, and what is asked of its zone. */
export const clocks: readonly Hostile[] = [
  {
    name: 'a zone that nobody said',
    file: table(...quiet(3)),
    answers: { timeZone: null },
    reads: quietReads(3),
    tells: [],
    asks: ['time-zone: cannot-tell'],
  },
  {
    name: 'a zone that is none',
    file: table(...quiet(3)),
    answers: { timeZone: 'Mars/Olympus' },
    reads: quietReads(3),
    tells: ['unknown-time-zone'],
    asks: ['time-zone: not-a-zone'],
  },
  {
    name: 'a zone named above the table',
    file: `Time zone: UTC+02:00\n${table('2024-05-06 09:00,20,45', '2024-05-06 09:10,20.1,45.1')}`,
    answers: { timeZone: null },
    reads: quietReads(2),
    tells: [],
  },
  {
    name: 'a zone named over the stamps',
    file: `"taken at, GMT-05:00","t °C","rh %"\n2024-05-06 02:00,20,45\n2024-05-06 02:10,20.1,45.1\n`,
    answers: { timeZone: null },
    reads: quietReads(2),
    tells: [],
  },
  {
    name: 'a zone named above the table, another one answered',
    file: `Time zone: UTC+02:00\n${table('2024-05-06 09:00,20,45', '2024-05-06 09:10,20.1,45.1')}`,
    answers: { timeZone: 'Europe/London' },
    reads: quietReads(2),
    tells: ['zone-said-in-file @1'],
  },
  {
    name: 'a zone named above the table, an offset given for the file',
    file: `Time zone: UTC+02:00\n${table('2024-05-06 08:00,20,45', '2024-05-06 08:10,20.1,45.1')}`,
    answers: { timeZone: '+01:00' },
    reads: quietReads(2),
    tells: [],
  },
  {
    name: 'a name above the table that several zones share',
    file: `Time zone: GMT Standard Time\n${table(...quiet(3))}`,
    answers: { timeZone: null },
    reads: quietReads(3),
    tells: [],
    asks: ['time-zone: named-in-heading'],
  },
  {
    name: 'the hour that is skipped in spring',
    file: lines([...halves(spring, 0, 2), ...halves(spring, 2, 6)]),
    answers: { timeZone: 'Europe/London' },
    reads: out(halves(spring, 0, 8)),
    tells: [],
  },
  {
    name: 'the hour that is shown twice in autumn',
    file: lines([...halves(autumn, 0, 4), ...halves(autumn, 1, 6)]),
    answers: { timeZone: 'Europe/London' },
    reads: out([`2024-10-26 23:00`, `2024-10-26 23:30`, ...halves(autumn, 0, 8)]),
    tells: [],
  },
  {
    name: 'the hour that is skipped, the zone not said',
    file: lines([...halves(spring, 0, 2), ...halves(spring, 2, 6)]),
    answers: { timeZone: null },
    reads: out(halves(spring, 0, 8)),
    tells: [],
    asks: ['time-zone: hour-skipped-or-repeated → Europe/London'],
  },
  {
    name: 'a clock nobody changes, the zone not said',
    file: lines(halves(spring, 0, 12)),
    answers: { timeZone: null },
    reads: out(halves(spring, 0, 12)),
    tells: [],
    asks: ['time-zone: no-hour-skipped'],
  },
  {
    name: 'a clock nobody changes, in a zone that does',
    file: lines(halves(spring, 0, 12)),
    answers: { timeZone: 'Europe/Berlin' },
    reads: out(['2024-03-30 23:00', '2024-03-30 23:30', ...halves(spring, 0, 10)]),
    tells: ['clock-not-changed @2'],
  },
  {
    name: 'a clock started in summer that nobody changes',
    file: lines(halves(autumn, 0, 12)),
    answers: { timeZone: 'Europe/London' },
    reads: out(['2024-10-26 23:00', '2024-10-26 23:30', ...halves(autumn, 0, 10)]),
    tells: ['clock-not-changed @2'],
  },
  {
    name: 'a stamp within the hour that is skipped',
    file: lines([...halves(spring, 0, 2), `${spring} 01:15`, ...halves(spring, 2, 6)]),
    answers: { timeZone: 'Europe/London' },
    reads: [
      ...out(halves(spring, 0, 2)),
      ...halves(spring, 1, 6).map((stamp, at) => `${stamp} 20 ${Number(`45.${at + 3}`)}`),
    ],
    tells: ['skipped-by-clock-change @4'],
    unreadable: 1,
  },
  {
    name: 'a reading in the hour shown twice, alone between gaps',
    file: lines([...halves('2024-10-26', 10, 6), `${autumn} 01:10`, ...halves(autumn, 12, 4)]),
    answers: { timeZone: 'Europe/London' },
    reads: [
      ...out(halves('2024-10-26', 9, 6)),
      `${autumn} 00:10 20 45.6`,
      ...halves(autumn, 12, 4).map((stamp, at) => `${stamp} 20 ${Number(`45.${(at + 7) % 10}`)}`),
    ],
    tells: ['hour-told-twice @8'],
  },
  {
    name: 'a file that begins within the second showing',
    file: lines([`${autumn} 01:30`, ...halves(autumn, 2, 8)]),
    answers: { timeZone: 'Europe/London' },
    reads: out([`${autumn} 01:30`, ...halves(autumn, 2, 8)]),
    tells: [],
  },
]
