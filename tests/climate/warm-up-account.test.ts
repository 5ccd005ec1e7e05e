import { describe, expect, test } from 'vitest'
import { dewPointC } from '../../lib/climate/dew-point.ts'
import { vapourPressurePa } from '../../lib/climate/humidity.ts'
import { warmUpAccount, type Brought, type WarmUpAsked } from '../../lib/climate/warm-up-account.ts'

const iron: Brought = {
  kind: 'plate',
  plate: { thicknessM: 0.005, densityKgPerM3: 7870, heatCapacityJPerKgK: 450, conductivityWPerMK: 80 },
}
const pack: Brought = { kind: 'pack', heatJPerK: 3000, outsideM2: 0.5, wallResistanceM2KPerW: 0.5 }
const room: WarmUpAsked = {
  brought: iron,
  startC: 5,
  roomC: 20,
  wetAtC: dewPointC(vapourPressurePa(20, 50, 'water')),
  airResistanceM2KPerW: { low: 1 / 8, high: 1 / 8 },
}
const account = (change: Partial<WarmUpAsked> = {}) => {
  const made = warmUpAccount({ ...room, ...change })
  if (!made.ok) throw new Error(JSON.stringify(made.problems))
  return made.value
}
const beyond = (change: Partial<WarmUpAsked>) => {
  const made = warmUpAccount({ ...room, ...change })
  return made.ok ? [] : made.problems.map(({ quantity }) => quantity)
}

describe('how long something brought in stays wet', () => {
  test('computed by us: 5 mm of iron clears 20 °C and 50 % in 371 s, and is within a degree after 2997 s', () => {
    const { clear, warm } = account()
    expect(clear.low).toBeCloseTo(371, 0)
    // 1106.7 s · ln 15
    expect(warm.high).toBeCloseTo(2997, 0)
  })

  test('worse air makes both longer, padding longer still', () => {
    const worse = account({ airResistanceM2KPerW: { low: 0.1, high: 0.25 } })
    expect(worse.clear.high / worse.clear.low).toBeCloseTo(2.5, 9)
    expect(worse.warm.high / worse.warm.low).toBeCloseTo(2.5, 9)
    const packed = account({ brought: pack })
    // 3000 J/K over 0.5 m², behind 0.125 + 0.5 m²·K/W
    expect(packed.warm.high).toBeCloseTo(3750 * Math.log(15), 6)
  })

  test('nothing gathers where the air is too dry or the thing not cold enough', () => {
    expect(account({ wetAtC: null }).clear).toEqual({ low: 0, high: 0 })
    expect(account({ startC: 12 }).clear).toEqual({ low: 0, high: 0 })
    expect(account({ startC: 25 }).clear).toEqual({ low: 0, high: 0 })
  })

  test('in air that is full it never comes clear, whatever it comes in with', () => {
    for (const startC of [5, 20, 30]) expect(account({ startC, wetAtC: 20 }).clear.low).toBe(Infinity)
  })

  test('what comes in warm cools to within a degree of the room; what is as warm takes no time', () => {
    expect(account({ startC: 35 }).warm.low).toBeCloseTo(account({ startC: 5 }).warm.low, 9)
    expect([account({ startC: 20.5 }).warm.low, account({ startC: 19.5 }).warm.low]).toEqual([0, 0])
  })

  test('out of range it has no answer, and names everything that lies outside', () => {
    expect(beyond({ startC: -150, roomC: 300 })).toEqual(['startC', 'roomC'])
    expect(beyond({ brought: { kind: 'plate', plate: { ...iron.plate, thicknessM: 0 } } })).toEqual([
      'thicknessM',
    ])
    // 0.2 · 80 W/(m·K) · 0.125 m²·K/W = 2 m
    expect(beyond({ brought: { kind: 'plate', plate: { ...iron.plate, thicknessM: 2.01 } } })).toEqual([
      'thicknessM',
    ])
    expect(beyond({ brought: { kind: 'plate', plate: { ...iron.plate, thicknessM: 1.99 } } })).toEqual([])
    expect(beyond({ brought: { ...pack, heatJPerK: 0, outsideM2: 0, wallResistanceM2KPerW: -1 } })).toEqual([
      'heatJPerK',
      'outsideM2',
      'wallResistanceM2KPerW',
    ])
  })
})
