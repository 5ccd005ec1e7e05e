import { entryOfRow } from '../record/diary-rows.ts'
import { problem, type Problem } from '../record/problem.ts'
import type { DiaryRow } from '../record/store-diary.ts'
import type { RoundGiven } from '../record/store-rounds.ts'
import type { PlacesRead, Told, Unreadable } from '../tables/place-table.ts'
import { hashed } from './diary-hash.ts'
import type { NewEntry } from './diary.ts'
import type { Writes } from './ports.ts'

export interface EntriesRead {
  readonly entries: readonly (NewEntry & { readonly contentHash: string })[]
  readonly problems: readonly Problem[]
  /** Finds that were moved and have to be planned again where they lie now. */
  readonly movedFinds: readonly string[]
  readonly unreadable: readonly Unreadable[]
}

async function listedBoxes(writes: Writes, projectId: string): Promise<ReadonlySet<string>> {
  return new Set((await writes.boxes.ofProject(projectId)).map(({ given }) => given.box))
}

const unlisted = (told: Told<unknown>, box: string) =>
  problem('unlisted-box', { ...placeOf(told), column: 'box' }, box)

const placeOf = ({ row, line, sheet }: Told<unknown>) => ({
  row,
  ...(line === undefined ? {} : { line }),
  ...(sheet === undefined ? {} : { sheet }),
})

export function roundEntry({ box, on, ...told }: RoundGiven): NewEntry {
  return { kind: 'round', box, room: null, findId: null, on, atMs: null, given: told }
}

/** Rounds as entries. One of a box that nobody has listed is kept under its name, and said. */
export async function roundRows(
  writes: Writes,
  projectId: string,
  rows: readonly Told<RoundGiven>[],
): Promise<EntriesRead> {
  const boxes = rows.length === 0 ? new Set<string>() : await listedBoxes(writes, projectId)
  return {
    entries: rows.map(({ given }) => hashed(roundEntry(given))),
    problems: rows.flatMap((told) => (boxes.has(told.given.box) ? [] : [unlisted(told, told.given.box)])),
    movedFinds: [],
    unreadable: [],
  }
}

/** The finds that rows name, by site code and number. */
async function findsNamed(writes: Writes, projectId: string, rows: readonly Told<DiaryRow>[]) {
  const sites = new Map((await writes.sites.ofProject(projectId)).map(({ code, id }) => [code, id]))
  const finds = new Map<string, string>()
  for (const [code, own] of Map.groupBy(rows, ({ given }) => given.site_code ?? '')) {
    const siteId = sites.get(code)
    if (siteId === undefined) continue
    const numbers = own.flatMap(({ given }) => given.find_number ?? [])
    for (const { id, findNumber } of await writes.finds.byNumbers(siteId, numbers))
      finds.set(`${code}\n${findNumber}`, id)
  }
  return finds
}

/** Rows of the diary as entries; one that names a find which is not kept here is handed back to be mended. */
export async function diaryRows(
  writes: Writes,
  projectId: string,
  rows: readonly Told<DiaryRow>[],
  kind: PlacesRead['kind'],
): Promise<EntriesRead> {
  if (rows.length === 0) return { entries: [], problems: [], movedFinds: [], unreadable: [] }
  const boxes = await listedBoxes(writes, projectId)
  const finds = await findsNamed(writes, projectId, rows)
  const entries: NewEntry[] = []
  const problems: Problem[] = []
  const lost: { readonly told: Told<DiaryRow>; readonly why: Problem }[] = []
  for (const told of rows) {
    const { find, ...entry } = entryOfRow(told.given)
    const findId = find === null ? null : finds.get(`${find.site_code}\n${find.find_number}`)
    if (findId === undefined) {
      const name = `${find!.site_code} ${find!.find_number}`.trim()
      lost.push({
        told,
        why: problem('unlisted-find', { ...placeOf(told), column: 'find_number' }, name),
      })
      continue
    }
    entries.push({ ...entry, findId } as NewEntry)
    if (entry.box !== null && !boxes.has(entry.box)) problems.push(unlisted(told, entry.box))
  }
  return {
    entries: entries.map(hashed),
    problems: [...problems, ...lost.map(({ why }) => why)],
    movedFinds: entries.flatMap(({ kind, findId }) => (kind === 'moved' && findId !== null ? [findId] : [])),
    unreadable: handedBack(lost, kind),
  }
}

/** Rows that were read and could not be kept, written out again as they were understood. */
function handedBack(
  lost: readonly { readonly told: Told<DiaryRow>; readonly why: Problem }[],
  kind: PlacesRead['kind'],
): readonly Unreadable[] {
  if (lost.length === 0) return []
  const flat = lost.map(({ told }) => {
    const { extra, ...own } = told.given
    const all: Readonly<Record<string, string | number>> = { ...own, ...extra }
    return all
  })
  const columns = [...new Set(flat.flatMap((row) => Object.keys(row)))]
  const rows = lost.map(({ told, why }, at) => ({
    row: told.row,
    line: told.line ?? null,
    cells:
      kind === 'json' ? [JSON.stringify(flat[at])] : columns.map((column) => String(flat[at]![column] ?? '')),
    problems: [why],
  }))
  return [{ sheet: lost[0]!.told.sheet ?? null, headings: kind === 'json' ? ['json'] : columns, rows }]
}
