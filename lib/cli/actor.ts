import os from 'node:os'
import type { Actor } from '../services/kept.ts'
import type { Call } from './command.ts'
import { textOption } from './command.ts'
import { choiceOption } from './options.ts'

const roles = ['assistant', 'conservator', 'store-manager'] as const

/** Options of every command that writes. */
export const actorOptions = { by: { type: 'string' }, role: { type: 'string' } } as const

export const actorHelp = `
--by NAME       who does it; the name of this account where left out
--role ROLE     assistant, conservator or store-manager`

/** Who writes: as said, not proven. */
export function actorOf(call: Call): Actor {
  const account = os.userInfo().username
  return {
    name: textOption(call, 'by')?.trim() || account,
    role: choiceOption(call, 'role', roles),
    device: os.hostname(),
  }
}
