import { isoDate } from '../base/calendar.ts'
import { given, refused, type Outcome } from '../base/outcome.ts'
import { missing, type Answer, type Trouble } from '../base/trouble.ts'
import { readCorrectionTable } from '../tables/correction-file.ts'
import { csvText } from '../tables/csv-write.ts'
import { notAccepted } from './enter-diary.ts'
import type { Identification } from './identification.ts'
import { identify } from './identify.ts'
import type { Actor, Find } from './kept.ts'
import type { World, Writes } from './ports.ts'
import { within } from './within.ts'

/** What was found out, as a table that comes back as the same. `known` says of made-up ones that they are. */
const columns = [
  'site_code',
  'find_number',
  'component',
  'matter',
  'interpretation',
  'method',
  'on',
  'by_whom',
  'reference',
  'words',
  'known',
] as const

type Row = Readonly<Record<(typeof columns)[number], string>>

const rowOf = ({ given: told }: Identification, find: Find, known: string): Row => ({
  site_code: find.siteCode,
  find_number: find.findNumber,
  component: told.component,
  matter: told.matter,
  interpretation: told.interpretation,
  method: told.method,
  on: told.on,
  by_whom: told.byWhom,
  reference: told.reference,
  words: told.words,
  known,
})

/** Every identification of a project, oldest first, the ones that were overruled among them. */
export function exportIdentifications(
  { store }: World,
  projectId: string,
): Answer<{ readonly fileName: string; readonly content: string }> {
  return store.read(async (reads) => {
    const project = await reads.projects.byId(projectId)
    if (!project) return refused(missing('project', projectId))
    const all = await reads.identifications.ofProject(projectId)
    const finds = await reads.finds.byIds([...new Set(all.map(({ findId }) => findId))])
    const byId = new Map(finds.map((find) => [find.id, find]))
    const rows = all.map((one) => rowOf(one, byId.get(one.findId)!, project.invented ? 'invented' : ''))
    return given({
      fileName: `${project.name} - identifications.csv`,
      content: csvText([columns, ...rows.map((row) => columns.map((column) => row[column]))]),
    })
  })
}

async function findOf(writes: Writes, projectId: string, site: string, number: string): Promise<Find | null> {
  const sites = await writes.sites.ofProject(projectId)
  const there = sites.find(({ code }) => code === site)
  return there ? ((await writes.finds.byNumbers(there.id, [number]))[0] ?? null) : null
}

/**
 * Such a table into a project, all of it or nothing; what is there already stays once. Each is entered as on its own day,
 * against what the record says of the find.
 */
export function enterIdentifications(
  world: World,
  { projectId, bytes }: { readonly projectId: string; readonly bytes: Uint8Array },
  by: Actor,
): Answer<{ readonly rows: number }> {
  const { rows, broken } = readCorrectionTable(bytes, columns)
  return world.store.write(
    'enter-identifications',
    by,
    async (writes): Promise<Outcome<{ rows: number }, Trouble>> => {
      if (broken.length > 0) return notAccepted(`row ${broken[0]}`, 'unknown')
      for (const { row, cells } of rows) {
        const cell = (column: keyof Row) => cells.get(column) ?? ''
        const fault = (column: string) => notAccepted(`row ${row}, ${column}`, 'unknown')
        const find = await findOf(writes, projectId, cell('site_code'), cell('find_number'))
        const on = isoDate(cell('on'))
        if (!find) return fault('find_number')
        if (on === null) return fault('on')
        const entered = await identify(
          { ...within(world, writes), today: () => on },
          {
            findId: find.id,
            component: cell('component'),
            matter: cell('matter'),
            interpretation: cell('interpretation'),
            method: cell('method'),
            on,
            byWhom: cell('by_whom'),
            reference: cell('reference'),
            words: cell('words'),
          },
          by,
        )
        if (entered.ok) continue
        return entered.problems.kind === 'not-accepted' ? fault(entered.problems.field) : entered
      }
      return given({ rows: rows.length })
    },
  )
}
