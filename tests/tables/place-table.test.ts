import { describe, expect, it } from 'vitest'
import { readPlaces } from '../../lib/tables/place-table.ts'
import { writeWorkbook } from '../../lib/tables/xlsx-write.ts'

const bytes = (text: string) => new TextEncoder().encode(text)
const codes = (problems: readonly { readonly code: string; readonly row: number | null; readonly column: string | null }[]) =>
  problems.map(({ code, row, column }) => [code, row, column])

describe('rooms and boxes', () => {
  it('are told apart by their headings', async () => {
    const rooms = await readPlaces(bytes('room,rh_low,rh_high\nCold,35,42\n'))
    expect(rooms).toEqual({ rooms: [{ room: 'Cold', rh_low: 35, rh_high: 42 }], boxes: [], problems: [] })
    const boxes = await readPlaces(bytes('box,room,volume_l,opened_on\nB1,Cold,10.5,2026-03-14\n'))
    expect(boxes.boxes).toEqual([{ box: 'B1', room: 'Cold', volume_l: 10.5, opened_on: '2026-03-14' }])
  })

  it('are read with semicolons, decimal commas, units, and headings as people write them', async () => {
    const { boxes, problems } = await readPlaces(bytes('Box;Room;Volume L;Gel kg;Gel RH percent\nB1;Cold;10,5 l;0,5;3 %\n'))
    expect(boxes).toEqual([{ box: 'B1', room: 'Cold', volume_l: 10.5, gel_kg: 0.5, gel_rh_percent: 3 }])
    expect(problems).toEqual([])
  })

  it('are the same from CSV, XLSX and JSON', async () => {
    const table = [['box', 'room', 'gel_kg'], ['B1', 'Cold', '0.5'], ['B2', 'Cold', '1']]
    const expected = [{ box: 'B1', room: 'Cold', gel_kg: 0.5 }, { box: 'B2', room: 'Cold', gel_kg: 1 }]
    const csv = bytes(table.map((row) => row.join(',')).join('\n'))
    const json = bytes(JSON.stringify(expected))
    for (const file of [csv, json, await writeWorkbook('boxes', table)]) expect((await readPlaces(file)).boxes).toEqual(expected)
  })

  it('keep columns of no meaning and values that could not be read', async () => {
    const { boxes, problems } = await readPlaces(bytes('box,room,gel_kg,opened_on,colour\nB1,Cold,a little,31/31/2026,blue\n'))
    expect(boxes).toEqual([{ box: 'B1', room: 'Cold', extra: { gel_kg: 'a little', opened_on: '31/31/2026', colour: 'blue' } }])
    expect(codes(problems)).toEqual([['not-a-number', 2, 'gel_kg'], ['not-a-date', 2, 'opened_on']])
  })

  it('leave out a row without its name, and say so', async () => {
    const { boxes, problems } = await readPlaces(bytes('box,room\nB1,Cold\n,Cold\n'))
    expect(boxes).toHaveLength(1)
    expect(codes(problems)).toEqual([['no-place-name', 3, 'box']])
  })

  it.each([
    ['', 'empty-file'],
    ['room,rh_low\n', 'header-only'],
    ['<html><body></body></html>', 'not-a-table'],
    ['[{"box": }]', 'broken-json'],
    ['just words', 'not-a-table'],
  ])('are refused clearly: %s', async (text, code) => {
    const { rooms, boxes, problems } = await readPlaces(bytes(text))
    expect([rooms, boxes]).toEqual([[], []])
    expect(problems.map((one) => one.code)).toEqual([code])
  })
})
