import type { ConditionRecord } from '../record/record.ts'
import { contentHash } from './content-hash.ts'
import type { Reads } from './ports.ts'

export interface NewRecordCount {
  /** To be called before the records are added, batch after batch. */
  readonly see: (records: readonly ConditionRecord[]) => Promise<void>
  readonly sofar: () => {
    readonly recordsAdded: number
    readonly recordsAlreadyThere: number
    readonly findsNew: number
  }
}

const placeOf = ({ site_code, find_number }: ConditionRecord) => `${site_code ?? ''}\n${find_number}`

/** What adding would add to a project, or to one that is not begun yet: the same questions as adding asks, without adding. Two records alike in the file count once. */
export function newRecordCount(reads: Reads, projectId: string | null): NewRecordCount {
  const seen = new Set<string>()
  const newFinds = new Set<string>()
  let all = 0

  async function knownFinds(records: readonly ConditionRecord[]): Promise<ReadonlyMap<string, string>> {
    if (projectId === null) return new Map()
    const sites = new Map((await reads.sites.ofProject(projectId)).map((site) => [site.code, site.id]))
    const finds = new Map<string, string>()
    for (const [code, group] of Map.groupBy(records, ({ site_code }) => site_code ?? '')) {
      const siteId = sites.get(code)
      if (siteId === undefined) continue
      const numbers = group.map(({ find_number }) => find_number)
      for (const find of await reads.finds.byNumbers(siteId, numbers))
        finds.set(`${code}\n${find.findNumber}`, find.id)
    }
    return finds
  }

  return {
    async see(records) {
      const finds = await knownFinds(records)
      const kept = await reads.records.hashesOf([...finds.values()])
      const there = new Set(kept.map(({ findId, contentHash: hash }) => `${findId} ${hash}`))
      for (const record of records) {
        all += 1
        const place = placeOf(record)
        const find = finds.get(place)
        const hash = contentHash(record)
        if (find !== undefined && there.has(`${find} ${hash}`)) continue
        seen.add(`${place} ${hash}`)
        if (find === undefined) newFinds.add(place)
      }
    },
    sofar: () => ({ recordsAdded: seen.size, recordsAlreadyThere: all - seen.size, findsNew: newFinds.size }),
  }
}
