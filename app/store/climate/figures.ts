import type { FigureShown } from '../../_marks/figure-links.tsx'
import type { WarmMetal } from './fields.ts'

/** A figure as this page needs it: to show, and to reckon with. */
export interface PageFigure extends FigureShown {
  readonly value: number
}

/** Published humidities for iron that may hold chloride, from the driest up. */
export const ironIds = [
  'iron-chloride-rh-ceiling',
  'iron-chloride-museum-rh-ceiling',
  'iron-akaganeite-onset-rh',
  'iron-ferrous-chloride-onset-rh',
  'iron-appreciable-rh',
] as const

/** Density [g/cm³], heat capacity [J/(kg·K)] and conductivity [W/(m·K)] of a metal, by id. */
export const metalIds = {
  iron: ['density-steel', 'heat-capacity-iron', 'heat-conductivity-iron'],
  'copper-alloy': ['density-copper', 'heat-capacity-copper-alloy', 'heat-conductivity-copper-alloy'],
  silver: ['density-silver', 'heat-capacity-silver', 'heat-conductivity-silver'],
  lead: ['density-lead', 'heat-capacity-lead', 'heat-conductivity-lead'],
} as const satisfies Readonly<Record<WarmMetal, readonly [string, string, string]>>

export const airIds = ['surface-resistance-low', 'surface-resistance-high'] as const
export const packIds = ['padding-conductivity', 'heat-capacity-packing'] as const
/** What others print about waiting: shown beside what is reckoned. */
export const waitIds = ['cold-pack-hours', 'overnight-hours'] as const
export const sensorIds = ['logger-hysteresis', 'logger-drift-a-year'] as const

export const pageIds: readonly string[] = [
  ...ironIds,
  ...Object.values(metalIds).flat(),
  ...airIds,
  ...packIds,
  ...waitIds,
  ...sensorIds,
]

export type PageFigures = Readonly<Record<string, PageFigure>>

/** A figure this page is built with; that it should be missing is a fault of ours. */
export function figureOf(figures: PageFigures, id: string): PageFigure {
  const figure = figures[id]
  if (figure === undefined) throw new Error(`The knowledge has no figure ${id}.`)
  return figure
}

export const figuresOf = (figures: PageFigures, ids: readonly string[]): readonly PageFigure[] =>
  ids.map((id) => figureOf(figures, id))
