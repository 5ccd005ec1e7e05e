import type { MethodBatch } from '../evidence/assemblage-batches.ts'
import type { Assemblage } from '../evidence/assemblage.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import {
  batchWords,
  furtherWords,
  leftOutLines,
  nearnessWords,
  partsWords,
  questionsWords,
  settlesWords,
} from './analyses-text.ts'
import { capital } from './capital.ts'
import { wrap } from './wrap.ts'

function batchText(batch: MethodBatch, knowledge: Knowledge): string {
  const method = knowledge.methods[batch.method]!
  const lines = batch.asks.map((ask, at) => {
    const parts = partsWords(ask, ask.find.facts.components.length)
    const who = `${ask.find.id}${parts === '' ? '' : `, ${parts}`}`
    return wrap(
      `  ${String(at + 1).padStart(3)}. `,
      `${who}: ${questionsWords(ask)} ${capital(settlesWords(ask))}.`,
    )
  })
  return [
    `${method.label}: ${batchWords(batch)}`,
    wrap('  ', `Who: ${method.who}.${method.leave ? ' The owner must have agreed in writing.' : ''}`),
    ...method.cautions.map(({ text }) => wrap('  ', `Careful: ${text}`)),
    ...(lines.length === 0 ? ['  Nothing is sent there.'] : lines),
    ...batch.further.slice(0, 1).map((one) =>
      wrap(
        '  ',
        furtherWords(method, batch, one, (id) => id),
      ),
    ),
  ].join('\n')
}

/** What to send where, for a terminal. */
export function requestsText(assemblage: Assemblage, knowledge: Knowledge): string {
  const { methods, leftOut, weightedBits, boundWeightedBits, proved } = assemblage
  const left = leftOutLines(leftOut, knowledge, (id) => id)
  const sent = methods.reduce((sum, { asks }) => sum + asks.length, 0)
  return [
    ...methods.map((batch) => batchText(batch, knowledge)),
    ...(left.length === 0
      ? []
      : [['Left out', ...left.map(({ who, why }) => wrap('  ', `${who}: ${why}`))].join('\n')]),
    ...(sent === 0 ? [] : [nearnessWords(weightedBits, boundWeightedBits, proved)]),
  ].join('\n\n')
}
