import type { Settled } from '../knowledge/evidence.ts'
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
  const added = settled.part && {
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
