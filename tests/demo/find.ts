import { addDays, daysBetween, isoDate } from '../../lib/base/calendar.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'
import type { Chance } from './chance.ts'
import { grounds, type Ground, type GroundName } from './grounds.ts'
import type { Kind } from './kind.ts'
import { looks, type Part } from './parts.ts'
import type { Box } from './store.ts'
import { historyOf, packingOf, stateOf, testsFor, useFor, type Loose } from './habits.ts'

/** One invented find as a finds hut records it, gaps and neglect included. */
export const today = isoDate('2026-11-25')!
const seasons = ['2019-05-06', '2021-06-14', '2023-05-15', '2025-06-02', '2026-05-11', '2026-11-02'].map(
  (day) => isoDate(day)!,
)

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
  const swaps = ground.wetness === 'wet' ? wetLooks : ground.burial.includes('ash-burnt') ? burntLooks : {}
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

export function findOf(
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
  const use = useFor(kind, state, days)
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
