import type { MeasuredIsotherm, Task } from '../knowledge.ts'
import type { Entry } from './entries.ts'
import { fillSentence } from './sentence.ts'
import type * as shapes from './shapes.ts'
import { checkId, checkSources, type Shelf } from './shelf.ts'

export function linkTask({ written, place }: Entry<shapes.Written<typeof shapes.task>>, shelf: Shelf): Task {
  const fill = (text: string, ...path: (string | number)[]): string =>
    fillSentence(text, path.join('.'), place(...path), shelf, new Set())
  return {
    ...written,
    label: fill(written.label, 'label'),
    cautions: written.cautions.map((caution, index) => {
      checkId('code', caution.code, place('cautions', index, 'code'), shelf)
      checkSources(caution.sources, (source) => place('cautions', index, 'sources', source), shelf)
      const { contested = null } = caution
      if (contested !== null) checkId('contested', contested, place('cautions', index, 'contested'), shelf)
      return { ...caution, contested, text: fill(caution.text, 'cautions', index, 'text') }
    }),
  }
}

export function linkIsotherm(
  { written, place }: Entry<shapes.Written<typeof shapes.isotherm>>,
  shelf: Shelf,
): MeasuredIsotherm {
  const { 'temperature-c': temperatureC, ...rest } = written
  const source = { ...written.source, known: written.known, says: 'supports' } as const
  checkSources([source], () => place('source'), shelf)
  written.points.forEach(([pressure, water], index) => {
    const before = written.points[index - 1]
    if (before !== undefined && pressure > before[0] && water > before[1]) return
    if (before === undefined && pressure > 0 && water > 0) return
    shelf.report.add('wrong-form', place('points', index), {
      key: 'points',
      expected: 'both numbers above those of the point before',
      found: `${pressure}, ${water}`,
    })
  })
  return { ...rest, temperatureC }
}
