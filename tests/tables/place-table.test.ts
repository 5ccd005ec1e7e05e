import { describe, expect, it } from 'vitest'
import { readPlaces } from '../../lib/tables/place-table.ts'
import { writeWorkbook } from '../../lib/tables/xlsx-write.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const bytes = (text: string) => new TextEncoder().encode(text)
const givens = (rows: readonly { readonly given: unknown }[]) => rows.map(({ given }) => given)
const read = async (text: string) => {
  const places = await readPlaces(bytes(text))
  return { ...places, rooms: givens(places.rooms), boxes: givens(places.boxes) }
}
const codes = (
  problems: readonly { readonly code: string; readonly row: number | null; readonly column: string | null }[],
) => problems.map(({ code, row, column }) => [code, row, column])

describe('rooms and boxes', () => {
  it('are told apart by their headings', async () => {
    const rooms = await read('room,rh_low,rh_high\nCold,35,42\n')
    expect(rooms).toMatchObject({
      rooms: [{ room: 'Cold', rh_low: 35, rh_high: 42 }],
      boxes: [],
      problems: [],
    })
    const boxes = await read('box,room,volume_l,opened_on\nB1,Cold,10.5,2026-03-14\n')
    expect(boxes.boxes).toEqual([{ box: 'B1', room: 'Cold', volume_l: 10.5, opened_on: '2026-03-14' }])
  })

  it('are read with semicolons, decimal commas, units, and headings as people write them', async () => {
    const { boxes, problems } = await read(
      'Box;Room;Volume L;Gel kg;Gel RH percent\nB1;Cold;10,5 l;500 g;3 %\n',
    )
    expect(boxes).toEqual([{ box: 'B1', room: 'Cold', volume_l: 10.5, gel_kg: 0.5, gel_rh_percent: 3 }])
    expect(problems).toEqual([])
  })

  it('are the same from CSV, XLSX and JSON', async () => {
    const table = [
      ['box', 'room', 'gel_kg'],
      ['B1', 'Cold', '0.5'],
      ['B2', 'Cold', '1'],
    ]
    const expected = [
      { box: 'B1', room: 'Cold', gel_kg: 0.5 },
      { box: 'B2', room: 'Cold', gel_kg: 1 },
    ]
    const csv = bytes(table.map((row) => row.join(',')).join('\n'))
    const json = bytes(JSON.stringify(expected))
    const lines = bytes(expected.map((one) => JSON.stringify(one)).join('\n'))
    for (const file of [csv, json, lines, await writeWorkbook('boxes', table)])
      expect(givens((await readPlaces(file)).boxes)).toEqual(expected)
  })

  it('keep columns of no meaning and values that could not be read', async () => {
    const { boxes, problems } = await read(
      'box,room,gel_kg,opened_on,colour\nB1,Cold,a little,31/31/2026,blue\n',
    )
    expect(boxes).toEqual([
      { box: 'B1', room: 'Cold', extra: { gel_kg: 'a little', opened_on: '31/31/2026', colour: 'blue' } },
    ])
    expect(codes(problems)).toEqual([
      ['unknown-column', 1, 'colour'],
      ['not-a-number', 2, 'gel_kg'],
      ['not-a-date', 2, 'opened_on'],
    ])
  })

  it('say a number that may be read in two ways, and one that cannot be', async () => {
    const { boxes, problems } = await read('box,volume_l,target_max,gel_kg\nB1,"1,250",140,0.5\n')
    expect(boxes).toEqual([{ box: 'B1', gel_kg: 0.5, extra: { volume_l: '1,250', target_max: '140' } }])
    expect(codes(problems)).toEqual([
      ['ambiguous-number', 2, 'volume_l'],
      ['out-of-range', 2, 'target_max'],
    ])
  })

  it('use neither end where the lower lies above the higher', async () => {
    const { rooms, problems } = await read('room,rh_low,rh_high,t_low\nCold,55,42,5\n')
    expect(rooms).toEqual([{ room: 'Cold', t_low: 5, extra: { rh_low: '55', rh_high: '42' } }])
    expect(codes(problems)).toEqual([['ends-swapped', 2, 'rh_low']])
  })

  it('take a kind by habit, and ask about one that is not known', async () => {
    const { boxes, problems } = await read('box,kind\nB1,Tub\nB2,barier-pack\nB3,crate\n')
    expect(boxes).toEqual([
      { box: 'B1', kind: 'tub' },
      { box: 'B2', extra: { kind: 'barier-pack' } },
      { box: 'B3', extra: { kind: 'crate' } },
    ])
    expect(problems).toMatchObject([
      { code: 'unknown-value', row: 3, suggestion: 'barrier-pack' },
      { code: 'unknown-value', row: 4 },
    ])
  })

  it('take a misspelled heading for what was meant, and say so', async () => {
    const { boxes, problems } = await read('box,rooom,gel_knd\nB1,Cold,plain\n')
    expect(boxes).toEqual([{ box: 'B1', room: 'Cold', gel_kind: 'plain' }])
    expect(problems.map(({ code, suggestion }) => [code, suggestion])).toEqual([
      ['guessed-heading', 'room'],
      ['guessed-heading', 'gel_kind'],
    ])
  })

  it('leave out a row without its name, hand it back, and say so', async () => {
    const { boxes, problems, unreadable } = await read('box,room\nB1,Cold\n,Cold\n')
    expect(boxes).toHaveLength(1)
    expect(codes(problems)).toEqual([['no-place-name', 3, 'box']])
    expect(unreadable).toMatchObject([{ headings: ['box', 'room'], rows: [{ row: 3, cells: ['', 'Cold'] }] }])
  })

  it('say a box that is named twice and otherwise', async () => {
    const { boxes, problems } = await read('box,room\nB1,Cold\nB1,Cold\nB1,Hot\n')
    expect(boxes).toHaveLength(3)
    expect(problems).toMatchObject([{ code: 'place-repeated', row: 4, found: 'B1', suggestion: '3' }])
  })

  it.each([
    ['', 'empty-file'],
    ['room,rh_low\n', 'header-only'],
    ['<html><body></body></html>', 'not-a-table'],
    ['[{"box": }]', 'broken-json'],
    ['just words', 'not-a-table'],
    ['find_number,material,box\nTW-1,iron,B1\n', 'not-of-the-store'],
    ['colour,taste\nred,sour\n', 'not-of-the-store'],
  ])('are refused clearly: %s', async (text, code) => {
    const { rooms, boxes, problems } = await read(text)
    expect([rooms, boxes]).toEqual([[], []])
    expect(problems.map((one) => one.code)).toEqual([code])
  })
})

describe('rounds, loggers and the diary', () => {
  it('are told by their headings too', async () => {
    const rounds = await readPlaces(
      bytes('box,on,strip_low,strip_high,gel_colour,lid,by\nB1,2026-06-01,10,15 %,orange,open,Cy\n'),
    )
    expect(givens(rounds.rounds)).toEqual([
      {
        box: 'B1',
        on: '2026-06-01',
        strip_low: 10,
        strip_high: 15,
        gel_colour: 'orange',
        lid: 'not-seated',
        by: 'Cy',
      },
    ])
    const loggers = await readPlaces(
      bytes(
        'serial,model,floor_rh_percent,calibration_due,box,from,to\nL7,small,15,2027-01-31,B1,2026-01-05,\n',
      ),
    )
    expect(givens(loggers.loggers)).toEqual([
      {
        serial: 'L7',
        model: 'small',
        floor_rh_percent: 15,
        calibration_due: '2027-01-31',
        box: 'B1',
        from: '2026-01-05',
      },
    ])
    const diary = await readPlaces(bytes('event,on,box,gel_kg\nGel changed,2026-06-01,B1,1.5\n'))
    expect(givens(diary.diary)).toEqual([{ event: 'gel-change', on: '2026-06-01', box: 'B1', gel_kg: 1.5 }])
  })

  it('settle the order of days over all their days, and ask where nothing does', async () => {
    const settled = await readPlaces(bytes('box,on\nB1,25/03/2026\nB2,03/04/2026\n'))
    expect(settled.rounds.map(({ given }) => given.on)).toEqual(['2026-03-25', '2026-04-03'])
    const open = await readPlaces(bytes('box,on\nB1,03/04/2026\n'))
    expect(open.rounds).toEqual([])
    expect(open.unreadable[0]!.rows).toHaveLength(1)
    expect(codes(open.problems)).toEqual([['ambiguous-date', 2, 'on']])
  })

  it('hand back a round without its day and an event without what it needs', async () => {
    const rounds = await readPlaces(bytes('box,on,strip_low\nB1,,10\n'))
    expect(codes(rounds.problems)).toEqual([['no-day', 2, 'on']])
    const diary = await readPlaces(bytes('event,on,box\ngel-change,2026-06-01,\n'))
    expect(codes(diary.problems)).toEqual([
      ['cell-needed', 2, 'box'],
      ['cell-needed', 2, 'gel_kg'],
    ])
    expect(diary.unreadable[0]!.rows[0]!.problems).toHaveLength(2)
  })

  it('are all read from one workbook, each sheet by its own headings, and one file of objects', async () => {
    const objects = [
      { room: 'Cold', rh_low: 35 },
      { box: 'B1', room: 'Cold' },
      { box: 'B1', on: '2026-06-01', strip_low: 10 },
      { serial: 'L7', box: 'B1' },
    ]
    const places = await readPlaces(bytes(objects.map((one) => JSON.stringify(one)).join('\n')))
    expect([places.rooms, places.boxes, places.rounds, places.loggers].map((rows) => rows.length)).toEqual([
      1, 1, 1, 1,
    ])
    expect(places.problems).toEqual([])
  })

  it('let no hazard go unheard, in whatever cell of whatever row', async () => {
    const { heard } = await readPlaces(
      bytes('box,on,gel_colour,remark\nB1,2026-06-01,orange,\n,,,grenade under the tray\n'),
      knowledge.vocabulary.textWords,
    )
    expect(heard).toMatchObject([{ row: 3, hazard: 'ammunition-like', column: 'remark' }])
  })

  it('keep what stands under a heading that is there twice', async () => {
    const { boxes, problems } = await read('box,gel_kg,gel_kg\nB1,1,2\n')
    expect(boxes).toEqual([{ box: 'B1', gel_kg: 1, extra: { 'gel_kg (2)': '2' } }])
    expect(codes(problems)).toEqual([['duplicate-heading', 1, 'gel_kg']])
  })
})
