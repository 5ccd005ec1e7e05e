import 'server-only'
import { cookies } from 'next/headers'
import type { Who } from '../../lib/knowledge/knowledge.ts'

/** Who sits at this device: chosen by themselves, so *unverified* until there are accounts. */
export interface Person {
  readonly name: string
  readonly role: Who
  readonly device: string
}

export const personCookie = 'quietmetal-person'
export const roles = ['assistant', 'conservator', 'store-manager'] as const satisfies readonly Who[]

export async function personHere(): Promise<Person | null> {
  const kept = (await cookies()).get(personCookie)?.value
  return kept === undefined ? null : readPerson(kept)
}

function readPerson(text: string): Person | null {
  try {
    const kept: unknown = JSON.parse(text)
    if (typeof kept !== 'object' || kept === null) return null
    const { name, role, device } = kept as Record<string, unknown>
    const knownRole = roles.find((candidate) => candidate === role)
    if (typeof name !== 'string' || name === '' || typeof device !== 'string' || knownRole === undefined)
      return null
    return { name: name.slice(0, 80), role: knownRole, device: device.slice(0, 80) }
  } catch {
    return null
  }
}
