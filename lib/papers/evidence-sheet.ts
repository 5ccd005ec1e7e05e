import type { Failure, Fits, Grade, Group, Matter, Rival, State } from '../knowledge/evidence.ts'
import type { Cell, Known, Knowledge, SourceRef } from '../knowledge/knowledge.ts'
import { shortCitation } from '../wording/citation.ts'
import { codeLabel, fieldLabel, valueLabel } from '../wording/fact.ts'
import { knownWords } from '../wording/marks.ts'
import { cellWords } from '../wording/rule.ts'
import type { SheetRule } from './decision-sheet.ts'

type SheetSource = SheetRule['sources'][number]

/** A matter as a specialist reviews it: rivals across, states down, every grade with what stands behind it. */
export interface EvidenceSheet {
  readonly matter: string
  readonly asks: string
  readonly raisedBy: string
  readonly where: string
  readonly rivals: readonly SheetRival[]
  readonly groups: readonly SheetGroup[]
  readonly contested: {
    readonly question: string
    readonly follows: string
    readonly because: string
  } | null
  readonly knowledge: string
}

export interface SheetRival {
  readonly rival: string
  readonly label: string
  readonly says: string
  readonly odds: readonly {
    readonly when: string
    readonly odds: string
    readonly because: string
    readonly sources: readonly SheetSource[]
  }[]
}

export interface SheetGroup {
  readonly group: string
  readonly label: string
  readonly by: string
  /** The question whose answers the states are; null where they are read from other facts. */
  readonly asks: string | null
  readonly states: readonly SheetState[]
  readonly failures: readonly {
    readonly failure: string
    readonly says: string
    readonly when: string
    readonly of: readonly string[]
    readonly shows: string
    readonly how: string
    readonly sources: readonly SheetSource[]
  }[]
}

/** The last state of a group is `rest`. */
export interface SheetState {
  readonly state: string
  readonly says: string
  /** Null for an answer of the group's question. */
  readonly when: string | null
  /** A grade for each rival, in their order. */
  readonly grades: readonly Grade[]
  readonly sources: readonly SheetSource[]
  /** The first source in support, as ids, for the table that comes back. */
  readonly source: { readonly work: string; readonly place: string | null; readonly known: Known } | null
}

export function evidenceSheet(matter: Matter, knowledge: Knowledge): EvidenceSheet {
  const contested = matter.contested === null ? undefined : knowledge.contested[matter.contested]
  return {
    matter: matter.id,
    asks: matter.asks,
    raisedBy: matter.about
      .map(({ field, value }) => `${fieldLabel(field, knowledge)}: ${valueLabel(field, value, knowledge)}`)
      .join('; '),
    where: cellsWords(matter.where, knowledge),
    rivals: matter.rivals.map((rival) => sheetRival(rival, knowledge)),
    groups: matter.groups.map((group) => sheetGroup(group, matter, knowledge)),
    contested:
      contested === undefined
        ? null
        : { question: contested.question, follows: contested.follows, because: contested.because },
    knowledge: knowledge.hash,
  }
}

function sheetRival({ id, says, priors }: Rival, knowledge: Knowledge): SheetRival {
  return {
    rival: id,
    label: codeLabel(id, knowledge),
    says,
    odds: priors.map(({ when, odds, because, sources }) => ({
      when: cellsWords(when, knowledge),
      odds,
      because,
      sources: sheetSources(sources, knowledge),
    })),
  }
}

function sheetGroup(group: Group, { rivals }: Matter, knowledge: Knowledge): SheetGroup {
  const gradesOf = (fits: Fits): Grade[] => rivals.map(({ id }) => fits[id]!)
  const sheetState = (state: State): SheetState => {
    const [first] = state.sources.filter(({ says }) => says === 'supports')
    return {
      state: state.id,
      says: state.says,
      when: group.question === null ? cellsWords(state.when, knowledge) : null,
      grades: gradesOf(state.fits),
      sources: sheetSources(state.sources, knowledge),
      source: first === undefined ? null : { work: first.work, place: first.place, known: first.known },
    }
  }
  return {
    group: group.id,
    label: group.label,
    by: byWords(group.by, knowledge),
    asks: group.question === null ? null : (knowledge.questions[group.question]?.asks ?? group.question),
    states: [
      ...group.states.map(sheetState),
      {
        state: 'rest',
        says: group.rest.says,
        when: 'it was looked at and is none of the others',
        grades: gradesOf(group.rest.fits),
        sources: [],
        source: null,
      },
    ],
    failures: group.failures.map((failure) => ({
      failure: failure.id,
      says: failure.says,
      when: cellsWords(failure.when, knowledge),
      of: (failure.of ?? []).map((rival) => codeLabel(rival, knowledge)),
      shows: failure.as,
      how: howWords(failure, knowledge),
      sources: sheetSources(failure.sources, knowledge),
    })),
  }
}

function byWords(by: string, knowledge: Knowledge): string {
  if (by === 'eye') return 'by eye'
  if (by === 'record') return 'stands in the record'
  return `by ${knowledge.methods[by]?.label ?? by}`
}

function howWords({ how }: Failure, knowledge: Knowledge): string {
  if ('grade' in how) return how.grade
  const { line, through, crustUm } = how.depth
  const matrix = knowledge.matrices[through]?.label ?? through
  return `as often as ${line} does not come out through ${crustUm[0]} to ${crustUm[1]} µm of ${matrix}`
}

function sheetSources(sources: readonly SourceRef[], knowledge: Knowledge): SheetSource[] {
  return sources.map(({ work, place, known, says }) => {
    const cited = knowledge.works[work]
    return {
      work: cited === undefined ? work : shortCitation(cited),
      place,
      known: knownWords[known].label,
      against: says === 'against',
    }
  })
}

function cellsWords(cells: readonly Cell[], knowledge: Knowledge): string {
  if (cells.length === 0) return 'always'
  return cells.map((cell) => `${fieldLabel(cell.fact, knowledge)}: ${cellWords(cell, knowledge)}`).join('; ')
}
