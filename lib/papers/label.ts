import { encode } from 'uqr'
import type { Planned } from '../field/bag.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { codeLabel, valueLabel } from '../wording/fact.ts'
import { keepSentence, wetOrDryWords } from '../wording/keep.ts'

/** What goes on a bag: the number large, what it is, and the little that must be read without a screen. */
export interface Label {
  readonly find: string
  readonly site: string
  readonly context: string
  readonly what: string
  readonly keep: string
  readonly warnings: readonly string[]
  readonly count: string
  /** The number as a square code: rows of dark (true) and light modules. */
  readonly code: readonly (readonly boolean[])[]
}

const printedAtMost = 3

export function labelOf({ record, plan }: Planned, knowledge: Knowledge): Label {
  const materials = [
    ...new Set(record.components.map(({ material }) => valueLabel('material', material, knowledge))),
  ]
  const stops = plan.cautions.filter(({ level }) => level === 'stop')
  const { quantity, fragments } = record
  return {
    find: record.find_number,
    site: record.site_code ?? '',
    context: record.context ?? '',
    what: [record.object ?? '', materials.join(' + ').toLowerCase()].filter((text) => text !== '').join(': '),
    keep:
      plan.storage.keep === 'wet'
        ? wetOrDryWords('wet')
        : `${wetOrDryWords(plan.storage.keep)}. ${keepSentence(plan.storage)}`,
    warnings: [
      ...stops.map(({ code }) => `STOP: ${codeLabel(code, knowledge)}`),
      ...plan.handling.slice(0, printedAtMost).map(({ code }) => codeLabel(code, knowledge)),
    ],
    count: [
      typeof quantity === 'number' && quantity > 1 ? `${quantity} pieces` : '',
      typeof fragments === 'number' && fragments > 1 ? `${fragments} fragments` : '',
    ]
      .filter((text) => text !== '')
      .join(', '),
    code: encode([record.site_code, record.find_number].filter((text) => text !== undefined).join(' '), {
      ecc: 'M',
      border: 0,
    }).data,
  }
}
