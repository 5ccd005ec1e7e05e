import 'server-only'
import type { Contacts } from '../../lib/engine/plan.ts'
import type { SitePeople } from '../../lib/services/keep-contacts.ts'

/** Whom to call while a find's site is not known yet: the first site of the project that names somebody. */
export function contactsOf({ sites, contacts }: SitePeople): Contacts {
  const found: Record<string, { readonly name: string; readonly reach: string }> = {}
  for (const site of sites) {
    for (const { siteId, kind, name, reach } of contacts) {
      if (siteId === site.id && name !== '') found[kind] ??= { name, reach }
    }
  }
  return found
}
