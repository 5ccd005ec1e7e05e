'use client'

import type { IsoDate } from '../../lib/base/calendar.ts'
import type { Contacts } from '../../lib/engine/plan.ts'
import { Bag } from './bag.tsx'
import { useKnowledge } from './use-knowledge.ts'

export interface IntakeProps {
  readonly knowledgeHash: string
  readonly asOf: IsoDate
  readonly contacts: Contacts
  readonly project: string | null
  /** Whether this device has said who sits at it: records are kept under a name. */
  readonly known: boolean
}

export function Intake(props: IntakeProps) {
  const knowledge = useKnowledge(props.knowledgeHash)
  if (knowledge === 'loading') return <p role="status">Fetching the rules, once for this version …</p>
  if (knowledge === 'failed') {
    return (
      <p role="alert" className="measure">
        The rules could not be fetched, so nothing can be planned here. Is the network reachable? Reload to
        try again; what you typed before is kept on this device.
      </p>
    )
  }
  return <Bag {...props} knowledge={knowledge} />
}
