import type { Chance } from './chance.ts'
import type { Ground } from './grounds.ts'
import type { Kind } from './kind.ts'
import { looks } from './parts.ts'
import type { BoxUse } from './store.ts'

/** What the invented people do with a find: how wet it is by now, how they packed, treated and tested it. */
export type Loose = Record<string, unknown>

export function stateOf(ground: Ground, days: number, { weighted }: Chance): string | null {
  if (ground.wetness === 'wet')
    return weighted([
      [14, 'wet'],
      [3, 'damp'],
      [2, 'drying'],
      [1, null],
      [days > 400 ? 3 : 0, 'dry'],
    ] as const)
  if (days > 60)
    return weighted([
      [14, 'dry'],
      [1, 'damp'],
      [3, null],
    ] as const)
  return ground.wetness === 'damp'
    ? weighted([
        [5, 'damp'],
        [3, 'drying'],
        [3, 'dry'],
        [2, null],
      ] as const)
    : weighted([
        [7, 'dry'],
        [2, 'damp'],
        [2, null],
        [0.2, 'frozen'],
      ] as const)
}

export function packingOf(
  state: string | null,
  use: BoxUse,
  { weighted, happens }: Chance,
): readonly string[] {
  if (state === 'wet')
    return weighted([
      [6, ['water-tub']],
      [2, ['sealed-bag']],
      [1, ['nothing']],
    ] as const)
  const good =
    use === 'iron' || use === 'copper'
      ? ['perforated-bag', 'dry-box', ...(happens(0.7) ? ['with-gel'] : [])]
      : ['perforated-bag', 'acid-free-tissue']
  return weighted([
    [10, good],
    [3, ['sealed-bag']],
    [1, ['sealed-bag', 'with-gel']],
    [1, ['paper-envelope', 'cardboard']],
    [1, ['metal-tin', 'cotton-wool']],
    [1, ['newspaper', 'wood']],
    [0.6, ['pvc']],
    [0.5, ['foil', 'inert-foam']],
    [0.4, ['rubber', 'wool-or-felt']],
    [1, ['nothing']],
  ] as const)
}

export function useFor(kind: Kind, state: string | null, days: number): BoxUse {
  if (state === 'wet') return 'wet'
  if (days < 20) return 'hut'
  const materials = new Set(kind.parts.map(({ material }) => material))
  if (
    kind.parts.some(
      ({ looks: of }) =>
        (of as unknown) === looks.dryOrganic ||
        (of as unknown) === looks.glass ||
        (of as unknown) === looks.enamel,
    )
  )
    return 'mixed'
  if (materials.has('lead') || materials.has('solder')) return 'lead'
  if (['pewter', 'tin', 'silver', 'base-silver', 'gold', 'white-metal'].some((metal) => materials.has(metal)))
    return 'white'
  return ['iron', 'steel', 'cast-iron', 'slag', 'metal-unidentified'].some((metal) => materials.has(metal))
    ? 'iron'
    : 'copper'
}

export const testsFor = (kind: Kind, { weighted }: Chance): readonly string[] => {
  const ferrous = kind.parts.length === 1 && ['iron', 'steel', 'cast-iron'].includes(kind.parts[0]!.material)
  return ferrous
    ? weighted([
        [5, ['magnet:strong']],
        [2, ['magnet:weak']],
        [2, ['radiograph:core-partial']],
        [2, ['radiograph:core-solid', 'magnet:strong']],
        [1, ['radiograph:no-core', 'magnet:none']],
        [1, ['radiograph:bright-lines']],
        [0.5, ['xrd:akaganeite+goethite']],
        [0.5, ['oxygen-uptake:active']],
      ] as const)
    : weighted([
        [4, ['magnet:none']],
        [1, ['xrf:Cu+Sn+Pb']],
        [1, ['xrf:Cu+Zn']],
        [0.6, ['silver-nitrate:positive']],
        [0.4, ['silver-nitrate:negative']],
        [0.3, ['xrd:malachite+cuprite']],
        [0.3, ['xrf:Au+Hg+Cu']],
      ] as const)
}

export function historyOf(days: number, state: string | null, { happens, pick }: Chance): Loose {
  if (state === 'wet') return happens(0.8) ? { done_already: ['wet-stored'] } : {}
  const done = [
    ...(happens(0.3) ? ['air-dried'] : []),
    ...(happens(0.06) ? ['washed'] : []),
    ...(happens(0.04) ? ['brushed'] : []),
    ...(days > 900 && happens(0.12)
      ? [
          pick([
            'waxed',
            'lacquered',
            'consolidated',
            'glued',
            'cleaned',
            'benzotriazole',
            'tannic-acid',
            'desalinated',
            'oven-dried',
          ]),
        ]
      : []),
  ]
  return done.length > 0 ? { done_already: done } : {}
}
