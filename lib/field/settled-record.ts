import type { Identified } from '../evidence/raised.ts'
import type { Settled } from '../knowledge/evidence.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Component, ConditionRecord } from '../record/record.ts'

function freeName(role: string, components: readonly Component[]): string {
  const taken = (name: string) => components.some(({ component }) => component === name)
  for (let at = 1; ; at += 1) {
    const name = at === 1 ? role : `${role}-${at}`
    if (!taken(name)) return name
  }
}

/** The record as it would stand if an explanation of something on one part were known to be true. */
export function settledRecord(record: ConditionRecord, component: string, settled: Settled): ConditionRecord {
  const components = record.components.map((one) => {
    if (one.component !== component || settled.seen.length === 0) return one
    const seen = [...new Set([...(one.seen ?? []), ...settled.seen])].filter((value) => value !== 'none')
    return { ...one, seen } as Component
  })
  const there = components.some(
    ({ role, material }) => role === settled.part?.role && material === settled.part?.material,
  )
  const added = settled.part &&
    !there && {
      component: freeName(settled.part.role, components),
      role: settled.part.role,
      material: settled.part.material,
      known_by: 'analysis',
    }
  return {
    ...record,
    components: added ? [...components, added as Component] : components,
    ...(settled.tests.length === 0
      ? {}
      : { tests: [...(record.tests ?? []), ...settled.tests.map((test) => `${component}/${test}`)] }),
  }
}

/**
 * The record with what has been identified of it taken as known, so that the rules heed it: a black fill found to be niello
 * is niello to them. Of several identifications of one matter the last counts.
 */
export function identifiedRecord(
  record: ConditionRecord,
  identified: readonly Identified[],
  { matters }: Knowledge,
): ConditionRecord {
  const last = new Map(identified.map((one) => [`${one.component} ${one.matter}`, one]))
  return [...last.values()].reduce((known, { component, matter, interpretation }) => {
    const settled = matters[matter]?.rivals.find(({ id }) => id === interpretation)?.settled
    const named = record.components.some((one) => one.component === component)
    return settled && named ? settledRecord(known, component, settled) : known
  }, record)
}
