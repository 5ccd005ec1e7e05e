import type { Correction, CorrectionFault, CorrectionRow } from '../knowledge/correction.ts'
import { compile } from '../knowledge/compile/compile.ts'
import type { SourceFile } from '../knowledge/compile/document.ts'
import { readCorrections } from '../knowledge/compile/read-corrections.ts'
import { writeCorrections } from '../knowledge/compile/write-corrections.ts'
import type { Flaw } from '../knowledge/flaw.ts'
import { readCorrectionTable, type CorrectionTable } from '../tables/correction-file.ts'
import { correctionColumns } from '../papers/evidence-sheet-rows.ts'
import { checkKnowledge } from './check-knowledge.ts'

/** What a file of corrections comes to: files to write, or everything that stands against it, and then nothing is written. */
export type Corrected =
  | { readonly ok: true; readonly files: readonly SourceFile[]; readonly changes: readonly Correction[] }
  | {
      readonly ok: false
      readonly missing: readonly string[]
      readonly broken: readonly number[]
      readonly faults: readonly CorrectionFault[]
      /** What the content would then be at fault for, and is not now. */
      readonly flaws: readonly Flaw[]
    }

const before = 'grade_before'

export function correctEvidence(content: readonly SourceFile[], bytes: Uint8Array): Corrected {
  const table = readCorrectionTable(bytes, correctionColumns)
  const missing = correctionColumns.filter((heading) => !table.headings.includes(heading))
  const nothing = { missing, broken: table.broken, faults: [], flaws: [] }
  if (missing.length > 0 || table.broken.length > 0) return { ok: false, ...nothing }
  const compiled = compile(content)
  const { corrections, faults } = readCorrections(rowsOf(table), compiled.knowledge)
  if (faults.length > 0) return { ok: false, ...nothing, faults }
  const written = [...Map.groupBy(corrections, ({ matter }) => matter)].map(([matter, group]) => {
    const { file } = compiled.places.get(`matter ${matter}`)!
    const source = content.find((one) => one.file === file)!
    return { file, group, made: writeCorrections(source, group) }
  })
  const unwritten = written.flatMap(({ file, group, made }): CorrectionFault[] =>
    made === null ? [{ row: group[0]!.row, code: 'not-to-be-written', file }] : [],
  )
  if (unwritten.length > 0) return { ok: false, ...nothing, faults: unwritten }
  const files = written.flatMap(({ made }) => made ?? [])
  const flaws = files.length === 0 ? [] : newFlaws(content, files, checkKnowledge(compiled))
  return flaws.length > 0 ? { ok: false, ...nothing, flaws } : { ok: true, files, changes: corrections }
}

function rowsOf({ rows, headings }: CorrectionTable): CorrectionRow[] {
  return rows.map(({ row, cells }) => {
    const cell = (heading: string): string => cells.get(heading) ?? ''
    return {
      row,
      ...(Object.fromEntries(correctionColumns.map((heading) => [heading, cell(heading)])) as Record<
        (typeof correctionColumns)[number],
        string
      >),
      gradeBefore: headings.includes(before) ? cell(before) : null,
    }
  })
}

/** Errors that the corrected content has and the one before had not; lines move, so they are told by what they say. */
function newFlaws(
  content: readonly SourceFile[],
  files: readonly SourceFile[],
  had: readonly Flaw[],
): Flaw[] {
  const changed = new Map(files.map((one) => [one.file, one]))
  const known = new Set(had.map(keyOf))
  return checkKnowledge(compile(content.map((one) => changed.get(one.file) ?? one))).filter(
    (flaw) => flaw.severity === 'error' && !known.has(keyOf(flaw)),
  )
}

const keyOf = ({ code, file, about }: Flaw): string => JSON.stringify([code, file, about])
