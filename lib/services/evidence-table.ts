import { matterSheet } from './knowledge-sheet.ts'
import type { World } from './ports.ts'

/** A matter's grades as the table that a specialist corrects and `knowledge correct` takes back; null where it is not known. */
export function evidenceTable({ knowledge }: World, { matter }: { readonly matter: string }): string | null {
  const found = Object.hasOwn(knowledge.matters, matter) ? knowledge.matters[matter] : undefined
  return found === undefined ? null : matterSheet(found, knowledge, 'csv')
}
