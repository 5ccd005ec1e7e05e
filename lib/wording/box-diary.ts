import type { DiaryGiven } from '../record/store-diary.ts'
import { numberWords } from './band.ts'
import { kilogramWords } from './box-gel.ts'
import { countWords, listWords } from './list.ts'
import { gelColourWords, intervalWords, lidWords } from './walk.ts'

type Entry = {
  readonly [Kind in keyof DiaryGiven]: { readonly kind: Kind; readonly given: DiaryGiven[Kind] }
}[keyof DiaryGiven]

const withNote = (said: string, note: string | undefined) =>
  note === undefined || note === '' ? said : `${said}. ${note}`

/** What happened, as a line of the diary. */
export function diaryWords(entry: Entry, find: string | null): string {
  switch (entry.kind) {
    case 'round':
      return roundWords(entry.given)
    case 'gel-change':
      return gelChangeWords(entry.given)
    case 'moved':
      return movedWords(entry.given, find ?? 'a find')
    case 'water-change':
      return withNote('Water changed', entry.given.note)
    case 'lid':
      return lidNoteWords(entry.given)
    case 'coupon':
      return withNote(
        `Coupon of ${entry.given.metal}: ${numberWords(entry.given.mass_change_mg)} mg in ${countWords(entry.given.days, 'day')}`,
        entry.given.note,
      )
    case 'flood':
      return withNote(floodWords[entry.given.cause], entry.given.note)
    case 'logger-placed':
      return `Logger ${entry.given.serial} put here`
  }
}

const floodWords = {
  flood: 'Flood water came in',
  leak: 'A leak came in',
  condensation: 'Water condensed',
  rain: 'Rain came in',
} as const

function roundWords({ strip_low, strip_high, gel_colour, lid }: DiaryGiven['round']): string {
  const seen = [
    ...(strip_low === undefined && strip_high === undefined
      ? []
      : [`strip ${intervalWords([strip_low ?? 0, strip_high ?? 100])} %`]),
    ...(gel_colour === undefined ? [] : [`gel ${gelColourWords[gel_colour] ?? gel_colour}`]),
    ...(lid === undefined ? [] : [`lid ${lidWords[lid as keyof typeof lidWords] ?? lid}`]),
  ]
  return seen.length === 0 ? 'Looked at' : `Read: ${listWords(seen)}`
}

function gelChangeWords({
  gel_kg,
  gel_kind,
  gel_rh_percent,
  removed_kg,
  note,
}: DiaryGiven['gel-change']): string {
  const kind = gel_kind === undefined ? 'gel' : `gel (${gel_kind})`
  const dry = gel_rh_percent === undefined ? '' : `, conditioned to ${numberWords(gel_rh_percent)} %`
  const out = removed_kg === undefined ? '' : `; ${kilogramWords(removed_kg)} of spent gel out`
  return withNote(`${kilogramWords(gel_kg)} of ${kind} put in${dry}${out}`, note)
}

function movedWords({ move, from_box, where, why }: DiaryGiven['moved'], find: string): string {
  const because = why === undefined ? '' : ` (${why})`
  if (move === 'out') return `${find} went out${where === undefined ? '' : ` to ${where}`}${because}`
  if (move === 'back') return `${find} came back${because}`
  return `${find} put in here${from_box === undefined ? '' : ` from ${from_box}`}${because}`
}

function lidNoteWords({ lid, minutes, why }: DiaryGiven['lid']): string {
  const open = minutes === undefined ? '' : ` for ${numberWords(minutes)} min`
  const said = {
    opened: `Opened${open}`,
    seated: 'Lid looked at: seated',
    'not-seated': 'Lid found not seated',
  }[lid]
  return why === undefined ? said : `${said}: ${why}`
}
