import type { Element, Matrix, Matter, Question } from '../knowledge/evidence.ts'
import type { Method } from '../knowledge/knowledge.ts'

/** The part of the knowledge that evidence is weighed by; the compiled knowledge fits as it is. */
export interface EvidenceBase {
  readonly matters: Readonly<Record<string, Matter>>
  readonly questions: Readonly<Record<string, Question>>
  readonly elements: Readonly<Record<string, Element>>
  readonly matrices: Readonly<Record<string, Matrix>>
  readonly methods: Readonly<Record<string, Method>>
}
