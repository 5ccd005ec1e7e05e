import { canonical } from '../../base/canonical.ts'
import { isMap, isScalar, isSeq, LineCounter, parseDocument, type YAMLMap, type YAMLSeq } from 'yaml'
import type { Correction } from '../correction.ts'
import type { SourceFile } from './document.ts'

/** A stretch of the text to be replaced. */
interface Edit {
  readonly from: number
  readonly to: number
  readonly text: string
}

interface Layout {
  readonly text: string
  readonly columnOf: (offset: number) => number
}

/** What one state holds as data; only the keys that a correction touches. */
interface StateData {
  fits: Record<string, string>
  sources?: Source[]
  corrected?: object[]
}
type Source = Readonly<{ work: string; place: string | null; says: string; known: string }>

/**
 * The file with its corrected grades, all else as it stands to the letter: comments, line breaks and the order of keys. Null
 * where the file is written so that this cannot be done surely (an anchor, a merged key).
 */
export function writeCorrections(
  { file, text }: SourceFile,
  corrections: readonly Correction[],
): SourceFile | null {
  const lines = new LineCounter()
  const document = parseDocument(text, { lineCounter: lines })
  const wanted = document.toJS() as unknown
  const layout: Layout = { text, columnOf: (offset) => lines.linePos(offset).col - 1 }
  const edits: Edit[] = []
  const states = Map.groupBy(corrections, ({ group, state }) => `${group}/${state}`)
  for (const group of states.values()) {
    const found = stateIn(document.contents, wanted, group[0]!)
    const made = found === null ? null : stateEdits(found.node, found.data, group, layout)
    if (made === null) return null
    edits.push(...made)
  }
  const written = edits
    .toSorted((a, b) => b.from - a.from)
    .reduce((before, { from, to, text: put }) => before.slice(0, from) + put + before.slice(to), text)
  const again = parseDocument(written)
  if (again.errors.length > 0 || canonical(again.toJS()) !== canonical(wanted)) return null
  return { file, text: written }
}

interface Found {
  readonly node: YAMLMap
  readonly data: StateData
}

/** The state as a node of the text, and as data that the corrections are then made in. */
function stateIn(contents: unknown, data: unknown, { group, state }: Correction): Found | null {
  const groupAt = placeOf(data, 'groups', group)
  if (groupAt === -1 || !isMap(contents)) return null
  const path = ['groups', groupAt]
  const within = valueAt(data, path)
  const stateAt = state === 'rest' ? null : placeOf(within, 'states', state)
  if (stateAt === -1) return null
  const whole = [...path, ...(stateAt === null ? ['rest'] : ['states', stateAt])]
  const node: unknown = contents.getIn(whole, true)
  return isMap(node) ? { node, data: valueAt(data, whole) as StateData } : null
}

function placeOf(holder: unknown, key: string, id: string): number {
  const list = valueAt(holder, [key])
  return Array.isArray(list) ? list.findIndex((one) => valueAt(one, ['id']) === id) : -1
}

function valueAt(data: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>((at, key) => Reflect.get(Object(at) as object, key), data)
}

function stateEdits(
  node: YAMLMap,
  data: StateData,
  corrections: readonly Correction[],
  layout: Layout,
): Edit[] | null {
  const fits: unknown = node.get('fits', true)
  if (!isMap(fits)) return null
  const edits: Edit[] = []
  for (const { rival, to } of corrections) {
    const grade: unknown = fits.get(rival, true)
    if (!isScalar(grade) || !grade.range) return null
    edits.push({ from: grade.range[0], to: grade.range[1], text: to })
    data.fits[rival] = to
  }
  const sources: unknown = node.get('sources', true)
  if (data.sources !== undefined) {
    if (!isSeq(sources)) return null
    const fresh = newSources(data.sources, corrections)
    data.sources = joined(sources, data.sources, fresh)
    edits.push(...put(sources, fresh.map(flowed), layout))
  }
  const entries = corrections.map(
    ({ rival, from, to, because, work, place, known, by, on }) =>
      ({ rival, from, to, because, work, place, known, by, on }) as const,
  )
  const kept: unknown = node.get('corrected', true)
  data.corrected = isSeq(kept) ? joined(kept, data.corrected!, entries) : entries
  if (isSeq(kept)) edits.push(...put(kept, entries.map(flowed), layout))
  else edits.push(...keyAdded(node, `corrected: [${entries.map(flowed).join(', ')}]`, layout))
  return edits
}

function newSources(have: readonly Source[], corrections: readonly Correction[]): Source[] {
  const known = new Set(have.map(({ work, place }) => JSON.stringify([work, place])))
  return corrections.flatMap(({ work, place, known: mark }) => {
    const key = JSON.stringify([work, place])
    if (known.has(key)) return []
    known.add(key)
    return [{ work, place, says: 'supports', known: mark }]
  })
}

const plain = /^[a-z][a-z0-9-]*$/
const day = /^\d{4}-\d{2}-\d{2}$/
const words: readonly string[] = ['null', 'true', 'false', 'yes', 'no', 'on', 'off', 'y', 'n']

/** `{ work: read-1999, place: "p. 1" }` */
function flowed(entry: Readonly<Record<string, string | null>>): string {
  const pairs = Object.entries(entry).map(([key, value]) => {
    const bare = value === null || day.test(value) || (plain.test(value) && !words.includes(value))
    return `${key}: ${bare ? String(value) : JSON.stringify(value)}`
  })
  return `{ ${pairs.join(', ')} }`
}

/** A list in braces grows at its end; of a list of dashes the first dash says how far in it stands, so it grows there. */
function put(list: YAMLSeq, entries: readonly string[], { columnOf }: Layout): Edit[] {
  if (entries.length === 0) return []
  const [start, end] = list.range!
  if (list.flow) {
    const text = `${list.items.length === 0 ? '' : ', '}${entries.join(', ')}`
    return [{ from: end - 1, to: end - 1, text }]
  }
  const indent = ' '.repeat(columnOf(start))
  return [{ from: start, to: start, text: entries.map((entry) => `- ${entry}\n${indent}`).join('') }]
}

function joined<Thing>(list: YAMLSeq, have: readonly Thing[], fresh: readonly Thing[]): Thing[] {
  return list.flow ? [...have, ...fresh] : [...fresh, ...have]
}

function keyAdded(map: YAMLMap, pair: string, { text, columnOf }: Layout): Edit[] {
  const [start, end] = map.range!
  if (map.flow) {
    const at = end - 1 - /\s*$/.exec(text.slice(start, end - 1))![0].length
    return [{ from: at, to: at, text: `, ${pair}` }]
  }
  const last = map.items.at(-1)?.key
  const at = isScalar(last) && last.range ? last.range[0] : start
  return [{ from: at, to: at, text: `${pair}\n${' '.repeat(columnOf(at))}` }]
}
