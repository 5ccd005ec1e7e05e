import path from 'node:path'
import { isoDate } from '../../lib/base/calendar.ts'
import { compile } from '../../lib/knowledge/compile/compile.ts'
import { readContent } from '../../lib/knowledge/compile/read.ts'
import { assemblage } from '../demo/assemblage.ts'
import { figuresOf, guideDrawn, guideRecorded, type GuidedFigures } from '../simulated/guided-finds.ts'

/**
 * How few facts it takes to be led to the plan of the full record, the first question of *Look next* answered each time:
 * over finds drawn from the knowledge itself, and over the finds of the demo with what was recorded of them.
 */
const asOf = isoDate('2026-11-25')!
const finds = 1000

export interface GuidedBench {
  readonly drawn: GuidedFigures
  readonly demo: GuidedFigures
}

export function guidedFigures(): GuidedBench {
  const { knowledge } = compile(readContent(path.resolve(import.meta.dirname, '../..')))
  return {
    drawn: figuresOf(guideDrawn(finds, knowledge, asOf)),
    demo: figuresOf(guideRecorded(assemblage().records, knowledge, asOf)),
  }
}
