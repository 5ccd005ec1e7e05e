import { describe, expect, test } from 'vitest'
import type { FieldName } from '../../lib/record/fields.ts'
import type { Names } from '../../lib/record/names.ts'
import { readCell } from '../../lib/record/read-cell.ts'
import { dayOrderOf, readDate } from '../../lib/record/read-date.ts'
import { readNumber } from '../../lib/record/read-number.ts'

const names: Names = {
  fields: {},
  values: {
    material: { 'copper-alloy': ['Copper alloy (bronze, brass)'] },
    seen: { 'warty-green': ['Warts, green'] },
  },
}
const read = (field: FieldName, value: string | readonly string[], formula = false) =>
  readCell(
    field,
    { column: field, value, ...(formula ? { formula: true as const } : {}) },
    names,
    'undecided',
  )
const codes = (field: FieldName, value: string) => read(field, value).problems.map((one) => one.code)

describe('numbers', () => {
  test.each([
    ['mass_g', '12.5', 12.5],
    ['mass_g', '12,5', 12.5],
    ['mass_g', '12,5 g', 12.5],
    ['mass_g', '1.2 kg', 1200],
    ['mass_g', '1,234.5', 1234.5],
    ['mass_g', '1.234,5', 1234.5],
    ['length_mm', '1 200 mm', 1200],
    ['length_mm', '1\u202f200', 1200],
    ['length_mm', '4,1 cm', 41],
    ['length_mm', 'c. 40', 40],
    ['length_mm', '~40mm', 40],
    ['stored_rh_percent', '45%', 45],
    ['stored_rh_percent', '45 % RH', 45],
    ['stored_temperature_c', '−5', -5],
    ['stored_temperature_c', '18 °C', 18],
    ['soil_ph', 'pH 6,5', 6.5],
    ['quantity', '1,200', 1200],
    ['quantity', '12 pieces', 12],
    ['days_since_lifting', '2 weeks', 14],
    ['date_from', 'AD 1250', 1250],
    ['date_to', '50 BC', -50],
  ] as const)('%s: %s is %d', (field, text, value) => {
    expect(readNumber(field, text)).toMatchObject({ ok: true, value })
  })

  test.each([
    ['mass_g', '1,200', 'ambiguous-number', '1200 or 1.2'],
    ['mass_g', '12 mm', 'wrong-unit', undefined],
    ['mass_g', '<5', 'not-a-number', undefined],
    ['mass_g', '10-12', 'not-a-number', undefined],
    ['mass_g', '12 5', 'not-a-number', undefined],
    ['mass_g', 'heavy', 'not-a-number', undefined],
    ['mass_g', '-3', 'out-of-range', '0.0001 to 100000000'],
    ['stored_rh_percent', '0.45', 'ambiguous-number', '45'],
    ['stored_rh_percent', '145', 'out-of-range', '0 to 100'],
    ['stored_temperature_c', '64 F', 'wrong-unit', undefined],
    ['quantity', '2.5', 'not-whole', '3'],
    ['quantity', '0', 'out-of-range', '1 to 1000000'],
  ] as const)('%s: %s is refused as %s', (field, text, code, suggestion) => {
    const expected = suggestion === undefined ? { ok: false, code } : { ok: false, code, suggestion }
    expect(readNumber(field, text)).toEqual(expected)
  })

  test('what was read forgivingly is said, what was refused is kept', () => {
    expect(read('mass_g', '12,5 g')).toEqual({
      value: 12.5,
      problems: [{ code: 'number-read', found: '12,5 g', suggestion: '12.5' }],
    })
    expect(read('mass_g', 'heavy')).toEqual({
      unread: 'heavy',
      problems: [{ code: 'not-a-number', found: 'heavy' }],
    })
    expect(read('mass_g', 'unknown')).toEqual({ value: 'unknown', problems: [] })
  })
})

describe('dates', () => {
  test.each([
    ['2024-03-01', '2024-03-01'],
    ['2024.03.01', '2024-03-01'],
    ['2024/3/1', '2024-03-01'],
    ['31/03/2024', '2024-03-31'],
    ['03/31/2024', '2024-03-31'],
    ['04/04/2024', '2024-04-04'],
    ['3 March 2024', '2024-03-03'],
    ['3rd March 2024', '2024-03-03'],
    ['March 3, 2024', '2024-03-03'],
    ['3-Sept-2024', '2024-09-03'],
    ['Friday, 1 March 2024', '2024-03-01'],
    ['2024-03-01T00:00:00Z', '2024-03-01'],
  ])('%s is %s', (text, date) => {
    expect(readDate(text, 'undecided')).toMatchObject({ ok: true, date })
  })

  test('a date of two readings is asked about, unless its column decides', () => {
    expect(readDate('03/04/2024', 'undecided')).toEqual({
      ok: false,
      code: 'ambiguous-date',
      suggestion: '2024-04-03 or 2024-03-04',
    })
    expect(readDate('03/04/2024', 'day-first')).toMatchObject({ date: '2024-04-03' })
    expect(readDate('03/04/2024', 'month-first')).toMatchObject({ date: '2024-03-04' })
  })

  test('one day beyond twelve decides a column, two that disagree do not', () => {
    expect(dayOrderOf(['03/04/2024', '31/03/2024'])).toBe('day-first')
    expect(dayOrderOf(['03/04/2024', '03/31/2024'])).toBe('month-first')
    expect(dayOrderOf(['31/03/2024', '03/31/2024'])).toBe('undecided')
    expect(dayOrderOf(['2024-03-31'])).toBe('undecided')
  })

  test.each(['2024-02-30', '31/31/2024', '3/4/24', 'spring', '2024'])('%s is no day', (text) => {
    expect(readDate(text, 'day-first')).toMatchObject({ ok: false, code: 'not-a-date' })
  })

  test('the day number of a spreadsheet is not taken for a day, but pointed at', () => {
    expect(readDate('45383', 'undecided')).toEqual({
      ok: false,
      code: 'not-a-date',
      suggestion: '2024-04-01',
    })
  })
})

describe('choices', () => {
  test.each([
    ['copper-alloy', 'copper-alloy', []],
    ['Copper_Alloy', 'copper-alloy', []],
    ['COPPER ALLOY', 'copper-alloy', []],
    ['Copper alloy (bronze, brass)', 'copper-alloy', []],
    ['Fe', 'iron', ['guessed-value']],
    ['Cu alloy', 'copper-alloy', ['guessed-value']],
    ['iron?', 'iron', ['guessed-value']],
  ])('material %s is %s', (text, id, said) => {
    expect(read('material', text).value).toBe(id)
    expect(codes('material', text)).toEqual(said)
  })

  test.each([
    ['bronz', 'bronze'],
    ['irno', 'iron'],
    ['iron nail', 'iron'],
    ['leathr', 'leather'],
  ])('%s is not taken, but %s is pointed at', (text, suggestion) => {
    expect(read('material', text)).toEqual({
      unread: text,
      problems: [{ code: 'unknown-material', found: text, suggestion }],
    })
  })

  test('a list keeps what it understands and what it does not', () => {
    expect(read('seen', 'Warts, green; orange-droplets;grene')).toEqual({
      value: ['warty-green', 'orange-droplets'],
      unread: 'grene',
      problems: [{ code: 'unknown-value', found: 'grene' }],
    })
  })

  test('other ways to part a list are taken when they make sense of it', () => {
    expect(read('done_already', 'washed, brushed').value).toEqual(['washed', 'brushed'])
    expect(read('burial', 'clay/damp').value).toEqual(['clay', 'damp'])
    expect(codes('done_already', 'washed, brushed')).toEqual(['listed-otherwise'])
  })

  test('several values where one belongs are none', () => {
    expect(read('material', 'iron;wood')).toMatchObject({ problems: [{ code: 'several-values' }] })
    expect(read('material', 'iron, wood')).toMatchObject({ problems: [{ code: 'several-values' }] })
    expect(read('state_now', ['wet', 'dry'])).toMatchObject({ problems: [{ code: 'several-values' }] })
  })

  test('JSON lists are lists already', () => {
    expect(read('seen', ['warty-green', 'a;b'])).toMatchObject({
      value: ['warty-green'],
      unread: String.raw`a\;b`,
    })
    expect(read('state_now', ['wet'])).toEqual({ value: 'wet', problems: [] })
  })

  test('unknown is an answer; blank words are none', () => {
    expect(read('core', 'Unknown')).toEqual({ value: 'unknown', problems: [] })
    expect(read('core', '?')).toMatchObject({ value: 'unknown', problems: [{ code: 'guessed-value' }] })
    expect(read('core', 'n/a')).toMatchObject({ unread: 'n/a', problems: [{ code: 'blank-word' }] })
    expect(read('core', 'none')).toEqual({ value: 'none', problems: [] })
  })

  test('an open list keeps other words and points at slips', () => {
    expect(read('object_kind', 'gaming piece')).toEqual({ value: 'gaming piece', problems: [] })
    expect(read('object_kind', 'Padlock')).toEqual({ value: 'padlock', problems: [] })
    expect(read('object_kind', 'padlok')).toEqual({
      value: 'padlok',
      problems: [{ code: 'near-known-kind', found: 'padlok', suggestion: 'padlock' }],
    })
  })
})

describe('formulas and errors of spreadsheets', () => {
  test('a live formula is no value', () => {
    expect(read('mass_g', '=A1*2', true)).toEqual({
      unread: '=A1*2',
      problems: [{ code: 'formula', found: '=A1*2' }],
    })
    expect(read('object', '=A1', true)).toEqual({
      value: '=A1',
      problems: [{ code: 'formula', found: '=A1' }],
    })
    expect(read('object', '=A1')).toEqual({ value: '=A1', problems: [] })
  })
  test.each(['#REF!', '#N/A', '#DIV/0!', '#####'])('%s is no value, not even of a text', (text) => {
    expect(read('object', text)).toEqual({
      unread: text,
      problems: [{ code: 'spreadsheet-error', found: text }],
    })
  })
})

describe('tests and treatments', () => {
  test('are read in the forms of the contract and forgivingly', () => {
    expect(read('tests', 'silver-nitrate:positive;pin/xrf:Fe+Cu;residual-chloride-ppm:120')).toEqual({
      value: ['silver-nitrate:positive', 'pin/xrf:Fe+Cu', 'residual-chloride-ppm:120'],
      problems: [],
    })
    expect(read('tests', 'Silver nitrate: Positive, xrf: fe, cu').value).toEqual([
      'silver-nitrate:positive',
      'xrf:Fe+Cu',
    ])
    expect(read('tests', 'bath-chloride-mg-l: 12,5 mg/l').value).toEqual(['bath-chloride-mg-l:12.5'])
  })
  test('what is not understood is kept and pointed at', () => {
    expect(read('tests', 'silver-nitrat:positive')).toMatchObject({
      unread: 'silver-nitrat:positive',
      problems: [{ code: 'unknown-test', suggestion: 'silver-nitrate:positive' }],
    })
    expect(read('tests', 'magnet:stong')).toMatchObject({
      problems: [{ code: 'unknown-test-result', suggestion: 'magnet:strong' }],
    })
    expect(read('tests', 'xrf:Fe+Xx')).toMatchObject({
      unread: 'xrf:Fe+Xx',
      problems: [{ code: 'unknown-test-result' }],
    })
  })
  test('treatments', () => {
    expect(read('treatments', 'Lacquered@2017-03;wet-stored').value).toEqual([
      { what: 'lacquered', on: '2017-03' },
      { what: 'wet-stored' },
    ])
    expect(read('treatments', 'waxed@2019|by=A. Reed|medium=wax').value).toEqual([
      { what: 'waxed', on: '2019', by: 'A. Reed', medium: 'wax' },
    ])
    expect(codes('treatments', '@2017')).toEqual(['unreadable-treatment'])
    expect(codes('treatments', 'waxed@3/4/17')).toEqual(['not-a-date'])
  })
})
