import type { Contacts } from '../engine/plan.ts'
import type { SiteContact } from './kept.ts'
import type { Reads } from './ports.ts'

/** A site's people by site id, as a plan prints them; an entry with nobody in it is no contact. */
export async function contactsBySite(
  reads: Reads,
  projectId: string,
): Promise<ReadonlyMap<string, Contacts>> {
  return groupContacts(await reads.sites.contacts(projectId))
}

export function groupContacts(contacts: readonly SiteContact[]): ReadonlyMap<string, Contacts> {
  const sites = new Map<string, Record<string, { name: string; reach: string }>>()
  for (const { siteId, kind, name, reach } of contacts) {
    if (name === '' && reach === '') continue
    const site = sites.get(siteId) ?? {}
    site[kind] = { name, reach }
    sites.set(siteId, site)
  }
  return sites
}
