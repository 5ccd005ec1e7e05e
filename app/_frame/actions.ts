'use server'

import { randomUUID } from 'node:crypto'
import { cookies } from 'next/headers'
import { revalidatePath } from 'next/cache'
import { personCookie, personHere, roles } from '../_server/person.ts'
import { themeCookie, themes } from '../_server/theme.ts'

const year = { maxAge: 365 * 24 * 60 * 60, path: '/', sameSite: 'lax', httpOnly: true } as const

export async function chooseTheme(form: FormData): Promise<void> {
  const theme = themes.find((candidate) => candidate === form.get('theme'))
  if (theme === undefined) return
  const jar = await cookies()
  if (theme === 'device') jar.delete(themeCookie)
  else jar.set(themeCookie, theme, year)
  revalidatePath('/', 'layout')
}

export async function choosePerson(form: FormData): Promise<void> {
  const name = String(form.get('name') ?? '').trim().slice(0, 80)
  const role = roles.find((candidate) => candidate === form.get('role'))
  if (name === '' || role === undefined) return
  const device = (await personHere())?.device ?? randomUUID()
  const jar = await cookies()
  jar.set(personCookie, JSON.stringify({ name, role, device }), year)
  revalidatePath('/', 'layout')
}
