import { fold } from '../../base/fold.ts'
import { splitCells } from './cells.ts'
import type { TextLine } from './delimiter.ts'
import type { LogDelimiter } from './log-form.ts'
import { fixedOffset } from './zone.ts'

export interface HeadingEntry {
  readonly line: number
  readonly name: string
  readonly value: string
}

const most = 60
/** Longer lines say nothing of the logger. */
const longest = 400

/** Name and value of one line above a table: parted by a colon, an equals sign, or the delimiter. */
function entryOf({ line, text }: TextLine, delimiter: LogDelimiter): HeadingEntry | null {
  if (text.length > longest) return null
  const bare = text.replace(/^[\s#*;/"']+/, '').trim()
  if (bare === '') return null
  const colon = /^([^:=]{1,60}?)\s*[:=]\s*(.+)$/.exec(bare)
  const cells = splitCells(
    text.replace(/^[\s#]+/, ''),
    delimiter === 'spaces' ? '\t' : delimiter,
  ).cells.filter((cell) => cell !== '')
  const strip = (part: string) => part.replaceAll('"', '').replace(/^[\s,;|]+|[\s,;|]+$/g, '')
  if (cells.length === 2 && !/[:=]$/.test(cells[0]!) && !(colon && colon[1]!.length < cells[0]!.length)) {
    return { line, name: strip(cells[0]!), value: strip(cells[1]!) }
  }
  if (!colon) return { line, name: '', value: strip(bare) }
  return { line, name: strip(colon[1]!), value: strip(colon[2]!) }
}

export function headingEntries(above: readonly TextLine[], delimiter: LogDelimiter): readonly HeadingEntry[] {
  return above.flatMap((line) => entryOf(line, delimiter) ?? []).slice(0, most)
}

const serialName =
  /\bserial\b|\bs\/?n\b|seriennummer|serien-?nr|num(?:ero)? de serie|n° de serie|numero di serie|serienummer/
const modelName =
  /^(?:model|type|typ|modele|modell|device|device type|gerat|geratetyp|appareil|logger|logger type|instrument|product|produkt|datalogger)\b/
const zoneName = /time.?zone|\btz\b|zeitzone|fuseau|zona horaria|fuso|utc.?offset|gmt.?offset|time offset/

const find = (entries: readonly HeadingEntry[], name: RegExp) =>
  entries.find((entry) => name.test(fold(entry.name)) && entry.value !== '' && entry.value.length <= 60)
    ?.value ?? null

export const serialIn = (entries: readonly HeadingEntry[]): string | null => find(entries, serialName)
export const modelIn = (entries: readonly HeadingEntry[]): string | null => find(entries, modelName)

const zoneWithin = /\b(?:utc|gmt)\s*(?:[+-]\s?\d{1,2}(?::?\d{2})?)?(?![\w])/i
const regionName =
  /\b(?:Africa|America|Antarctica|Asia|Atlantic|Australia|Europe|Indian|Pacific)\/[A-Z][A-Za-z_]+(?:\/[A-Z][A-Za-z_]+)?\b/

export interface ZoneHint {
  /** A zone or offset that can be read with; null where only a name was found that means several. */
  readonly zone: string | null
  readonly found: string
  readonly line: number
}

function zoneOf(text: string): string | null {
  const region = regionName.exec(text)?.[0]
  if (region) return region
  // `GMT Standard Time` is what one system calls British time, summer and winter.
  if (/standard time|daylight|summer|sommer/i.test(text)) return null
  const offset =
    zoneWithin.exec(text)?.[0] ?? /^\s*[+-]\d{1,2}(?::?\d{2})?\s*(?:h|hours)?\s*$/.exec(text)?.[0]
  return offset && fixedOffset(offset.replace(/\s|h.*$/g, '')) !== null
    ? offset.replace(/\s|h(?:ours)?$/g, '')
    : null
}

/** What the block above a table, or the heading over its stamps, says of the time zone. */
export function zoneHintIn(
  entries: readonly HeadingEntry[],
  stampHeadings: readonly string[],
  headingLine: number | null,
): ZoneHint | null {
  const over = stampHeadings.find((heading) => zoneOf(heading) !== null)
  if (over !== undefined) return { zone: zoneOf(over), found: over, line: headingLine ?? 1 }
  const entry = entries.find(({ name }) => zoneName.test(fold(name)))
  if (!entry) return null
  return { zone: zoneOf(entry.value), found: entry.value, line: entry.line }
}
