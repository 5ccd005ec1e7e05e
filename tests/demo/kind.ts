import type { GroundName } from './grounds.ts'
import { part, type Part } from './parts.ts'

/** The invented kinds of find. Most are dull iron, as on any quay; the rest see to it that every material is met. */
export interface Kind {
  readonly weight: number
  readonly object: string
  readonly kind: string
  readonly parts: readonly Part[]
  readonly only?: readonly GroundName[]
  readonly quantity?: readonly [number, number]
  readonly hazards?: readonly string[]
  readonly notes?: string
  readonly mass: readonly [number, number]
  readonly more?: Readonly<Record<string, string>>
}

export const iron = (component = 'body', material = 'iron'): Part => part(component, 'body', material, 'iron')

export const copper = (component = 'body', material = 'copper-alloy', role = 'body'): Part =>
  part(component, role, material, 'copper')
