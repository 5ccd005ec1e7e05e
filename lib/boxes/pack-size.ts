import type { Measured, PackFigures } from './pack-find.ts'

/** A find in its bag: what it takes up in a box. Whole millilitres and grams, upwards. */
export interface Bagged {
  readonly volumeMl: number
  readonly massG: number
  /** Longest first [mm]. */
  readonly sidesMm: readonly [number, number, number]
  /** Not all of its sides, or not its mass, were measured. */
  readonly supposed: boolean
}

type Sides = readonly [number, number, number]

export function baggedOf(measured: Measured, figures: PackFigures): Bagged {
  const known = [measured.lengthMm, measured.widthMm, measured.thicknessMm]
    .filter((side) => side !== null)
    .toSorted((a, b) => b - a)
  const piece = pieceOf(known, measured, figures)
  const bare = measured.quantity > 1 ? lotOf(piece, known.length, measured, figures) : piece
  const bag = bare.map((side) => side + 2 * figures.paddingMm) as unknown as Sides
  return {
    volumeMl: Math.ceil(volume(bag) / cubicMmPerMl),
    massG: Math.ceil(measured.massG ?? (volume(bare) / cubicMmPerMl) * figures.looseKgPerL),
    sidesMm: bag.map(Math.ceil) as unknown as Sides,
    supposed: known.length < 3 || measured.massG === null,
  }
}

const cubicMmPerMl = 1000
const volume = ([a, b, c]: Sides): number => a * b * c

/** The sides of one piece. What was not measured follows from its mass, or is supposed, and is no longer than what was. */
function pieceOf(known: readonly number[], { massG, quantity }: Measured, figures: PackFigures): Sides {
  const missing = 3 - known.length
  const shortest = known.at(-1) ?? Infinity
  const bulk = massG === null ? null : (massG / quantity / figures.looseKgPerL) * cubicMmPerMl
  const each =
    bulk === null
      ? figures.unmeasuredSideMm
      : (bulk / known.reduce((all, side) => all * side, 1)) ** (1 / missing)
  const supposed = Math.min(shortest, Math.max(1, each))
  return [...known, ...Array.from({ length: missing }, () => supposed)] as unknown as Sides
}

/** A lot lies in one bag: as long as its longest piece at least, and as thick as it must be then. */
function lotOf(piece: Sides, known: number, { massG, quantity }: Measured, figures: PackFigures): Sides {
  const bulk =
    known < 3 && massG !== null ? (massG / figures.looseKgPerL) * cubicMmPerMl : quantity * volume(piece)
  const edge = Math.cbrt(bulk)
  const [long, wide] = piece
  if (long <= edge) return [edge, edge, edge]
  const across = Math.max(wide, Math.sqrt(bulk / long))
  return [long, across, bulk / long / across]
}
