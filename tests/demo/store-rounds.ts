import { daysBetween, type IsoDate } from '../../lib/base/calendar.ts'
import type { Chance } from './chance.ts'
import type { Box } from './store.ts'
import { firstDay, looseLid, spread, type TrueStore } from './store-true.ts'

/** A walk through the store every quarter, as it was meant to be and mostly was. */
const walks = [
  '2025-01-21',
  '2025-04-15',
  '2025-07-22',
  '2025-10-14',
  '2026-01-20',
  '2026-04-21',
  '2026-07-14',
  '2026-10-13',
] as const

/** Where the fields of the strips in the store end. */
const fields = [0, 5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100]

const colours: Readonly<Record<string, readonly [dry: string, spent: string, turnsAt: number]>> = {
  'orange indicating': ['orange', 'green', 26],
  'blue indicating': ['blue', 'pink', 24],
}

export type Row = Readonly<Record<string, string | number>>

export function rounds(boxes: readonly Box[], store: TrueStore, luck: Chance): readonly Row[] {
  const read = boxes.filter(({ use }) => use !== 'wet' && use !== 'hut')
  return walks.flatMap((on) => {
    const day = daysBetween(firstDay, on as IsoDate)
    const by = luck.pick(['CW', 'CW', 'AT'])
    return read
      .filter(() => luck.happens(0.86))
      .map(({ box, row }): Row => {
        const truth = store.box(box, day)
        const seen = Math.min(99, Math.max(0.1, truth + spread(luck) * 1.5))
        const at = fields.findIndex((end) => end > seen)
        const pair = colours[String(row['gel_kind'])]
        const isOff = box !== looseLid.box && luck.happens(0.03)
        return {
          box,
          on,
          strip_low: fields[at - 1]!,
          strip_high: fields[at]!,
          gel_colour: pair ? (truth + spread(luck) > pair[2] ? pair[1] : pair[0]) : '',
          lid: isOff ? 'not-seated' : box === looseLid.box && on >= looseLid.since ? '' : 'seated',
          by,
        }
      })
  })
}
