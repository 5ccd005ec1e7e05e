import { render, screen, within } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { ReliabilityChart } from '../../../app/_charts/reliability-chart.tsx'
import { reliabilityMarks } from '../../../lib/papers/reliability.ts'

const reliability = [
  { forecasts: 40, stated: 0.02, cameTrue: 0, range: [0, 0.09] },
  { forecasts: 20, stated: 0.3, cameTrue: 0.75, range: [0.53, 0.89] },
  { forecasts: 20, stated: 0.9, cameTrue: 0.5, range: [0.3, 0.7] },
] as const

describe('the diagram of what was said and what came out', () => {
  test('puts what was said along the foot and what came out upwards, and tells by shape what does not fit', () => {
    expect(reliabilityMarks(reliability)).toEqual([
      { fit: 'fits', left: 2, top: 100, from: 91, to: 100 },
      { fit: 'more', left: 30, top: 25, from: 11, to: 47 },
      { fit: 'less', left: 90, top: 50, from: 30, to: 70 },
    ])
  })
  test('stands in words and in a table; the drawing itself is inert', () => {
    const { container } = render(<ReliabilityChart reliability={reliability} />)
    expect(screen.getByText(/When the tool said about 9 in 10/).textContent).toContain('10 of 20 times')
    expect(container.querySelector('[inert] svg')).not.toBeNull()
    expect(within(screen.getByRole('table')).getAllByRole('row')).toHaveLength(4)
    const legend = screen.getAllByRole('listitem').map((item) => item.textContent)
    expect(legend).toContain('more often than said')
    expect(legend).toContain('less often than said')
  })
})
