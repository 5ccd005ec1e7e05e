import type { IsoDate } from '../base/calendar.ts'
import { joinList, splitList } from './list-cell.ts'
import { eventColumns, type DiaryGiven, type DiaryRow, type TabledKind } from './store-diary.ts'

/** An entry of the diary as a row tells it: the find still by its number. */
export interface EntryTold {
  readonly kind: TabledKind
  readonly on: IsoDate
  readonly atMs: number | null
  readonly box: string | null
  readonly room: string | null
  readonly find: { readonly site_code: string; readonly find_number: string } | null
  readonly given: DiaryGiven[TabledKind] & { readonly extra?: Readonly<Record<string, string>> }
}

/** Columns that say where and when; all others say what. */
const places: readonly string[] = ['event', 'on', 'at', 'box', 'room', 'site_code', 'find_number', 'extra']

export function entryOfRow(row: DiaryRow): EntryTold {
  const kind = row.event as TabledKind
  const { must, may } = eventColumns[kind]
  const own = new Set<string>([...must, ...may])
  const given: Record<string, unknown> = {}
  const extra: Record<string, string> = { ...row.extra }
  for (const [column, value] of Object.entries(row)) {
    if (places.includes(column)) continue
    // What an event has no use for is kept all the same.
    if (!own.has(column)) extra[column] = String(value)
    else given[column] = column === 'boxes' ? splitList(String(value)) : value
  }
  const moment = row.at === undefined ? Number.NaN : Date.parse(row.at)
  if (row.at !== undefined && Number.isNaN(moment)) extra['at'] = row.at
  return {
    kind,
    on: row.on,
    atMs: Number.isNaN(moment) ? null : moment,
    box: row.box ?? null,
    room: row.room ?? null,
    find:
      row.find_number === undefined ? null : { site_code: row.site_code ?? '', find_number: row.find_number },
    given: Object.keys(extra).length === 0 ? given : { ...given, extra },
  }
}

export function rowOfEntry({ kind, on, atMs, box, room, find, given }: EntryTold): DiaryRow {
  const { extra, ...told } = given as Record<string, unknown> & { extra?: Readonly<Record<string, string>> }
  const { boxes, ...plain } = told as { boxes?: readonly string[] }
  return {
    event: kind,
    on,
    ...(atMs === null ? {} : { at: new Date(atMs).toISOString() }),
    ...(box === null ? {} : { box }),
    ...(room === null ? {} : { room }),
    ...(find === null
      ? {}
      : { ...(find.site_code === '' ? {} : { site_code: find.site_code }), find_number: find.find_number }),
    ...plain,
    ...(boxes === undefined ? {} : { boxes: joinList(boxes) }),
    ...(extra === undefined ? {} : { extra }),
  }
}
