import type { Sighting } from '../boxes/box.ts'
import { standOn } from '../record/logger-register.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { boxNeeds, limitOf } from './box-needs.ts'
import { dayOfNumber } from './box-sightings.ts'
import type { DiaryEntry } from './diary.ts'
import type { Box } from './places.ts'
import type { BoxLine, Newest } from './show-store.ts'
import { stopsInWords } from './stops-heard.ts'
import type { StoreData } from './store-data.ts'
import { tubOf } from './tub.ts'

/** A box as lists show it, before its humidity is reckoned. */
export type PlainLine = Omit<BoxLine, 'outlook' | 'noOutlook'> & { readonly limitRhPercent: number | null }

const hundredths = (value: number) => Math.round(value * 100) / 100

const seen = (one: Sighting): Newest | null => {
  const on = dayOfNumber(Math.floor(one.on))
  switch (one.kind) {
    case 'logger':
      return {
        on,
        by: 'logger',
        lowRhPercent: hundredths(one.rhPercent),
        highRhPercent: hundredths(one.rhPercent),
      }
    case 'below-range':
      return { on, by: 'logger', lowRhPercent: 0, highRhPercent: one.floorRhPercent }
    case 'strip':
      return { on, by: 'strip', lowRhPercent: one.lowRhPercent, highRhPercent: one.highRhPercent }
    default:
      return null
  }
}

/** The last look into the box that told a humidity. */
export function newestOf(sightings: readonly Sighting[]): Newest | null {
  for (let at = sightings.length - 1; at >= 0; at -= 1) {
    const told = seen(sightings[at]!)
    if (told) return told
  }
  return null
}

/** What was last noted of the lid. */
function lidOf(entries: readonly DiaryEntry[]): BoxLine['lid'] {
  for (const entry of entries.toReversed()) {
    if (entry.kind === 'lid') return { state: entry.given.lid, on: entry.on }
    if (entry.kind !== 'round') continue
    const { lid } = entry.given
    if (lid === 'seated' || lid === 'not-seated') return { state: lid, on: entry.on }
  }
  return null
}

/** Everything a person has written of a box in words of their own. */
export function wordsOf({ given }: Box, entries: readonly DiaryEntry[]): readonly string[] {
  const own = [given.seal_note ?? '', ...Object.values(given.extra ?? {})]
  const told = entries.flatMap(({ given: entry }) => [
    ...Object.values(entry.extra ?? {}),
    ...('note' in entry && entry.note !== undefined ? [entry.note] : []),
    ...('why' in entry && entry.why !== undefined ? [entry.why] : []),
  ])
  return [...own, ...told].filter((text) => text !== '')
}

const outNow = (data: StoreData, findId: string) => data.outings.get(findId)?.at(-1)?.to === null

export function plainLine(
  data: StoreData,
  box: Box,
  sightings: readonly Sighting[],
  knowledge: Knowledge,
): PlainLine {
  const { box: name, room: roomName = '', kind = 'box' } = box.given
  const room = data.rooms.find(({ given }) => given.room === roomName)?.given
  const finds = data.standings.get(name) ?? []
  const entries = data.diary.get(name) ?? []
  const newest = newestOf(sightings)
  return {
    box,
    kind,
    room: roomName,
    finds: finds.length,
    ...boxNeeds(box.given, room, finds),
    limitRhPercent: limitOf(box.given, finds),
    stops: stopsInWords(name, wordsOf(box, entries), knowledge, data.today),
    out: finds.filter(({ findId }) => outNow(data, findId)).length,
    newest,
    unreadSince: newest?.on ?? null,
    lid: lidOf(entries),
    loggers: loggersToday(data, name),
    tub: tubOf(box.given, finds.length, entries, data.tubStays.get(name) ?? [], data.today, knowledge),
  }
}

function loggersToday({ loggers, today }: StoreData, box: string): readonly string[] {
  return loggers.flatMap(({ given: { serial, stood } }) =>
    standOn(stood, today)?.box === box ? [serial] : [],
  )
}
