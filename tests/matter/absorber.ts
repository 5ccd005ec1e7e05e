import type { Mixture } from '../../lib/matter/attenuation.ts'
import { knowledge } from '../knowledge-at-hand.ts'

/** An element by its symbol, or a substance by its id, as the knowledge has it. */
export function absorber(id: string): { readonly mixture: Mixture; readonly density: number } {
  const element = knowledge.elements[id.toLowerCase()]
  if (element)
    return { mixture: [{ massFraction: 1, table: element.attenuation }], density: element.densityGPerCm3 }
  const { parts, densityGPerCm3 } = knowledge.matrices[id]!
  return {
    density: densityGPerCm3,
    mixture: parts.map(([symbol, massFraction]) => ({
      massFraction,
      table: knowledge.elements[symbol.toLowerCase()]!.attenuation,
    })),
  }
}

export const lineKev = (symbol: string, line: string) =>
  knowledge.elements[symbol.toLowerCase()]!.linesKev[line]!
