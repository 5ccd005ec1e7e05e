import { useEffect, useState } from 'react'
import type { Planned } from '../../../lib/field/bag.ts'
import { keepSentence } from '../../../lib/wording/keep.ts'
import { urgencyWords } from '../../../lib/wording/marks.ts'

const pauseMs = 900

/** The plan in one sentence for those who listen: told when it has changed and typing has paused. */
export function PlanSaid({ planned }: { readonly planned: Planned | null }) {
  const words = planned === null ? '' : sentence(planned)
  const [said, say] = useState('')
  useEffect(() => {
    const timer = setTimeout(() => say(words), pauseMs)
    return () => clearTimeout(timer)
  }, [words])
  return (
    <p className="visually-hidden" role="status">
      {said}
    </p>
  )
}

function sentence({ plan }: Planned): string {
  const stops = plan.cautions.filter(({ level }) => level === 'stop').map(({ text }) => text)
  return [
    `${plan.find}: ${urgencyWords[plan.urgency].label}.`,
    ...stops,
    keepSentence(plan.storage),
    plan.steps[0]?.text ?? '',
  ].join(' ')
}
