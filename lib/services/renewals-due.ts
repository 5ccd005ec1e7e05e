import { addDays, type IsoDate } from '../base/calendar.ts'
import { figureValue, type Figures } from '../boxes/figure-value.ts'
import type { Means, RenewalDue } from '../boxes/level-work.ts'
import { daysToLimitSpread } from '../climate/enclosure-spread.ts'
import type { BoxGiven } from '../record/places.ts'
import type { BoxOutlook } from './box-outlook.ts'
import { closedBox } from './closed-box.ts'
import type { Room } from './places.ts'
import type { BoxLine } from './show-store.ts'
import type { StoreSettingGiven } from './store-setting.ts'

/** What nobody has said of how the store is run: hours and gel then limit nothing, and no oven is counted on. */
export type Untold = 'hours' | 'minutes' | 'gel' | 'oven'

/** The gel that falls due, box by box: first as the box itself tells, then as long as a fresh filling lasts. */
export function duesOf(
  lines: readonly BoxLine[],
  rooms: readonly Room[],
  knowledge: Figures,
): readonly RenewalDue[] {
  const byName = new Map(rooms.map((room) => [room.given.room, room]))
  return lines.flatMap((line): readonly RenewalDue[] => {
    const { outlook, box } = line
    const early = outlook?.renewOn?.early ?? null
    if (outlook === null || early === null) return []
    return [
      {
        box: box.given.box,
        room: line.room,
        shelf: box.given.shelf ?? '',
        gelKg: box.given.gel_kg ?? 0,
        safeOn: early,
        likelyOn: outlook.renewOn?.likely ?? null,
        lastsDays: lastsDays(line, outlook, early, byName.get(line.room), knowledge),
      },
    ]
  })
}

/**
 * How long a fresh filling keeps the box below its limit in nine cases of ten [d]; null: beyond telling, or not even from one
 * week to the next, for which no plan can make up. The gel is supposed to come as dry again as it was put in last, or, where
 * nobody wrote it, as well-dried gel is.
 */
function lastsDays(
  { box: { given: box } }: BoxLine,
  { airChangesPerDay, limitRhPercent, surroundings }: BoxOutlook,
  from: IsoDate,
  room: Room | undefined,
  knowledge: Figures,
): number | null {
  const fresh: BoxGiven = {
    ...box,
    gel_conditioned_on: from,
    gel_rh_percent: box.gel_rh_percent ?? figureValue(knowledge, 'gel-start-rh-unwritten'),
  }
  const filled = closedBox({ box: fresh, room: room?.given, entries: [], limitRhPercent }, knowledge)
  if (typeof filled === 'string' || limitRhPercent === null) return null
  const { meanRhPercent, swingRhPercent, highestOn: highestOnDay } = surroundings
  const { p10 } = daysToLimitSpread(
    {
      ...filled,
      airChangesPerDay,
      startDay: filled.startedOn,
      room: { meanRhPercent, swingRhPercent, highestOnDay },
    },
    limitRhPercent,
  )
  return Number.isFinite(p10) && p10 >= 7 ? Math.floor(p10) : null
}

const weeksAhead = 52
const everyMonth = 12

export function meansOf(
  setting: StoreSettingGiven,
  today: IsoDate,
): { readonly means: Means; readonly untold: readonly Untold[] } {
  const { minutesPerBox, hoursByMonth, hoursPerWeek, gelDryKg, gelSpentKg } = setting
  const { ovenKgPerBatch, ovenBatchesPerWeek, ovenHoursPerBatch } = setting
  const hours =
    hoursByMonth ?? (hoursPerWeek === null ? null : Array.from({ length: everyMonth }, () => hoursPerWeek))
  const oven =
    ovenKgPerBatch !== null && ovenKgPerBatch > 0 && ovenBatchesPerWeek !== null
      ? {
          kgPerBatch: ovenKgPerBatch,
          batchesPerWeek: ovenBatchesPerWeek,
          hoursPerBatch: ovenHoursPerBatch ?? 0,
        }
      : null
  const untold: Untold[] = []
  if (hours === null) untold.push('hours')
  if (minutesPerBox === null) untold.push('minutes')
  if (gelDryKg === null) untold.push('gel')
  if (ovenKgPerBatch === null || ovenBatchesPerWeek === null) untold.push('oven')
  return {
    means: {
      startOn: today,
      weeks: weeksAhead,
      minutesPerBox: minutesPerBox ?? 0,
      hoursPerWeek: hours ?? Array.from({ length: everyMonth }, () => Infinity),
      dryKg: gelDryKg ?? Infinity,
      spentKg: gelSpentKg ?? 0,
      oven,
    },
    untold,
  }
}

/** The day after the last that is looked at. */
export const endOf = ({ startOn, weeks }: Means): IsoDate => addDays(startOn, 7 * weeks)
