import fs from 'node:fs'
import path from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const rooms = place.file('rooms.csv', 'room,rh_low,rh_high\r\nCold,35,42\r\n')
const boxes = place.file('boxes.csv', 'box,room,gel_kg\r\nB1,Cold,0.5\r\nB2,Cold,1\r\n')
const rounds = place.file(
  'rounds.csv',
  'box,on,strip_low,strip_high\r\nB1,2026-06-01,10,15\r\n,2026-06-01,10,15\r\nB9,2026-06-01,140,15\r\n',
)

describe('store import and store export', () => {
  it('bring tables in and out again as they were', async () => {
    const { code, out, err } = await place.call('store', 'import', rooms, boxes)
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain('1 room read into First project, 0 rows to mend')
    expect(out).toContain('2 boxes read into First project')
    const again = await place.call('store', 'export', '--table', 'boxes')
    expect([again.code, again.out]).toEqual([0, fs.readFileSync(boxes, 'utf8')])
    const all = await place.call('store', 'export', '--format', 'json')
    expect(
      all.out
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as unknown),
    ).toEqual([
      { room: 'Cold', rh_low: 35, rh_high: 42 },
      { box: 'B1', room: 'Cold', gel_kg: 0.5 },
      { box: 'B2', room: 'Cold', gel_kg: 1 },
    ])
    const to = path.join(place.folder, 'store.xlsx')
    expect((await place.call('store', 'export', '--format', 'xlsx', '--to', to)).code).toBe(0)
    expect((await place.call('store', 'import', to, '--project', 'Copy')).code).toBe(0)
  }, 60_000)

  it('say every fault with its file, row and column, keep the rest and end with 1', async () => {
    const { code, out, err } = await place.call('store', 'import', rounds, '--project', 'First project')
    expect(code).toBe(1)
    expect(out).toContain('2 rounds read into First project, 1 row to mend')
    expect(err).toContain('rounds.csv: Row 3, column “box”')
    expect(err).toContain('rounds.csv: Row 4, column “strip_low”')
    expect(err).toContain('rounds.csv: Row 4, column “box”: The box “B9” is not listed.')
  }, 60_000)

  it.each([
    [['store', 'import'], 'Name the file.'],
    [['store', 'import', 'nowhere.csv'], 'There is no such file.'],
    [['store', 'export'], 'say which with --table'],
    [['store', 'export', '--format', 'xlsx'], 'name a file with --to'],
    [['store', 'export', '--table', 'shelves'], '--table is one of'],
  ])('%j is a wrong call', async (args, says) => {
    const { code, out, err } = await place.call(...args)
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain(says)
  })

  it('end with 2 where a file holds none of the tables', async () => {
    const finds = place.file('finds.csv', 'find_number,material,box\nTW-1,iron,B1\n')
    const { code, err } = await place.call('store', 'import', finds, '--project', 'First project')
    expect(code).toBe(2)
    expect(err).toContain('are of no table of the store')
  }, 60_000)
})
