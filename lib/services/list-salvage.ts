import { given } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import { groupContacts } from './site-contacts.ts'
import { placeOf } from './find-query.ts'
import { salvageRooms, type SalvageRoom } from '../papers/salvage.ts'
import type { Contacts } from '../engine/plan.ts'
import type { Reads, World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'

export interface SalvageList {
  readonly rooms: readonly SalvageRoom[]
  /** Finds whose records name no box, or one that nobody has listed: they cannot be found from this list. */
  readonly elsewhere: number
  readonly contacts: readonly { readonly site: string; readonly contacts: Contacts }[]
}

const atOnce = 500

/** Every find of a project as it stands today, in the order of numbers. */
export async function everyStanding(reads: Reads, projectId: string): Promise<readonly Standing[]> {
  const all: Standing[] = []
  for (;;) {
    const last = all.at(-1)
    const after = last === undefined ? {} : { after: placeOf(last) }
    const page = await reads.standings.list({ projectId, order: 'number', limit: atOnce, ...after })
    all.push(...page)
    if (page.length < atOnce) return all
  }
}

/** What is carried out of each room first, with who is to be called. */
export async function listSalvage(world: World, projectId: string): Answer<SalvageList> {
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const inBox = Map.groupBy(await everyStanding(reads, projectId), ({ line }) => line.box)
    const boxes = (await reads.boxes.ofProject(projectId)).map(({ given: box }) => ({
      given: box,
      finds: (inBox.get(box.box) ?? []).map(({ line }) => line),
    }))
    const listed = new Set(boxes.map(({ given: box }) => box.box))
    const elsewhere = [...inBox].reduce((sum, [box, finds]) => sum + (listed.has(box) ? 0 : finds.length), 0)
    const people = groupContacts(await reads.sites.contacts(projectId))
    const sites = await reads.sites.ofProject(projectId)
    const contacts = sites.flatMap(({ id, code }) => {
      const of = people.get(id)
      return of === undefined ? [] : [{ site: code, contacts: of }]
    })
    return given({ rooms: salvageRooms(boxes), elsewhere, contacts })
  })
}
