import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect } from 'vitest'
import { packPlain } from '../../../lib/boxes/bins-pack.ts'
import { figure } from '../../said.ts'
import { printed } from '../printed.ts'
import { wholeNumber } from '../tolerance.ts'

const sizes = readFileSync(path.join(import.meta.dirname, '../problems/u120-00.txt'), 'utf8')
  .trim()
  .split(/\s+/)
  .map(Number)

describe('packing', () => {
  printed(
    {
      check: 'physics 71',
      work: 'or-library-binpack1',
      place: 'u120_00, line above the items',
      known: 'read',
      tolerance: wholeNumber,
      says: 'u120_00: 120 items go into 48 bins of 150, and into no fewer',
    },
    () => {
      const best = figure('u120-00-bins')
      const { bins, lowerBound, assignment } = packPlain(150, sizes, { seed: 1, steps: 50_000 })
      expect(sizes).toHaveLength(120)
      expect([bins, lowerBound]).toEqual([best.value, best.value])
      const loads = Array.from({ length: bins }, () => 0)
      assignment.forEach((bin, item) => (loads[bin]! += sizes[item]!))
      expect(Math.max(...loads)).toBeLessThanOrEqual(150)
      expect(assignment).toHaveLength(120)
      return best
    },
  )
})
