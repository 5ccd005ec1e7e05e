import { fields } from '../../lib/record/fields.ts'
import * as ids from '../../lib/record/ids.ts'
import { looks } from '../../lib/record/looks.ts'
import type { Drawings } from './kit/drawn.ts'
import { sheets } from './sheets.ts'

/** A question is drawn wholly or not at all, so what it can be answered with is what is drawn. */
function valuesOf(of: string): readonly string[] {
  if (Object.hasOwn(looks, of)) return looks[of]!
  if (Object.hasOwn(found, of)) return found[of]!
  return (fields as Readonly<Record<string, { readonly ids?: readonly string[] }>>)[of]?.ids ?? []
}
/** What a test can show is not a field of its own. */
const found: Readonly<Record<string, readonly string[]>> = { magnet: ids.magnet, radiograph: ids.radiograph }

const fieldOf = (key: string): string => key.slice(0, key.indexOf('/'))

/** Whether there is a drawing of a key, as `seen/orange-droplets`; known before any drawing is fetched. */
export function hasDrawing(key: string): boolean {
  const of = fieldOf(key)
  return sheets.some(({ draws }) => draws.includes(of)) && valuesOf(of).includes(key.slice(of.length + 1))
}

const here = new Map<string, Drawings>()
const coming = new Map<string, Promise<Drawings>>()

/** Drawings that are already here, as on the server, where all of them are. */
export function putHere(drawings: Drawings): void {
  for (const [key, draw] of Object.entries(drawings))
    here.set(fieldOf(key), { ...here.get(fieldOf(key)), [key]: draw })
}

/** The drawings of the sheet a key stands on, where they are here. */
export const drawingsHere = (key: string): Drawings | undefined => here.get(fieldOf(key))

/** The same, fetched: one promise a sheet. What could not be fetched stays blank, and is tried again when it is next shown. */
export function drawingsComing(key: string): Promise<Drawings> {
  const of = fieldOf(key)
  const already = coming.get(of)
  if (already !== undefined) return already
  const sheet = sheets.find(({ draws }) => draws.includes(of))
  if (sheet === undefined) return Promise.resolve({})
  const promise = sheet.load().then(
    (drawings) => {
      putHere(drawings)
      return drawings
    },
    () => {
      for (const one of sheet.draws) coming.delete(one)
      return {}
    },
  )
  for (const one of sheet.draws) coming.set(one, promise)
  return promise
}
