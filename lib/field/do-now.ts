import type { Band, Caution, Urgency } from '../engine/plan.ts'
import type { Contact } from '../knowledge/knowledge.ts'
import type { Planned } from './bag.ts'

/** What a whole bag asks of the person who holds it, before anything else: merged over its finds, as data. */
export interface DoNow {
  readonly stops: readonly { readonly caution: Caution; readonly finds: readonly string[] }[]
  /** Whom to phone, and about which finds. */
  readonly call: readonly {
    readonly contact: Contact
    readonly who: string
    readonly finds: readonly string[]
  }[]
  readonly keepWet: readonly string[]
  /** Finds that one box can hold: the same band, not wet, nothing in dispute, nothing that must stay apart from the rest. */
  readonly packTogether: readonly { readonly band: Band; readonly finds: readonly string[] }[]
  readonly keepApart: readonly { readonly code: string; readonly finds: readonly string[] }[]
  readonly pressing: readonly { readonly urgency: Urgency; readonly finds: readonly string[] }[]
}

/** Packing codes that part a find from others of the bag. */
const apart = ['keep-metals-apart', 'keep-from-organics', 'bag-singly'] as const
const soon = ['now', 'hours', 'days'] as const satisfies readonly Urgency[]

export function doNow(bag: readonly Planned[]): DoNow {
  return {
    stops: stopsOf(bag),
    call: callsOf(bag),
    keepWet: bag.filter(({ plan }) => plan.storage.keep === 'wet').map(({ plan }) => plan.find),
    packTogether: boxesOf(bag),
    keepApart: apart.flatMap((code) => {
      const finds = bag
        .filter(({ plan }) => plan.packing.some((line) => line.code === code))
        .map(({ plan }) => plan.find)
      return finds.length === 0 ? [] : [{ code, finds }]
    }),
    pressing: soon.flatMap((urgency) => {
      const finds = bag.filter(({ plan }) => plan.urgency === urgency).map(({ plan }) => plan.find)
      return finds.length === 0 ? [] : [{ urgency, finds }]
    }),
  }
}

function stopsOf(bag: readonly Planned[]): DoNow['stops'] {
  const stops = new Map<string, { caution: Caution; finds: string[] }>()
  for (const { plan } of bag) {
    for (const caution of plan.cautions) {
      if (caution.level !== 'stop') continue
      const known = stops.get(caution.rule)
      if (known === undefined) stops.set(caution.rule, { caution, finds: [plan.find] })
      else if (known.finds.at(-1) !== plan.find) known.finds.push(plan.find)
    }
  }
  return [...stops.values()]
}

/** Calls of stops first; a warning that names somebody to call follows. */
function callsOf(bag: readonly Planned[]): DoNow['call'] {
  const calls = new Map<Contact, { contact: Contact; who: string; finds: string[] }>()
  for (const level of ['stop', 'warn'] as const) {
    for (const { plan } of bag) {
      for (const { call, who, level: its } of plan.cautions) {
        if (its !== level || call === null) continue
        const known = calls.get(call)
        if (known === undefined) calls.set(call, { contact: call, who, finds: [plan.find] })
        else if (!known.finds.includes(plan.find)) known.finds.push(plan.find)
      }
    }
  }
  return [...calls.values()]
}

function boxesOf(bag: readonly Planned[]): DoNow['packTogether'] {
  const boxes = new Map<string, { band: Band; finds: string[] }>()
  for (const planned of bag) {
    const { rhPercent, keep, conflict } = planned.plan.storage
    const stopped = planned.plan.cautions.some(({ level }) => level === 'stop')
    if (rhPercent === null || keep === 'wet' || conflict !== null || stopped) continue
    if (rhPercent.min <= 0 && rhPercent.max >= 100) continue
    const key = [rhPercent.min, rhPercent.max, ...companyOf(planned)].join(' ')
    const known = boxes.get(key)
    if (known === undefined) boxes.set(key, { band: rhPercent, finds: [planned.plan.find] })
    else known.finds.push(planned.plan.find)
  }
  return [...boxes.values()]
    .filter(({ finds }) => finds.length > 1)
    .toSorted((a, b) => a.band.max - b.band.max)
}

/** What a find that must stay apart may still lie beside: finds under the same ban, and where metals part, of the same metals. */
function companyOf({ plan, record }: Planned): readonly string[] {
  const bans = ['keep-metals-apart', 'keep-from-organics'].filter((ban) =>
    plan.packing.some(({ code }) => code === ban),
  )
  const metals = bans.includes('keep-metals-apart')
    ? record.components.map(({ material }) => material).toSorted()
    : []
  return [...bans, ...metals]
}
