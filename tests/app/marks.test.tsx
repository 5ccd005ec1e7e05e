import { render, screen } from '@testing-library/react'
import { expect, test } from 'vitest'
import { KnownMark } from '../../app/_marks/known-mark.tsx'
import { UrgencyMark } from '../../app/_marks/urgency-mark.tsx'
import { urgencies, urgencyWords } from '../../lib/wording/marks.ts'

test('each urgency is a word with a shape of its own', () => {
  const { container } = render(urgencies.map((urgency) => <UrgencyMark key={urgency} urgency={urgency} />))
  for (const urgency of urgencies) expect(screen.getByText(urgencyWords[urgency].label)).toBeTruthy()
  const outlines = [...container.querySelectorAll('svg')].map((svg) => svg.innerHTML)
  expect(new Set(outlines).size).toBe(urgencies.length)
})

test('how a source is known is a word beside its sign', () => {
  render(<KnownMark known="second-hand" />)
  expect(screen.getByText('second-hand').title).toBe('Read in another work that quotes it.')
})
