/** A cell that the workbook reader leaves empty although something stands in it. */
export interface LostCell {
  /** From 0. */
  readonly row: number
  readonly column: number
  /** `#REF!`, or the formula whose value was never worked out. */
  readonly text: string
}

const attribute = (tag: string, name: string) => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1]
const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' }
const plain = (xml: string) => xml.replace(/&(lt|gt|quot|apos|amp);/g, (_, name: string) => entities[name]!)

function place(address: string): { row: number; column: number } | null {
  const found = /^([A-Z]{1,3})(\d{1,7})$/.exec(address)
  if (!found) return null
  const column = [...found[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0)
  return { row: Number(found[2]) - 1, column: column - 1 }
}

/** Error cells, and formulas saved without a value, of one sheet's XML. */
export function lostCells(xml: string): readonly LostCell[] {
  const lost: LostCell[] = []
  for (const [, tag = '', inside = ''] of xml.matchAll(/<c(\s[^>]*?[^/]|)>(.*?)<\/c>/gs)) {
    const value = /<v[^>]*>([^<]*)<\/v>/.exec(inside)?.[1] ?? ''
    const formula = /<f[^>]*>([^<]*)<\/f>/.exec(inside)?.[1]
    const text =
      attribute(tag, 't') === 'e'
        ? value
        : formula !== undefined && value === ''
          ? `=${plain(formula).replace(/^=/, '')}`
          : ''
    const at = place(attribute(tag, 'r') ?? '')
    if (text !== '' && at) lost.push({ ...at, text })
  }
  return lost
}

/** Files of the sheets within the workbook, in the workbook's order. */
export function sheetFiles(workbook: string, relations: string): readonly string[] {
  const targets = new Map(
    [...relations.matchAll(/<Relationship\s[^>]*>/g)].map(([tag]) => [
      attribute(tag, 'Id'),
      attribute(tag, 'Target') ?? '',
    ]),
  )
  return [...workbook.matchAll(/<sheet\s[^>]*>/g)].map(([tag]) => {
    const target = targets.get(attribute(tag, 'r:id') ?? '') ?? ''
    return target.startsWith('/') ? target.slice(1) : `xl/${target}`
  })
}
