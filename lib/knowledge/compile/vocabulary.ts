import * as ids from '../../record/ids.ts'
import { byId } from './by-id.ts'
import type { ContentDocument } from './document.ts'
import { shapedList, type Entry, type Report } from './entries.ts'
import type { FieldWords, TextWord, Vocabulary, Word } from '../knowledge.ts'
import * as shapes from './shapes.ts'
import { unknownId } from './shelf.ts'

export interface WrittenVocabulary {
  readonly fields: Entry<shapes.Written<typeof shapes.field>>[]
  readonly codes: Entry<shapes.Written<typeof shapes.code>>[]
  readonly contacts: Entry<shapes.Written<typeof shapes.code>>[]
  readonly units: Entry<shapes.Written<typeof shapes.unit>>[]
  readonly textWords: Entry<shapes.Written<typeof shapes.textWord>>[]
}

export function emptyVocabulary(): WrittenVocabulary {
  return { fields: [], codes: [], contacts: [], units: [], textWords: [] }
}

/** Adds one file of content/vocabulary; the file's name says what it holds. */
export function readVocabulary(document: ContentDocument, into: WrittenVocabulary, report: Report): void {
  const name = document.file.replace(/^content\/vocabulary\//, '')
  if (name.startsWith('fields/')) into.fields.push(...shapedList(document, shapes.field, report))
  else if (/^codes(-[a-z]+)*\.yaml$/.test(name)) into.codes.push(...shapedList(document, shapes.code, report))
  else if (name === 'contacts.yaml') into.contacts.push(...shapedList(document, shapes.code, report))
  else if (name === 'units.yaml') into.units.push(...shapedList(document, shapes.unit, report))
  else if (name === 'text-words.yaml') into.textWords.push(...shapedList(document, shapes.textWord, report))
  else report.add('out-of-place', { file: document.file, line: 1 }, { folder: 'content/vocabulary' })
}

export function linkVocabulary(written: WrittenVocabulary, report: Report): Vocabulary {
  return {
    fields: byId(written.fields.map((entry) => linkField(entry, report))),
    codes: byId(written.codes.map((entry) => linkWord(entry.written))),
    contacts: byId(written.contacts.map((entry) => linkWord(entry.written))),
    units: byId(
      written.units.map(({ written: { id, label, printed, one } }) =>
        one === undefined ? { id, label, printed } : { id, label, printed, one },
      ),
    ),
    textWords: written.textWords.map((entry) => linkTextWord(entry, report)),
  }
}

function linkWord(
  written: shapes.Written<typeof shapes.code> & { readonly 'confused-with'?: readonly string[] | undefined },
): Word {
  const confusedWith = written['confused-with']
  return {
    id: written.id,
    label: written.label,
    means: written.means,
    tell: written.tell ?? '',
    ...(confusedWith === undefined ? {} : { confusedWith }),
  }
}

function linkField({ written, place }: WrittenVocabulary['fields'][number], report: Report): FieldWords {
  const values = (written.values ?? []).map(({ id }) => id)
  written.values?.forEach((value, index) => {
    for (const other of value['confused-with'] ?? []) {
      if (!values.includes(other))
        unknownId('value', other, values, place('values', index, 'confused-with'), report)
    }
  })
  return {
    ...linkWord(written),
    asks: written.asks ?? '',
    lookable: written.lookable ?? false,
    ...(written.seldom ? { seldom: true } : {}),
    ...(written.why === undefined ? {} : { why: written.why }),
    values: (written.values ?? []).map(linkWord),
    alsoCalled: written['also-called'] ?? [],
  }
}

function linkTextWord({ written, place }: WrittenVocabulary['textWords'][number], report: Report): TextWord {
  const { hazard, 'object-kind': objectKind } = written
  if (hazard !== undefined && !(ids.hazardsNoticed as readonly string[]).includes(hazard)) {
    unknownId('hazard', hazard, ids.hazardsNoticed, place('hazard'), report)
  }
  if (objectKind !== undefined && !(ids.objectKind as readonly string[]).includes(objectKind)) {
    unknownId('object-kind', objectKind, ids.objectKind, place('object-kind'), report)
  }
  return {
    words: written.words,
    not: written.not,
    ...(hazard === undefined ? {} : { hazard }),
    ...(objectKind === undefined ? {} : { objectKind }),
  }
}
