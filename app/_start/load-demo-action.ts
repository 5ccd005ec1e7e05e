'use server'

import { randomUUID } from 'node:crypto'
import { cookies } from 'next/headers'
import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { personHere } from '../_server/person.ts'
import { projectCookie } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'

export async function loadDemo(): Promise<void> {
  const by = (await personHere()) ?? { name: 'Visitor', role: 'assistant' as const, device: randomUUID() }
  const services = await servicesHere()
  const { project } = await orElsewhere(services.loadDemo(by))
  const jar = await cookies()
  jar.set(projectCookie, project.id, {
    path: '/',
    maxAge: 365 * 24 * 60 * 60,
    sameSite: 'lax',
    httpOnly: true,
  })
  revalidatePath('/', 'layout')
  redirect('/')
}
