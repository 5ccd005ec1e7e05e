import { given, refused } from '../base/outcome.ts'
import type { Actor, Site, SiteContact } from './kept.ts'
import type { ContactToKeep, World } from './ports.ts'
import { missing, type Answer } from '../base/trouble.ts'

export interface SitePeople {
  readonly sites: readonly Site[]
  readonly contacts: readonly SiteContact[]
}

/** A project's sites and whom each of them calls. */
export function sitePeople({ store }: World, projectId: string): Answer<SitePeople> {
  return store.read(async (reads) =>
    given({ sites: await reads.sites.ofProject(projectId), contacts: await reads.sites.contacts(projectId) }),
  )
}

/** Keeps a site's people; lists that print whom to call are made again before they are next shown. */
export function keepContacts(
  world: World,
  { siteId, contacts }: { readonly siteId: string; readonly contacts: readonly ContactToKeep[] },
  by: Actor,
): Answer<readonly SiteContact[]> {
  const long = contacts.find(({ name, reach }) => name.length > 120 || reach.length > 200)
  if (long) return Promise.resolve(refused({ kind: 'not-accepted', field: long.kind, because: 'too-long' }))
  return world.store.write('keep-contacts', by, async (writes) => {
    const site = await writes.sites.byId(siteId)
    if (!site) return refused(missing('site', siteId))
    for (const { kind, name, reach, version } of contacts) {
      const kept = await writes.sites.keepContact(siteId, {
        kind,
        name: name.trim(),
        reach: reach.trim(),
        version,
      })
      if (!kept.ok) return kept
    }
    await writes.standings.outdate(site.projectId)
    return given((await writes.sites.contacts(site.projectId)).filter((one) => one.siteId === siteId))
  })
}
