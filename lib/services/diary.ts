import type { IsoDate } from '../base/calendar.ts'
import type { DiaryGiven, DiaryKind } from '../record/store-diary.ts'
import type { Actor, Kept } from './kept.ts'

interface Entry<Kind extends DiaryKind> {
  readonly kind: Kind
  /** Names of the box and of the room it concerns; null where it concerns none. */
  readonly box: string | null
  readonly room: string | null
  readonly findId: string | null
  readonly on: IsoDate
  /** The moment, where it is known: it orders what happened on one day. */
  readonly atMs: number | null
  /** `extra`: columns of no meaning here, kept as they came. */
  readonly given: DiaryGiven[Kind] & { readonly extra?: Readonly<Record<string, string>> }
}

type Each<Of extends { readonly [Kind in DiaryKind]: unknown }> = Of[DiaryKind]

/** What is to be written in the diary. The same content twice is one entry, so that a walk sent again does no harm. */
export type NewEntry = Each<{ readonly [Kind in DiaryKind]: Entry<Kind> }>

export type DiaryEntry<Of extends DiaryKind = DiaryKind> = {
  readonly [Kind in DiaryKind]: Kept & Entry<Kind> & { readonly projectId: string; readonly by: Actor }
}[Of]

/** Which entries of a project; whatever is left out does not narrow. */
export interface DiaryQuery {
  readonly projectId: string
  readonly kinds?: readonly DiaryKind[]
  readonly boxes?: readonly string[]
  readonly rooms?: readonly string[]
  readonly findIds?: readonly string[]
  readonly from?: IsoDate
  readonly to?: IsoDate
}
