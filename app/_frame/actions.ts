'use server'

import { randomUUID } from 'node:crypto'
import { cookies } from 'next/headers'
import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { personCookie, personHere, roles } from '../_server/person.ts'
import { chooseProjectHere } from '../_server/project.ts'
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
  const name = String(form.get('name') ?? '')
    .trim()
    .slice(0, 80)
  const role = roles.find((candidate) => candidate === form.get('role'))
  if (name === '' || role === undefined) return
  const device = (await personHere())?.device ?? randomUUID()
  const jar = await cookies()
  jar.set(personCookie, JSON.stringify({ name, role, device }), year)
  revalidatePath('/', 'layout')
  redirect(placeWithin(String(form.get('back') ?? '/')))
}

/** Back to where somebody came from, and never out of the tool. */
function placeWithin(path: string): string {
  return /^\/(?![/\\])[\w\-/?=&.,]*$/.test(path) ? path : '/'
}

export async function chooseProject(form: FormData): Promise<void> {
  const project = String(form.get('project') ?? '')
  if (!/^[\w-]{1,64}$/.test(project)) return
  await chooseProjectHere(project)
  revalidatePath('/', 'layout')
}
