import { mergeDay, type DayBlock } from '../logger/day-block.ts'
import type { Sketch } from '../logger/day-sketch.ts'
import type { ReadingDay } from './loggers.ts'

interface SketchKept {
  readonly sketch: Sketch
  readonly rounded: number
}

export const sketchOfText = (text: string): Sketch => (JSON.parse(text) as SketchKept).sketch

export function toKeep(
  { day, text, sketch, rounded }: DayBlock,
  { loggerId, channel }: { readonly loggerId: string; readonly channel: string },
): ReadingDay {
  const kept: SketchKept = { sketch, rounded }
  return { loggerId, channel, day, block: text, sketch: JSON.stringify(kept) }
}

export function fromKept({ day, block, sketch }: Pick<ReadingDay, 'day' | 'block' | 'sketch'>): DayBlock {
  const { sketch: known, rounded } = JSON.parse(sketch) as SketchKept
  return { day, text: block, sketch: known, rounded }
}

export interface Merged {
  readonly days: readonly (ReadingDay & { readonly version: number | null })[]
  /** Moments that were not there before. */
  readonly added: number
  /** Moments of which another value was kept already; it stays. */
  readonly conflicts: number
}

/** Days of a file over those that are kept; only what changes is to be written. */
export function mergedDays(
  kept: readonly (ReadingDay & { readonly version: number })[],
  offered: readonly DayBlock[],
  channel: { readonly loggerId: string; readonly channel: string },
): Merged {
  const there = new Map(kept.map((day) => [day.day, day]))
  const days: (ReadingDay & { version: number | null })[] = []
  let [added, conflicts] = [0, 0]
  for (const block of offered) {
    const known = there.get(block.day)
    if (!known) {
      days.push({ ...toKeep(block, channel), version: null })
      added += block.sketch.readings
      continue
    }
    const merged = mergeDay(fromKept(known), block)
    conflicts += merged.conflicts
    if (merged.added === 0) continue
    added += merged.added
    days.push({ ...toKeep(merged, channel), version: known.version })
  }
  return { days, added, conflicts }
}
