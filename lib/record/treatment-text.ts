import { doneAlready } from './ids.ts'
import { nameKey } from './likeness.ts'
import type { Treatment } from './record.ts'

/** `lacquered@2017-03|by=…|medium=…`: what, when, and where known by whom and with what. */
const escaped = (text: string) => text.replace(/[\\@|]/g, '\\$&')

export function writeTreatment(treatment: Treatment): string {
  const on = treatment.on === undefined ? '' : `@${escaped(treatment.on)}`
  const by = treatment.by === undefined ? '' : `|by=${escaped(treatment.by)}`
  const medium = treatment.medium === undefined ? '' : `|medium=${escaped(treatment.medium)}`
  return `${escaped(treatment.what)}${on}${by}${medium}`
}

const done: readonly string[] = doneAlready
const pieces = /\\[\\@|]|[@|]|[^\\@|]+|\\/g

/** Null where it does not say what was done, or says a thing twice. */
export function readTreatment(text: string): Treatment | null {
  const parts: { mark: string; text: string }[] = [{ mark: '', text: '' }]
  for (const piece of text.match(pieces) ?? []) {
    if (piece === '|' || (piece === '@' && parts.length === 1)) parts.push({ mark: piece, text: '' })
    else parts.at(-1)!.text += piece.length === 2 && piece.startsWith('\\') ? piece.slice(1) : piece
  }
  const read: { what: string; on?: string; by?: string; medium?: string } = { what: parts[0]!.text.trim() }
  for (const part of parts.slice(1)) {
    const [, key, value] =
      part.mark === '@' ? [null, 'on', part.text] : (/^\s*(by|medium)\s*=(.*)$/s.exec(part.text) ?? [])
    if ((key !== 'on' && key !== 'by' && key !== 'medium') || read[key] !== undefined) return null
    if (value!.trim() !== '') read[key] = value!.trim()
  }
  if (read.what === '') return null
  const id = nameKey(read.what)
  return done.includes(id) ? { ...read, what: id } : read
}
