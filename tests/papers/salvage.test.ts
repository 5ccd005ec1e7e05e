import { describe, expect, it } from 'vitest'
import { salvageRooms, type SalvageFind } from '../../lib/papers/salvage.ts'

const find = (findNumber: string, more: Partial<SalvageFind> = {}): SalvageFind => ({
  findNumber,
  keep: 'dry',
  parts: [{ material: 'iron' }],
  stops: [],
  bands: [],
  rhPercent: { min: 0, max: 12 },
  interimRhPercent: null,
  conflict: null,
  storedRhPercent: null,
  ...more,
})
const copper = { parts: [{ material: 'copper-alloy' }], rhPercent: { min: 0, max: 35 } }
const box = (name: string, finds: readonly SalvageFind[], more: object = {}) => ({
  given: { box: name, room: 'Metal store', ...more },
  finds,
})
const order = (...boxes: readonly ReturnType<typeof box>[]) =>
  salvageRooms(boxes).flatMap((room) => room.boxes.map((one) => one.box))

describe('the order boxes are carried out in', () => {
  it('begins with iron that is kept dry, whatever else lies in the box', () => {
    expect(
      order(
        box('B1', [find('1', { ...copper, rhPercent: { min: 0, max: 5 } })]),
        box('B2', [find('2', copper), find('3', { rhPercent: { min: 0, max: 20 } })]),
      ),
    ).toEqual(['B2', 'B1'])
  })

  it('goes on with the driest, then with the shelf', () => {
    expect(
      order(
        box('B1', [find('1', { rhPercent: { min: 0, max: 20 } })]),
        box('B3', [find('3')], { shelf: 'A10' }),
        box('B2', [find('2')], { shelf: 'A9' }),
      ),
    ).toEqual(['B2', 'B3', 'B1'])
  })

  it('ends with what lies in water already, iron or not', () => {
    expect(
      order(
        box('T1', [find('1', { keep: 'wet', rhPercent: null })]),
        box('B1', [find('2', { parts: [{ material: 'ceramic' }], rhPercent: { min: 0, max: 100 } })]),
      ),
    ).toEqual(['B1', 'T1'])
  })

  it('counts iron in water neither as dry iron nor under a ceiling', () => {
    const [room] = salvageRooms([box('T1', [find('1', { keep: 'wet' })])])
    expect(room!.boxes[0]).toMatchObject({ reason: 'in-water', ironFinds: 0, lowestCeiling: null })
  })

  it('leaves out empty boxes and empty rooms, and keeps rooms apart', () => {
    const rooms = salvageRooms([
      box('B1', [find('1')]),
      box('B2', []),
      box('B3', [find('2')], { room: 'Cold room' }),
      box('B4', [], { room: 'Attic' }),
    ])
    expect(rooms.map(({ room, boxes }) => [room, boxes.map((one) => one.box)])).toEqual([
      ['Cold room', ['B3']],
      ['Metal store', ['B1']],
    ])
  })
})

it('names every stop of a room with its box, also of what lies in water', () => {
  const stop = { code: 'ammunition', text: 'Do not touch it.', who: 'the police' }
  const [room] = salvageRooms([box('T1', [find('9', { keep: 'wet', stops: [stop] })])])
  expect(room!.stops).toEqual([{ find: '9', box: 'T1', text: stop.text, who: stop.who }])
})
