// Run and killed by kill.test.ts: enters one import after another and says which were kept.
import { given } from '../../lib/base/outcome.ts'
import { connect } from '../../lib/database/engine.ts'
import { storeOver } from '../../lib/database/store.ts'
import { assistant, record } from './samples.ts'

const store = storeOver(connect({ kind: 'sqlite', file: process.argv[2]! }))
const run = process.argv[3]!

for (let turn = 0; ; turn += 1) {
  const outcome = await store.write('import-file', assistant, async (writes) => {
    const project = await writes.projects.add({ name: 'Killed', invented: true })
    const site = await writes.sites.ensure(project.id, 'TW')
    const batch = {
      projectId: project.id,
      fileName: `${run}-${turn}`,
      sha256: '',
      kind: 'csv',
      headings: [],
    } as const
    const importId = await writes.imports.begin(batch)
    const numbers = Array.from({ length: 1500 }, (_, at) => `TW-${run}-${turn}-${at}`)
    const finds = await writes.finds.ensure(site, numbers)
    await writes.records.add(
      finds.map((find) => ({ findId: find.id, record: record(find.findNumber), contentHash: 'x', importId })),
    )
    const counts = {
      recordsRead: 1500,
      recordsAdded: 1500,
      recordsAlreadyThere: 0,
      rowsRejected: 0,
      problems: 0,
    }
    await writes.imports.finish(importId, counts)
    return given(importId)
  })
  if (outcome.ok) process.stdout.write(`${outcome.value}\n`)
}
