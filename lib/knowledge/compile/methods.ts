import type { Method, MethodMinutes } from '../knowledge.ts'
import { knowns } from '../known.ts'
import type { Entry } from './entries.ts'
import { fillSentence } from './sentence.ts'
import type * as shapes from './shapes.ts'
import { checkId, checkSources, figureOf, type Shelf } from './shelf.ts'

type WrittenMethod = Entry<shapes.Written<typeof shapes.method>>

export function linkMethod(entry: WrittenMethod, shelf: Shelf): Method {
  const { written, place } = entry
  checkSources(written.sources, (index) => place('sources', index), shelf)
  checkHarm(entry, shelf)
  const fill = (text: string, ...path: (string | number)[]): string =>
    fillSentence(text, path.join('.'), place(...path), shelf, new Set())
  return {
    ...written,
    label: fill(written.label, 'label'),
    answers: fill(written.answers, 'answers'),
    cannot: fill(written.cannot, 'cannot'),
    who: fill(written.who, 'who'),
    minutes: linkMinutes(entry, shelf),
    cautions: written.cautions.map((caution, index) => {
      checkId('code', caution.code, place('cautions', index, 'code'), shelf)
      checkSources(caution.sources, (source) => place('cautions', index, 'sources', source), shelf)
      return { ...caution, text: fill(caution.text, 'cautions', index, 'text') }
    }),
  }
}

const takesSome: readonly string[] = ['loose-powder', 'micro-sample', 'cut']
const takesFromIt: readonly string[] = ['micro-sample', 'cut']

/** What takes something is sampling; what takes it from the object itself needs leave. */
function checkHarm({ written, place }: WrittenMethod, shelf: Shelf): void {
  const { id: method, harm, sampling, leave } = written
  if (takesSome.includes(harm) !== sampling)
    shelf.report.add('harm-differs', place('harm'), { method, harm, key: 'sampling' })
  if (takesFromIt.includes(harm) && !leave)
    shelf.report.add('harm-differs', place('leave'), { method, harm, key: 'leave' })
}

const minutesIn: Readonly<Record<string, number>> = { minute: 1, hour: 60 }

function linkMinutes({ written, place }: WrittenMethod, shelf: Shelf): MethodMinutes {
  const figures = [written.minutes['set-up'], written.minutes.each]
  const found = (['set-up', 'each'] as const).map((key) => {
    const at = place('minutes', key)
    const figure = figureOf(written.minutes[key], at, shelf)
    if (figure === null) return null
    const factor = minutesIn[figure.unit]
    if (factor === undefined) {
      const wants = Object.keys(minutesIn)
      shelf.report.add('wrong-unit', at, { figure: figure.id, unit: figure.unit, wants })
    }
    return { minutes: figure.value * (factor ?? 1), known: figure.known }
  })
  const ranks = found.map((one) => (one === null ? 0 : knowns.indexOf(one.known)))
  return {
    setUp: found[0]?.minutes ?? 0,
    each: found[1]?.minutes ?? 0,
    figures: figures.toSorted(),
    known: knowns[Math.max(...ranks)]!,
  }
}
