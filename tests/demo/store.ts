import type { Chance } from './chance.ts'

/** The invented store: four rooms and sixty boxes, some of them neglected, as real ones are. */
export const rooms = [
  { room: 'Finds hut', rh_low: 52, rh_high: 78, t_low: 6, t_high: 24 },
  { room: 'Metal store', rh_low: 28, rh_high: 42, t_low: 17, t_high: 21 },
  { room: 'General store', rh_low: 45, rh_high: 60, t_low: 14, t_high: 22 },
  { room: 'Cold room', rh_low: 70, rh_high: 92, t_low: 3, t_high: 7 },
] as const

export type BoxUse = 'iron' | 'copper' | 'lead' | 'white' | 'mixed' | 'wet' | 'hut'

export interface Box {
  readonly box: string
  readonly use: BoxUse
  readonly row: Readonly<Record<string, string | number>>
}

const plan: readonly (readonly [BoxUse, number, string])[] = [
  ['iron', 26, 'Metal store'],
  ['copper', 10, 'Metal store'],
  ['lead', 4, 'General store'],
  ['white', 4, 'Metal store'],
  ['mixed', 5, 'General store'],
  ['wet', 6, 'Cold room'],
  ['hut', 5, 'Finds hut'],
]

/** What the store aims at in a box of this use; a fifth of them are still set as the handbook of twenty years ago had it. */
const targets: Readonly<
  Record<
    BoxUse,
    readonly [now: readonly [number | '', number | ''], then: readonly [number | '', number | '']]
  >
> = {
  iron: [
    ['', 12],
    ['', 20],
  ],
  copper: [
    ['', 35],
    ['', 42],
  ],
  white: [
    ['', 35],
    [35, 50],
  ],
  lead: [
    ['', 35],
    [35, 50],
  ],
  mixed: [
    [45, 50],
    [40, 60],
  ],
  wet: [
    ['', ''],
    ['', ''],
  ],
  hut: [
    ['', ''],
    ['', ''],
  ],
}

function targetOf(use: BoxUse, old: boolean) {
  const [target_min, target_max] = targets[use][old ? 1 : 0]
  return { target_min, target_max }
}

const dry = (use: BoxUse) => use === 'iron' || use === 'copper'

export function boxes({ whole, happens, pick }: Chance): readonly Box[] {
  let number = 0
  return plan.flatMap(([use, count, room]) =>
    Array.from({ length: count }, (): Box => {
      number += 1
      const box = `TW-B${String(number).padStart(2, '0')}`
      const gel = dry(use) && happens(0.85)
      const row = {
        box,
        room,
        shelf: `${pick(['A', 'B', 'C', 'D'])}${whole(1, 6)}`,
        kind: use === 'wet' ? 'tub' : 'box',
        model: use === 'wet' ? 'lidded tub 20 l' : 'clip-lid polypropylene',
        volume_l: use === 'wet' ? 20 : pick([5, 9, 12, 20]),
        air_changes_per_day: use === 'wet' ? '' : pick([0.3, 0.5, 0.8, 1.2]),
        gel_kg: gel ? pick([0.25, 0.5, 1, 1.5]) : '',
        gel_kind: gel ? pick(['orange indicating', 'plain', 'blue indicating']) : '',
        gel_conditioned_on: gel ? `202${whole(3, 6)}-0${whole(1, 9)}-${whole(10, 28)}` : '',
        gel_rh_percent: gel ? whole(3, 9) : '',
        ...targetOf(use, happens(0.2)),
        opened_on: happens(0.4) ? `2026-${pick(['03', '06', '09'])}-${whole(10, 28)}` : '',
        seal_note: happens(0.15) ? pick(['lid bowed at one corner', 'clip broken', 'seal dusty']) : '',
      }
      return { box, use, row }
    }),
  )
}
