import { addDays, daysBetween, isoDate, type IsoDate } from '../../lib/base/calendar.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'
import { chance, type Chance } from './chance.ts'
import { grounds, type Ground, type GroundName } from './grounds.ts'
import { kinds, type Kind } from './kinds.ts'
import { looks, type Part } from './parts.ts'
import { boxes, type Box, type BoxUse } from './store.ts'

/** The invented assemblage of Tollgate Wharf: condition records as a finds hut keeps them, gaps and neglect included. */
const today = isoDate('2026-11-25')!
const seasons = ['2019-05-06', '2021-06-14', '2023-05-15', '2025-06-02', '2026-05-11', '2026-11-02'].map(
  (day) => isoDate(day)!,
)
const findCount = 640
const watchedCount = 44

type Loose = Record<string, unknown>

const wetLooks: Partial<Record<keyof typeof looks, keyof typeof looks>> = {
  iron: 'ironWet',
  copper: 'copperWet',
  dryOrganic: 'wetOrganic',
}
const burntLooks: Partial<Record<keyof typeof looks, keyof typeof looks>> = {
  iron: 'ironBurnt',
  copper: 'copperBurnt',
}

/** The same part as this ground leaves it: black from the wet, red from the fire. */
function asBuried(part: Part, ground: Ground): Part {
  const swaps =
    ground.wetness === 'wet'
      ? wetLooks
      : (ground.burial as readonly string[]).includes('ash-burnt')
        ? burntLooks
        : {}
  const name = (Object.keys(looks) as (keyof typeof looks)[]).find((key) => looks[key] === part.looks)!
  return { ...part, looks: looks[swaps[name] ?? name] }
}

function componentOf(part: Part, { weighted, happens, pick }: Chance): Component {
  const look = weighted(part.looks)
  const more: Loose = {
    known_by: pick(['assumed', 'seen', 'seen', 'magnet']),
    ...(look.seen
      ? { seen: look.seen, ...(happens(0.6) ? { extent: pick(['trace', 'patches', 'most', 'all']) } : {}) }
      : {}),
    ...(look.evidence ? { evidence: look.evidence } : {}),
    ...(look.fragility
      ? { fragility: look.fragility }
      : happens(0.4)
        ? { fragility: pick(['sound', 'fragile', 'in-pieces']) }
        : {}),
    ...(look.core ? { core: look.core } : happens(0.08) ? { core: 'unknown' } : {}),
    ...(happens(0.5) ? { completeness: pick(['complete', 'most', 'part', 'fragment']) } : {}),
    ...(happens(0.35)
      ? { original_surface: pick(['visible', 'under-crust', 'under-crust', 'lost', 'unknown']) }
      : {}),
  }
  return { component: part.component, role: part.role, material: part.material, ...more } as Component
}

function stateOf(ground: Ground, days: number, { weighted }: Chance): string | null {
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

function packingOf(state: string | null, use: BoxUse, { weighted, happens }: Chance): readonly string[] {
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

function useFor(kind: Kind, ground: Ground, days: number): BoxUse {
  if (ground.wetness === 'wet' && days < 500) return 'wet'
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

const testsFor = (kind: Kind, { weighted }: Chance): readonly string[] => {
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

function historyOf(days: number, state: string | null, { happens, pick }: Chance): Loose {
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

const proposals = [
  'wash',
  'dry-brush',
  'hot-water',
  'oven-drying',
  'heat',
  'freeze',
  'ultrasonic',
  'acid-or-edta',
  'silver-dip',
  'alkaline-desalination',
  'electrolysis',
  'benzotriazole',
  'tannic-acid',
  'wax-or-lacquer',
  'hydrogen-furnace',
  'investigative-cleaning',
  'sampling',
]
const wishes = ['dating', 'identification', 'publication', 'display', 'loan', 'phase-decision']

function findOf(
  number: number,
  kind: Kind,
  groundName: GroundName,
  stock: readonly Box[],
  luck: Chance,
): ConditionRecord {
  const { whole, pick, happens, weighted, next } = luck
  const ground: Ground = grounds[groundName]
  const lifted = addDays(pick(seasons), whole(0, 20))
  const days = Math.max(0, daysBetween(lifted, today))
  const state = stateOf(ground, days, luck)
  const use = useFor(kind, ground, days)
  const [lightest, heaviest] = kind.mass
  const mass = lightest + next() ** 2 * (heaviest - lightest)
  const length = Math.round(12 + Math.cbrt(mass) * (10 + next() * 14))
  const humidity = {
    wet: null,
    hut: whole(52, 74),
    iron: whole(12, 34),
    copper: whole(26, 41),
    lead: whole(45, 58),
    white: whole(33, 48),
    mixed: whole(42, 57),
  }[use]
  const record: Loose = {
    site_code: 'TW',
    find_number: `TW-${String(number).padStart(4, '0')}`,
    context: pick(ground.contexts),
    object: kind.object,
    object_kind: kind.kind,
    period: ground.period,
    date_from: ground.years[0],
    date_to: ground.years[1],
    ...(kind.quantity ? { quantity: whole(...kind.quantity) } : { quantity: 1 }),
    ...(happens(0.05) ? { fragments: whole(2, 9) } : {}),
    ...(use === 'hut' && happens(0.4) ? {} : { box: pick(stock.filter((box) => box.use === use)).box }),
    recorded_by: pick(['finds hut, morning', 'finds hut, afternoon', 'bench', 'volunteer table']),
    recorded_on: addDays(lifted, Math.min(days, whole(0, 12))),
    lifted_on: lifted,
    ...(happens(0.7) ? { lifted_as: 'loose' } : {}),
    ...(state ? { state_now: state } : {}),
    ...(happens(0.6)
      ? { wet_when_lifted: ground.wetness === 'wet' ? 'yes' : ground.wetness === 'dry' ? 'no' : 'unknown' }
      : {}),
    ...(happens(0.85) ? { mass_g: Math.round(mass * 10) / 10 } : {}),
    ...(happens(0.5)
      ? {
          length_mm: length,
          width_mm: Math.max(2, Math.round(length * (0.15 + next() * 0.5))),
          thickness_mm: Math.round((1 + next() * 14) * 10) / 10,
        }
      : {}),
    ...(happens(0.92) ? { burial: [...ground.burial] } : {}),
    ...(happens(0.2)
      ? { soil_ph: Math.round((ground.ph[0] + next() * (ground.ph[1] - ground.ph[0])) * 10) / 10 }
      : {}),
    ...(happens(0.15) ? { soil_chloride_mg_kg: whole(...ground.chloride) } : {}),
    ...(humidity !== null && happens(0.55)
      ? { stored_rh_percent: humidity, stored_temperature_c: whole(14, 22) }
      : {}),
    packed_in: [...packingOf(state, use, luck)],
    ...historyOf(days, state, luck),
    ...(happens(0.1) ? { proposed: [pick(proposals)] } : {}),
    ...(happens(0.16) ? { tests: [...testsFor(kind, luck)] } : {}),
    ...(kind.hazards ? { hazards_noticed: [...kind.hazards] } : {}),
    ...(happens(0.12)
      ? { needed_for: [pick(wishes)], ...(happens(0.4) ? { needed_by: addDays(today, whole(20, 260)) } : {}) }
      : {}),
    ...(happens(0.45)
      ? {
          significance: weighted([
            [6, 'low'],
            [4, 'medium'],
            [1, 'high'],
            [1, 'unknown'],
          ] as const),
        }
      : {}),
    ...(happens(0.04) ? { retention: pick(['keep', 'sample-kept', 'discard-proposed']) } : {}),
    ...(kind.notes ? { notes: kind.notes } : {}),
    ...kind.more,
    components: kind.parts.map((part) => componentOf(asBuried(part, ground), luck)),
  }
  if (typeof record['needed_for'] === 'string') record['needed_for'] = [record['needed_for']]
  return record as unknown as ConditionRecord
}

/** Later looks at the same find: some stay quiet and are watched, some move. */
function laterLooks(first: ConditionRecord, luck: Chance): readonly ConditionRecord[] {
  const { whole, happens } = luck
  const moves = happens(0.35)
  const worse: Record<string, readonly string[]> = {
    iron: ['bright-orange-spots', 'loose-flakes'],
    'copper-alloy': ['pale-green-powder'],
    lead: ['white-powder'],
  }
  let on = first.recorded_on as IsoDate
  return Array.from({ length: whole(1, 4) }).flatMap((_, at): ConditionRecord[] => {
    on = addDays(on, whole(90, 420))
    if (on > today) return []
    const components = first.components.map((part) => {
      const signs = moves && at > 0 ? worse[part.material] : undefined
      return {
        ...part,
        seen: signs
          ? [...new Set([...(part.seen ?? []), ...signs])]
          : [...(part.seen ?? []), 'no-change-seen' as const],
      } as Component
    })
    const watched = moves && at > 0 ? {} : { watched_days: daysBetween(first.recorded_on as IsoDate, on) }
    return [
      {
        ...first,
        state_now: first.state_now === 'wet' ? 'wet' : 'dry',
        recorded_on: on,
        recorded_by: 'bench',
        ...watched,
        components,
      },
    ]
  })
}

export interface Assemblage {
  readonly records: readonly ConditionRecord[]
  readonly boxes: readonly Box[]
}

/** The whole assemblage, the same for the same seed. */
export function assemblage(seed = 1204): Assemblage {
  const luck = chance(seed)
  const stock = boxes(luck)
  const ashore = (Object.keys(grounds) as GroundName[]).filter((name) => name !== 'dredged from the bar')
  const groundFor = (kind: Kind) =>
    luck.weighted((kind.only ?? ashore).map((name) => [grounds[name].weight, name] as const))
  const firsts = Array.from({ length: findCount }, (_, at) => {
    // Each kind once, so that every material and hazard is met; then as chance has it.
    const kind = kinds[at] ?? luck.weighted(kinds.map((one) => [one.weight, one] as const))
    return findOf(at + 1, kind, groundFor(kind), stock, luck)
  })
  const watched = firsts
    .filter((record) => (record.recorded_on as string) < '2025-12-01')
    .slice(0, watchedCount * 4)
    .filter((_, at) => at % 4 === 1)
  const later = watched.flatMap((record) => laterLooks(record, luck))
  return { records: [...firsts, ...later], boxes: stock }
}
