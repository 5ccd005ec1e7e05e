import { quiet, quietReads, table, type Hostile } from './hostile.ts'

const around = (name: string, line: string, read: string, tells: readonly string[]): Hostile => ({
  name,
  file: table(...quiet(2), line, ...quiet(1, 3)),
  reads: [...quietReads(2), ...(read === '' ? [] : [read]), ...quietReads(1, 3)],
  tells,
})
const gap = (word: string) =>
  around(`the sensor says “${word}”`, `2024-05-06 07:20,${word},45.2`, '2024-05-06 07:20 - 45.2', [
    'sensor-error @4',
  ])

/** What may be wrong with the values. */
export const values: readonly Hostile[] = [
  ...[
    '---',
    'NaN',
    'ERR',
    'OFL',
    'N.C.',
    '-999',
    '-999.9',
    '#N/A',
    'no data',
    'Fehler',
    '3276.7',
    '<0.5',
    '***',
  ].map(gap),
  around('empty cells', '2024-05-06 07:20,,45.2', '2024-05-06 07:20 - 45.2', ['empty-cells @4']),
  around('a reading of empty cells', '2024-05-06 07:20,,', '', ['empty-cells @4', 'empty-cells @4']),
  {
    name: 'a sensor that never gave anything',
    file: table('2024-05-06 07:00,---,---', '2024-05-06 07:10,---,---'),
    reads: [],
    tells: ['sensor-error @2 ×2', 'sensor-error @2 ×2', 'channel-without-values', 'no-readings @2'],
  },
  around('a negative humidity', '2024-05-06 07:20,20.2,-3', '2024-05-06 07:20 20.2 -', [
    'humidity-out-of-range @4',
  ]),
  around('a humidity just above 100', '2024-05-06 07:20,20.2,101.5', '2024-05-06 07:20 20.2 101.5', [
    'humidity-over-100 @4',
  ]),
  around('a humidity far above 100', '2024-05-06 07:20,20.2,180', '2024-05-06 07:20 20.2 -', [
    'humidity-out-of-range @4',
  ]),
  around('a temperature no store has', '2024-05-06 07:20,520,45.2', '2024-05-06 07:20 - 45.2', [
    'temperature-out-of-range @4',
  ]),
  around('numbers beyond all measure', '2024-05-06 07:20,1e308,99999999999999999999', '', [
    'temperature-out-of-range @4',
    'humidity-out-of-range @4',
  ]),
  around(
    'a number of a thousand digits',
    `2024-05-06 07:20,${'2'.repeat(1000)},45.2`,
    '2024-05-06 07:20 - 45.2',
    ['temperature-out-of-range @4'],
  ),
  around('exponents', '2024-05-06 07:20,2.02E+01,4.52e1', '2024-05-06 07:20 20.2 45.2', []),
  around('a true minus and a plus', '2024-05-06 07:20,−20.2,+45.2', '2024-05-06 07:20 -20.2 45.2', []),
  around('a formula', '2024-05-06 07:20,=B3+0.1,45.2', '2024-05-06 07:20 - 45.2', ['formula-cell @4']),
  around('a word for a value', '2024-05-06 07:20,warm,45.2', '2024-05-06 07:20 - 45.2', [
    'value-unreadable @4',
  ]),
  around('a unit of something else', '2024-05-06 07:20,1013 hPa,45.2', '2024-05-06 07:20 - 45.2', [
    'wrong-unit @4',
  ]),
  around('units behind some values', '2024-05-06 07:20,20.2 °C,45.2 % rF', '2024-05-06 07:20 20.2 45.2', []),
  around('a value in °F among °C', '2024-05-06 07:20,68 °F,45.2', '2024-05-06 07:20 20 45.2', []),
  around(
    'a humidity where the temperature stands',
    '2024-05-06 07:20,45.2 %,45.2',
    '2024-05-06 07:20 - 45.2',
    ['wrong-unit @4'],
  ),
  {
    name: 'headings and units that contradict each other all the way',
    file: 'time,temperature,humidity\n2024-05-06 07:00,45 %,20 °C\n2024-05-06 07:10,46 %,21 °C\n',
    reads: [],
    tells: ['wrong-unit @2 ×2', 'wrong-unit @2 ×2', 'channel-without-values', 'no-readings @2'],
  },
  {
    name: 'marks between thousands',
    file: 'time;t °C;rh %\n2024-05-06 07:00;20,0;45,0\n2024-05-06 07:10;1.020,5;45,1\n',
    reads: ['2024-05-06 07:00 20 45', '2024-05-06 07:10 - 45.1'],
    tells: ['thousands-marks @3', 'temperature-out-of-range @3'],
  },
  {
    name: 'humidity as parts of one, no unit said',
    file: 'time,t °C,rh\n2024-05-06 07:00,20,0.45\n2024-05-06 07:10,20.1,0.451\n',
    reads: quietReads(2),
    tells: ['humidity-as-fraction'],
    asks: ['humidity-scale: no-unit-and-none-above-one → fraction'],
  },
  {
    name: 'humidity below one percent, said to be percent',
    file: 'time,t °C,rh\n2024-05-06 07:00,20,0.45\n2024-05-06 07:10,20.1,0.4\n',
    answers: { humidityScale: 'percent' },
    reads: ['2024-05-06 07:00 20 0.45', '2024-05-06 07:10 20.1 0.4'],
    tells: [],
  },
  {
    name: 'humidity below one percent under a heading of percent',
    file: 'time,t °C,rh %\n2024-05-06 07:00,20,0.45\n2024-05-06 07:10,20.1,0.4\n',
    reads: ['2024-05-06 07:00 20 0.45', '2024-05-06 07:10 20.1 0.4'],
    tells: [],
  },
  {
    name: 'temperatures of a warm summer or of °F',
    file: 'time,t,rh\n2024-05-06 07:00,68,45\n2024-05-06 07:10,68,45.1\n',
    reads: ['2024-05-06 07:00 20 45', '2024-05-06 07:10 20 45.1'],
    tells: ['read-as-fahrenheit'],
    asks: ['temperature-unit: no-unit-and-warm → fahrenheit'],
  },
  {
    name: 'the same, said to be °C',
    file: 'time,t,rh\n2024-05-06 07:00,68,45\n2024-05-06 07:10,68,45.1\n',
    answers: { temperatureUnit: 'celsius' },
    reads: ['2024-05-06 07:00 68 45', '2024-05-06 07:10 68 45.1'],
    tells: [],
  },
  {
    name: '°F by the heading',
    file: 'time,t °F,rh %\n2024-05-06 07:00,68,45\n2024-05-06 07:10,68,45.1\n',
    reads: ['2024-05-06 07:00 20 45', '2024-05-06 07:10 20 45.1'],
    tells: ['read-as-fahrenheit'],
  },
  {
    name: 'kelvins',
    file: 'time,t [K],rh %\n2024-05-06 07:00,293.15,45\n2024-05-06 07:10,293.15,45.1\n',
    reads: ['2024-05-06 07:00 20 45', '2024-05-06 07:10 20 45.1'],
    tells: ['read-as-kelvin'],
  },
]
