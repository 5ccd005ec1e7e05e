import { describe, expect, it } from 'vitest'
import { boxLabel } from '../../lib/papers/box-label.ts'
import type { SalvageFind } from '../../lib/papers/salvage.ts'

const find = (more: Partial<SalvageFind> = {}): SalvageFind => ({
  findNumber: 'TW-1',
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
const room = { room: 'Metal store', rh_low: 30, rh_high: 40 }

describe('what a box label tells of keeping', () => {
  it('is what its finds ask for, not what the box is set to', () => {
    const label = boxLabel({ box: 'B1', target_max: 40 }, room, [
      find(),
      find({ rhPercent: { min: 0, max: 35 } }),
    ])
    expect(label.keep).toBe('Keep at 12 % or below relative humidity.')
  })

  it('names no band where two finds cannot share one', () => {
    const label = boxLabel({ box: 'B1' }, room, [find(), find({ rhPercent: { min: 12, max: 55 } })])
    expect(label.keep).toBe('Its finds ask for different humidities: ask the store.')
  })

  it('is the setting of the room where nothing in it asks', () => {
    expect(boxLabel({ box: 'B1' }, room, [find({ rhPercent: { min: 0, max: 100 } })]).keep).toBe(
      'Kept at 30 to 40 %.',
    )
    expect(boxLabel({ box: 'B1' }, undefined, []).keep).toBe('No humidity is named for what it holds.')
  })

  it('is wet for a tub, and says nothing of gel there', () => {
    const label = boxLabel({ box: 'T1', kind: 'tub', gel_kg: 1 }, room, [find({ keep: 'wet' })])
    expect([label.keep, label.gel]).toEqual(['Keep wet, cool and dark. Lid on.', ''])
  })
})

it('shows each stop once, and small amounts of gel in grams', () => {
  const stop = { code: 'ammunition', text: 'Do not touch it.', who: 'the police' }
  const label = boxLabel({ box: 'B1', gel_kg: 0.05, gel_kind: 'plain' }, room, [
    find({ stops: [stop] }),
    find({ stops: [stop] }),
  ])
  expect(label.warnings).toEqual(['STOP: Do not touch it.'])
  expect(label.gel).toBe('50 g of gel (plain)')
})
