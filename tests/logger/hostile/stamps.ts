import { quiet, quietReads, table, type Hostile } from './hostile.ts'

const slashes = (...stamps: readonly string[]) => table(...stamps.map((stamp) => `${stamp},20,45`))
const reads = (...stamps: readonly string[]) => stamps.map((stamp) => `${stamp} 20 45`)
const twelveDays = Array.from({ length: 12 }, (_, at) => String(at + 1).padStart(2, '0'))
/** Ten minutes apart, as a clock on the wall shows them; hours and minutes from the first on. */
const clock = (day: string, ...times: readonly string[]) => times.map((time) => `${day} ${time}`)

/** What may be wrong with the stamps. */
export const stamps: readonly Hostile[] = [
  {
    name: 'one reading',
    file: table(...quiet(1)),
    reads: quietReads(1),
    tells: ['one-reading @2'],
  },
  {
    name: 'days that do not exist',
    file: slashes('28/02/2023 10:00', '29/02/2023 10:00', '31/04/2023 10:00', '13/13/2023 10:00'),
    reads: reads('2023-02-28 10:00'),
    tells: ['date-does-not-exist @3 ×3', 'one-reading @2'],
    unreadable: 3,
  },
  {
    name: 'times that do not exist',
    file: slashes('2024-05-06 23:50', '2024-05-06 25:00', '2024-05-06 07:61', '2024-05-07 00:00'),
    reads: reads('2024-05-06 23:50', '2024-05-07 00:00'),
    tells: ['time-does-not-exist @3 ×2'],
    unreadable: 2,
  },
  {
    name: 'hour 24',
    file: slashes('2024-05-06 23:50', '2024-05-06 24:00', '2024-05-07 00:10'),
    reads: reads('2024-05-06 23:50', '2024-05-07 00:00', '2024-05-07 00:10'),
    tells: ['hour-24 @3'],
  },
  {
    name: 'a leap second',
    file: slashes('2016-12-31T23:59:50Z', '2016-12-31T23:59:60Z', '2017-01-01T00:00:10Z'),
    reads: reads('2016-12-31 23:59:50', '2017-01-01 00:00', '2017-01-01 00:00:10'),
    tells: ['leap-second @3'],
  },
  {
    name: 'AM and PM on some lines only',
    file: slashes('05/13/2024 11:50 AM', '05/13/2024 12:00 PM', '05/13/2024 13:10', '05/13/2024 01:20 PM'),
    reads: reads('2024-05-13 11:50', '2024-05-13 12:00', '2024-05-13 13:10', '2024-05-13 13:20'),
    tells: ['clocks-mixed @4'],
  },
  {
    name: 'midnight and noon by AM and PM',
    file: slashes(
      '05/13/2024 12:00:00 AM',
      '05/13/2024 12:00:00 PM',
      '05/13/2024 12:30:00 PM',
      '05/13/2024 1:00:00 PM',
    ),
    reads: reads('2024-05-13 00:00', '2024-05-13 12:00', '2024-05-13 12:30', '2024-05-13 13:00'),
    tells: [],
  },
  {
    name: 'dates of either order',
    file: slashes('05/06/2024 07:00', '05/06/2024 07:10', '05/06/2024 07:20'),
    reads: reads('2024-06-05 07:00', '2024-06-05 07:10', '2024-06-05 07:20'),
    tells: [],
    asks: ['date-order: both-orders-fit → day-first'],
  },
  {
    name: 'dates of either order, answered',
    file: slashes('05/06/2024 07:00', '05/06/2024 07:10', '05/06/2024 07:20'),
    answers: { dateOrder: 'month-first' },
    reads: reads('2024-05-06 07:00', '2024-05-06 07:10', '2024-05-06 07:20'),
    tells: [],
  },
  {
    name: 'dates whose order shows on the last line',
    file: slashes(...twelveDays.map((day) => `03/${day}/2024 07:00`), '03/13/2024 07:00'),
    reads: reads(...[...twelveDays, '13'].map((day) => `2024-03-${day} 07:00`)),
    tells: [],
  },
  {
    name: 'dates whose order shows in how readings follow each other',
    file: slashes(
      ...clock('05/06/2024', '23:30', '23:40', '23:50'),
      ...clock('06/06/2024', '00:00', '00:10', '00:20'),
    ),
    reads: reads(
      ...clock('2024-06-05', '23:30', '23:40', '23:50'),
      ...clock('2024-06-06', '00:00', '00:10', '00:20'),
    ),
    tells: [],
  },
  {
    name: 'one date against the order of the others',
    file: slashes(
      ...Array.from({ length: 14 }, (_, at) => `${String(at + 8).padStart(2, '0')}/03/2024 07:00`),
      '03/30/2024 07:00',
    ),
    reads: reads(
      ...Array.from({ length: 14 }, (_, at) => `2024-03-${String(at + 8).padStart(2, '0')} 07:00`),
    ),
    tells: ['date-orders-mixed @16'],
    unreadable: 1,
  },
  {
    name: 'two files of different order joined',
    file: slashes(
      '13/05/2024 07:00',
      '14/05/2024 07:00',
      '05/15/2024 07:00',
      '05/16/2024 07:00',
      '05/17/2024 07:00',
    ),
    reads: reads('2024-05-15 07:00', '2024-05-16 07:00', '2024-05-17 07:00'),
    tells: ['date-orders-mixed @2 ×2'],
    asks: ['date-order: stamps-contradict → month-first'],
    unreadable: 2,
  },
  {
    name: 'years of two digits',
    file: slashes('30/12/99 07:00', '31/12/99 07:00', '01/01/00 07:00'),
    reads: reads('1999-12-30 07:00', '1999-12-31 07:00', '2000-01-01 07:00'),
    tells: ['year-of-two-digits @2'],
  },
  {
    name: 'years of two digits that stand first',
    file: slashes('24-05-30 07:00', '24-05-31 07:00', '24-06-01 07:00', '24-06-02 07:00'),
    reads: reads('2024-05-30 07:00', '2024-05-31 07:00', '2024-06-01 07:00', '2024-06-02 07:00'),
    tells: ['year-of-two-digits @2'],
  },
  {
    name: 'months named in German and French',
    file: 'Datum;t °C;rh %\n5. März 2024 07:00;20;45\n6 août 2024 07:00;20;45\n7-Dez-2024 07:00;20;45\n',
    reads: reads('2024-03-05 07:00', '2024-08-06 07:00', '2024-12-07 07:00'),
    tells: [],
  },
  {
    name: 'seconds since 1970',
    file: table('1714978800,20,45', '1714979400,20.1,45.1'),
    reads: quietReads(2),
    tells: [],
  },
  {
    name: 'milliseconds since 1970, with marks between thousands',
    file: 'time;t °C;rh %\n1714978800000;20;45\n1,714,979,400,000;20.1;45.1\n',
    reads: quietReads(2),
    tells: [],
  },
  {
    name: 'days as a spreadsheet counts them',
    file: 'time;t °C;rh %\n45418.2916666667;20;45\n45418.2986111111;20.1;45.1\n',
    reads: quietReads(2),
    tells: [],
  },
  {
    name: 'times of day without a date',
    file: 'time,t °C,rh %\n07:00,20,45\n07:10,20,45\n',
    reads: [],
    tells: ['dates-missing @2'],
  },
  {
    name: 'no stamps at all',
    file: 't °C,rh %\n20,45\n20.1,45.1\n',
    reads: [],
    tells: ['no-stamp-column @2'],
  },
  {
    name: 'dates without a time of day',
    file: slashes('2024-05-06', '2024-05-07', '2024-05-08'),
    reads: reads('2024-05-06 00:00', '2024-05-07 00:00', '2024-05-08 00:00'),
    tells: ['stamp-without-time @2 ×3'],
  },
  {
    name: 'stamps missing and stamps that are none',
    file: table(...quiet(2), ',20,45', 'yesterday,20,45', ...quiet(1, 2)),
    reads: quietReads(3),
    tells: ['stamp-missing @4', 'stamp-unreadable @5'],
    unreadable: 2,
  },
  {
    name: 'a clock that begins anew in 1970',
    file: table(...quiet(2), '1970-01-01 00:00,20,45', '1970-01-01 00:10,20,45', ...quiet(2, 2)),
    reads: quietReads(4),
    tells: ['clock-not-set @4 ×2'],
    unreadable: 2,
  },
  {
    name: 'a clock in 2099',
    file: table(...quiet(2), '2099-12-31 23:50,20,45', ...quiet(1, 2)),
    reads: quietReads(3),
    tells: ['clock-not-set @4'],
    unreadable: 1,
  },
  {
    name: 'a clock set back by a year',
    file: table(...quiet(3), '2023-05-06 07:30,20.3,45.3', '2023-05-06 07:40,20.4,45.4'),
    reads: ['2023-05-06 07:30 20.3 45.3', '2023-05-06 07:40 20.4 45.4', ...quietReads(3)],
    tells: ['clock-jumps-ahead @2', 'clock-set-back @5'].slice(1),
  },
  {
    name: 'a clock that leaps ahead by two years',
    file: table(...quiet(2), '2026-05-06 07:20,20.2,45.2'),
    reads: [...quietReads(2), '2026-05-06 07:20 20.2 45.2'],
    tells: ['clock-jumps-ahead @4'],
  },
  {
    name: 'stamps later than the day the file came',
    file: table(...quiet(3)),
    answers: { receivedAtMs: Date.UTC(2024, 3, 1) },
    reads: quietReads(3),
    tells: ['stamps-in-future @2 ×3'],
  },
  {
    name: 'all readings at one moment',
    file: table(...quiet(4).map((line) => line.replace(/07:\d\d/, '07:00'))),
    reads: quietReads(1),
    tells: ['all-in-one-moment @3 ×3'],
  },
  {
    name: 'a stamp that runs back',
    file: table(...quiet(4), '2024-05-06 07:05,21,46', ...quiet(1, 4)),
    reads: [...quietReads(1), '2024-05-06 07:05 21 46', ...quietReads(4, 1)],
    tells: ['stamps-backward @6'],
  },
  {
    name: 'the newest reading first',
    file: table(...quiet(5).toReversed()),
    reads: quietReads(5),
    tells: ['newest-first @2'],
  },
  {
    name: 'a reading told again',
    file: table(...quiet(4), quiet(1, 3)[0]!, ...quiet(1, 4)),
    reads: quietReads(5),
    tells: ['reading-repeated @6'],
  },
  {
    name: 'the whole file twice',
    file: table(...quiet(5), ...quiet(5)),
    reads: quietReads(5),
    tells: ['reading-repeated @7 ×5'],
  },
  {
    name: 'a moment told otherwise the second time',
    file: table(...quiet(4), '2024-05-06 07:30,25,50', ...quiet(1, 4)),
    reads: quietReads(5),
    tells: ['readings-disagree @6'],
  },
  {
    name: 'stamps with and without an offset',
    file: slashes('2024-05-06 07:00Z', '2024-05-06 09:10+02:00', '2024-05-06 07:20'),
    reads: reads('2024-05-06 07:00', '2024-05-06 07:10', '2024-05-06 07:20'),
    tells: ['offsets-mixed @4'],
  },
]
