'use server'

import { randomUUID } from 'node:crypto'
import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { personHere } from '../_server/person.ts'
import { chooseProjectHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'

export async function loadDemo(): Promise<void> {
  const by = (await personHere()) ?? { name: 'Visitor', role: 'assistant' as const, device: randomUUID() }
  const services = await servicesHere()
  const { project } = await orElsewhere(services.loadDemo(by))
  await chooseProjectHere(project.id)
  revalidatePath('/', 'layout')
  redirect('/')
}
