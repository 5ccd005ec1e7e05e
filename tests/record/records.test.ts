import { describe, expect, test } from 'vitest'
import type { FieldName } from '../../lib/record/fields.ts'
import type { GivenRow } from '../../lib/record/given.ts'
import { noNames } from '../../lib/record/names.ts'
import { readRecords } from '../../lib/record/read-record.ts'

type Cells = Partial<Record<FieldName, string>>

const rows = (...all: readonly Cells[]): readonly GivenRow[] =>
  all.map((cells, at) => ({
    row: at + 2,
    cells: new Map(
      Object.entries(cells).map(([field, value]) => [field as FieldName, { column: field, value }]),
    ),
    findExtra: {},
    partExtra: {},
  }))
const words = [{ words: ['grenade'], not: [], hazard: 'ammunition-like' }]
const read = (...all: readonly Cells[]) => readRecords(rows(...all), noNames, words)
const codes = (...all: readonly Cells[]) => read(...all).problems.map((one) => `${one.row} ${one.code}`)
const names = (...all: readonly Cells[]) => read(...all).records[0]!.components.map((one) => one.component)
const find = { find_number: 'TW-1' }

describe('rows to records', () => {
  test('rows of one find make one record, find columns on the first row only', () => {
    const { records, problems } = read(
      { ...find, burial: 'clay', component: 'body', material: 'iron' },
      { find_number: 'TW-2', material: 'lead' },
      { ...find, component: 'pin', material: 'copper-alloy' },
    )
    expect(problems).toEqual([])
    expect(records).toEqual([
      {
        find_number: 'TW-1',
        burial: ['clay'],
        components: [
          { component: 'body', material: 'iron' },
          { component: 'pin', material: 'copper-alloy' },
        ],
      },
      { find_number: 'TW-2', components: [{ component: 'body', material: 'lead' }] },
    ])
  })

  test('site and day set records of one number apart; a row that leaves them out goes to the one before it', () => {
    const { records } = read(
      { site_code: 'TW', ...find, recorded_on: '2024-01-01', component: 'body', material: 'iron' },
      { ...find, component: 'pin', material: 'lead' },
      { site_code: 'TW', ...find, recorded_on: '2025-01-01', component: 'body', material: 'iron' },
      { ...find, component: 'plate', material: 'tin' },
      { site_code: 'XX', ...find, recorded_on: '2024-01-01', component: 'body', material: 'gold' },
    )
    expect(
      records.map((one) => [
        one.site_code,
        one.recorded_on,
        one.components.map((part) => part.component).join(),
      ]),
    ).toEqual([
      ['TW', '2024-01-01', 'body,pin'],
      ['TW', '2025-01-01', 'body,plate'],
      ['XX', '2024-01-01', 'body'],
    ])
  })

  test('an undated record beside dated ones says so', () => {
    const { records } = read(
      { ...find, recorded_on: '2024-01-01', material: 'iron' },
      { ...find, recorded_on: 'unknown', material: 'iron' },
    )
    expect(records).toEqual([
      {
        find_number: 'TW-1',
        recorded_on: '2024-01-01',
        components: [{ component: 'body', material: 'iron' }],
      },
      { find_number: 'TW-1', components: [{ component: 'body', material: 'iron' }] },
    ])
  })

  test('a later value that contradicts is told and kept, lists and hazards are joined', () => {
    const { records, problems } = read(
      { ...find, state_now: 'wet', hazards_noticed: 'sharp', notes: 'one', material: 'iron' },
      { ...find, state_now: 'dry', hazards_noticed: 'mould', notes: 'two', material: 'lead' },
    )
    expect(records[0]).toMatchObject({
      state_now: 'wet',
      hazards_noticed: ['sharp', 'mould'],
      notes: 'one\ntwo',
      unread: { state_now: 'dry' },
    })
    expect(problems).toMatchObject([
      { code: 'contradiction', row: 3, column: 'state_now', found: 'dry', suggestion: 'wet' },
    ])
  })

  test('only a missing number or a find without any component gives no record', () => {
    const { records, unreadable, problems } = read(
      { material: 'iron', notes: 'no number' },
      { find_number: 'TW-2', notes: 'nothing of it' },
      { find_number: 'TW-3', role: 'pin' },
      { find_number: 'TW-4', material: 'bronz' },
      { find_number: 'TW-5', material: 'iron' },
      { find_number: 'TW-5', notes: 'more of it' },
    )
    expect(records.map((one) => one.find_number)).toEqual(['TW-3', 'TW-4', 'TW-5'])
    expect([...unreadable]).toEqual([2, 3])
    expect(problems.filter((one) => one.severity === 'unreadable').map((one) => one.code)).toEqual([
      'no-find-number',
      'no-component',
    ])
    expect(records[2]!.notes).toBe('more of it')
  })

  test('a material that is missing, unknown or misspelt is planned as unidentified metal', () => {
    expect(read({ ...find, role: 'pin' })).toMatchObject({
      records: [{ components: [{ material: 'metal-unidentified' }] }],
      problems: [{ code: 'no-material' }],
    })
    expect(read({ ...find, material: 'unknown' })).toMatchObject({
      records: [{ components: [{ material: 'metal-unidentified' }] }],
      problems: [{ code: 'material-not-told' }],
    })
    expect(read({ ...find, material: 'bronz' })).toMatchObject({
      records: [{ components: [{ material: 'metal-unidentified', unread: { material: 'bronz' } }] }],
      problems: [
        { code: 'unknown-material', suggestion: 'bronze', find: 'TW-1', row: 2, column: 'material' },
      ],
    })
  })
})

describe('names of components', () => {
  test('an unnamed one is the body, a second takes its role, a third is counted', () => {
    expect(
      names(
        { ...find, material: 'iron' },
        { ...find, material: 'lead', role: 'pin' },
        { ...find, material: 'tin' },
        { ...find, material: 'tin', role: 'pin' },
      ),
    ).toEqual(['body', 'pin', 'body-2', 'body-3'])
    expect(names({ ...find, material: 'iron' }, { ...find, material: 'lead', component: 'body' })).toEqual([
      'body-2',
      'body',
    ])
  })
  test('a name given twice is told; the same row twice is read once', () => {
    const same = { ...find, component: 'pin', material: 'iron' }
    expect(codes(same, { ...same, material: 'lead' })).toEqual(['3 component-renamed'])
    expect(names(same, { ...same, material: 'lead' })).toEqual(['pin', 'pin-2'])
    expect(codes(same, same)).toEqual(['3 repeated-row'])
    expect(names(same, same)).toEqual(['pin'])
  })
})

describe('tests within a record', () => {
  test('a test that names a part is tied to it in its own spelling', () => {
    const { records, problems } = read({
      ...find,
      component: 'left pin',
      material: 'iron',
      tests: 'Left Pin/magnet:strong',
    })
    expect(records[0]!.tests).toEqual(['left pin/magnet:strong'])
    expect(problems).toEqual([])
  })
  test('a part that is not there, and results that disagree, are told', () => {
    expect(
      read({ ...find, component: 'plate', material: 'iron', tests: 'plat/magnet:none' }).problems,
    ).toMatchObject([{ code: 'no-such-part', suggestion: 'plate' }])
    expect(codes({ ...find, material: 'iron', tests: 'magnet:none;magnet:strong' })).toEqual([
      '2 tests-disagree',
    ])
    expect(
      codes({ ...find, material: 'iron', tests: 'radiograph:core-solid;radiograph:bright-lines' }),
    ).toEqual([])
    expect(codes({ ...find, material: 'iron', core: 'none', tests: 'radiograph:core-solid' })).toEqual([
      '2 core-disagrees',
    ])
    expect(codes({ ...find, material: 'iron', core: 'solid', tests: 'radiograph:core-solid' })).toEqual([])
  })
})

describe('hazards are heard in every cell of every row', () => {
  test('readable or not, in any column, misspelt too', () => {
    const { loudHazards } = read(
      { notes: 'a grenade' },
      { find_number: 'TW-2', context: 'grenade' },
      { find_number: 'TW-3', material: 'iron', hazards_noticed: 'amunition-like' },
      { find_number: 'TW-4', material: 'grenade' },
      { find_number: 'TW-5', material: 'iron', box: 'luminous-paint' },
    )
    expect(loudHazards.map((one) => [one.row, one.find, one.hazard, one.column])).toEqual([
      [2, null, 'ammunition-like', 'notes'],
      [3, 'TW-2', 'ammunition-like', 'context'],
      [4, 'TW-3', 'ammunition-like', 'hazards_noticed'],
      [5, 'TW-4', 'ammunition-like', 'material'],
      [6, 'TW-5', 'luminous-paint', 'box'],
    ])
  })
})
