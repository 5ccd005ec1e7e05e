import { isoDate, type IsoDate } from '../base/calendar.ts'
import { given, refused, type Outcome } from '../base/outcome.ts'
import { missing, type Trouble } from '../base/trouble.ts'
import { hashed } from './diary-hash.ts'
import type { NewEntry } from './diary.ts'
import type { Box } from './places.ts'
import type { Reads, World, Writes } from './ports.ts'

/** What happened when: on a day, and at a moment where the device that noted it knows one. */
export interface Happened {
  readonly on: IsoDate
  readonly atMs?: number | null
}

export const notAccepted = (
  field: string,
  because: (Trouble & { readonly kind: 'not-accepted' })['because'],
): Outcome<never, Trouble> => refused({ kind: 'not-accepted', field, because })

/** A day that exists and has come; null where it may stand. */
export function wrongDay({ today }: World, on: string, field = 'on'): Outcome<never, Trouble> | null {
  if (on === '') return notAccepted(field, 'empty')
  return isoDate(on) === null || on > today() ? notAccepted(field, 'unknown') : null
}

/** The first quantity that lies outside its range; null where all may stand. */
export function wrongNumber(
  numbers: readonly (readonly [field: string, value: number | undefined, from: number, to: number])[],
): Outcome<never, Trouble> | null {
  const wrong = numbers.find(([, value, from, to]) => value !== undefined && !(value >= from && value <= to))
  return wrong ? notAccepted(wrong[0], 'unknown') : null
}

/** The listed box of that name. */
export async function boxNamed(
  reads: Reads,
  projectId: string,
  name: string,
): Promise<Outcome<Box, Trouble>> {
  if (!(await reads.projects.byId(projectId))) return refused(missing('project', projectId))
  const box = (await reads.boxes.ofProject(projectId)).find((one) => one.given.box === name)
  return box ? given(box) : refused(missing('box', name))
}

/** Enters it, or finds it there word for word: then nothing else is to be done either. */
export async function enterOnce(writes: Writes, projectId: string, entry: NewEntry): Promise<boolean> {
  return (await writes.diary.add(projectId, [hashed(entry)])).length > 0
}

/** Only what was given, so that the same thing said twice is the same text. */
export function told<Given extends object>(
  all: Given,
): { readonly [Name in keyof Given]: Exclude<Given[Name], undefined> } {
  const filled = Object.entries(all).filter(([, value]) => value !== undefined && value !== '')
  return Object.fromEntries(filled) as { readonly [Name in keyof Given]: Exclude<Given[Name], undefined> }
}
