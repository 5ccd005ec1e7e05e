import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { mendFile, type MendFile } from '../tables/mend-file.ts'
import type { UnreadableRow } from '../tables/file-read.ts'
import { problemAdvice } from '../wording/problems.ts'
import type { ImportBatch } from './kept.ts'
import type { World } from './ports.ts'

/** A project's imports, the newest first. */
export function listImports({ store }: World, projectId: string): Answer<readonly ImportBatch[]> {
  return store.read(async (reads) => given(await reads.imports.ofProject(projectId)))
}

const rowsAtOnce = 1000

/** The rows of an import that could not be read, as they came and with what is wrong beside each: to be mended and read again. */
export function rejectedRows(
  { store }: World,
  importId: string,
): Answer<MendFile & { readonly fileName: string }> {
  return store.read(async (reads) => {
    const batch = await reads.imports.byId(importId)
    if (!batch) return refused(missing('import', importId))
    const rows: UnreadableRow[] = []
    for (;;) {
      const slice = await reads.imports.rejected(importId, rows.at(-1)?.row ?? -1, rowsAtOnce)
      rows.push(...slice)
      if (slice.length < rowsAtOnce) break
    }
    const file = mendFile({ kind: batch.kind, headings: batch.headings, unreadableRows: rows }, problemAdvice)
    return given({
      ...file,
      fileName: `${batch.fileName.replace(/\.[^.]*$/, '')} - to mend.${file.extension}`,
    })
  })
}
