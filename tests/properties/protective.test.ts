import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Plan, Urgency } from '../../lib/engine/plan.ts'
import { material as materials } from '../../lib/record/ids.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'
import { anyRecord } from '../arbitrary/record.ts'
import { law, planned } from './plans.ts'

/** What the surface of corroding metal shows, whatever the metal. */
const activeSigns = [
  'bright-orange-spots',
  'orange-droplets',
  'dry-orange-blisters',
  'lamination-cracks',
  'loose-flakes',
  'pale-yellow-bloom',
  'pale-green-powder',
  'warty-green',
  'waxy-grey-green',
  'white-powder',
  'powder-in-bag',
] as const

/** The most pressing first. */
const urgencies: readonly Urgency[] = ['now', 'hours', 'days', 'weeks', 'planned', 'routine']

const metals: readonly string[] = materials.slice(0, materials.indexOf('wood'))

const withPart = (
  record: ConditionRecord,
  at: number,
  change: (part: Component) => Component,
): ConditionRecord => ({
  ...record,
  components: record.components.map((part, index) => (index === at ? change(part) : part)),
})

/** The highest humidity [% RH] a plan lets the find stand in; a conflict names none, which allows the least. */
const ceiling = ({ storage }: Plan) => storage.rhPercent?.max ?? 0

/** No part may stand damper than before, nor the whole find. */
function noneLooser(before: Plan, after: Plan): void {
  before.storage.components.forEach((part, at) => {
    expect(after.storage.components[at]!.limit.max).toBeLessThanOrEqual(part.limit.max)
  })
  expect(ceiling(after)).toBeLessThanOrEqual(ceiling(before))
}

describe('the protective side', () => {
  test('a sign of active metal corrosion never raises a ceiling and never lowers the urgency', () => {
    let met = 0
    law(fc.tuple(anyRecord(), fc.nat(), fc.constantFrom(...activeSigns)), ([record, which, sign]) => {
      const at = which % record.components.length
      const part = record.components[at]!
      if (!metals.includes(part.material) || part.seen?.includes(sign)) return
      met += 1
      const told = (part.seen ?? []).filter((one) => one !== 'unknown')
      const signed = withPart(record, at, (one) => ({ ...one, seen: [...told, sign] }))
      const [before, after] = [planned(record), planned(signed)]
      noneLooser(before, after)
      expect(urgencies.indexOf(after.urgency)).toBeLessThanOrEqual(urgencies.indexOf(before.urgency))
    })
    expect(met).toBeGreaterThan(300)
  })

  test('watching for less than two years never raises a ceiling', () => {
    const shown = ['orange-brown-crust', 'compact-green', 'grey-skin', 'black-tarnish'] as const
    // Air and ground in which watching would count, and a surface without a sign: only the time is too short.
    const watchable = anyRecord({ without: ['watched_days'] }).map((record) => ({
      ...record,
      stored_rh_percent: 40,
      burial: ['clay' as const],
      components: record.components.map((part, at) => ({ ...part, seen: [shown[at % shown.length]!] })),
    }))
    law(fc.tuple(watchable, fc.integer({ min: 0, max: 729 })), ([record, days]) => {
      const stillQuiet = (part: Component): Component => ({
        ...part,
        seen: [...part.seen!, 'no-change-seen'],
      })
      const watched = { ...record, watched_days: days, components: record.components.map(stillQuiet) }
      noneLooser(planned(record), planned(watched))
    })
  })
})
