import type { Assemblage, LeftOut } from '../evidence/assemblage.ts'
import type { ChosenAsk, Further, MethodBatch } from '../evidence/assemblage-batches.ts'
import type { IsoDate } from '../base/calendar.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { askAnalyses, hoursOfLine, type AnalysesOfFile } from '../services/ask-analyses.ts'
import {
  consideredWords,
  hoursFlawWords,
  leftOutWords,
  questionsWords,
  settlesWords,
} from '../wording/analyses-text.ts'
import { requestsText } from '../wording/requests-text.ts'
import { exit, textOption, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { openRecords } from './open-records.ts'
import { choiceOption, dayOption } from './options.ts'

const formats = ['text', 'json'] as const

function askJson(ask: ChosenAsk) {
  return {
    find: ask.find.id,
    components: ask.parts.map(({ component }) => component),
    method: ask.method,
    matters: [...new Set(ask.parts.flatMap(({ matters }) => matters.map(({ matter }) => matter)))],
    question: questionsWords(ask),
    settles: settlesWords(ask),
    gainBits: ask.gainBits,
    weightedGainBits: ask.weightedBits,
  }
}

const furtherJson = ({ hours, places, adds, gainBits, weightedBits }: Further) => ({
  hours,
  slots: places,
  adds: adds.map(askJson),
  gainBits,
  weightedGainBits: weightedBits,
})

function batchJson(batch: MethodBatch, knowledge: Knowledge) {
  const { who, sampling, leave, cautions } = knowledge.methods[batch.method]!
  return {
    method: batch.method,
    hours: batch.hours,
    slots: batch.places,
    hoursUsed: batch.hoursUsed,
    who,
    sampling,
    ownersLeave: leave,
    cautions: cautions.map(({ text }) => text),
    gainBits: batch.gainBits,
    weightedGainBits: batch.weightedBits,
    findsItCouldTellOf: batch.candidates,
    asks: batch.asks.map(askJson),
    nextHour: batch.further.slice(0, 1).map(furtherJson)[0] ?? null,
    oneMoreAtHours: batch.oneMoreAtHours,
  }
}

const leftOutJson = ({ find, method, because }: LeftOut) => ({
  find: find?.id ?? null,
  method,
  because,
  says: leftOutWords[because],
})

function gapPercent({ weightedBits, boundWeightedBits }: Assemblage): number {
  return boundWeightedBits > 0 ? (100 * (boundWeightedBits - weightedBits)) / boundWeightedBits : 0
}

function planJson(
  { finds, open, assemblage }: AnalysesOfFile,
  knowledge: Knowledge,
  asOf: IsoDate,
  sampling: boolean,
) {
  const { methods, gainBits, weightedBits, boundWeightedBits, proved, leftOut, candidates } = assemblage
  return {
    asOf,
    knowledge: knowledge.hash,
    sampling,
    finds,
    findsWithSomethingOpen: open,
    findsToldOf: candidates,
    gainBits,
    weightedGainBits: weightedBits,
    boundWeightedGainBits: boundWeightedBits,
    gapPercent: gapPercent(assemblage),
    proved,
    chosen: methods.flatMap(({ asks }) => asks.map(askJson)),
    methods: methods.map((batch) => batchJson(batch, knowledge)),
    leftOut: leftOut.map(leftOutJson),
  }
}

export const command: Command = {
  usage: 'requests FILE --hours xrf=6,x-radiography=10 [--sampling] [--format text|json] [--on DATE]',
  says: 'Chooses which finds of a file to send to which analysis, so that the hours there are settle most.',
  help: `
FILE is a CSV, XLSX or JSON file of records, told apart by its content; - reads standard input.
--hours         hours at each method, setting up included: xrf=6,x-radiography=10; for places instead of
                hours: ct=4slots. A method that is not named has none.
--sampling      a conservator agrees to methods that take samples; without, nothing is sent there
--format text   per method its finds with their question, and what another hour would buy
         json   one object: chosen, methods, gainBits, bounds, leftOut
--on DATE       the day it is planned for, as 2026-11-25; today where left out

Finds are weighed by their significance and by how much of their plan hangs on the answer. Of a find
recorded more than once the newest record counts. Nothing is asked of a find under a stop; rays wait for
the sample where luminescence dating is wanted.
Exit code 0: planned. 1: planned, but something could not be read. 2: nothing could be read, or the call is wrong.`,
  options: {
    hours: { type: 'string' },
    sampling: { type: 'boolean' },
    format: { type: 'string' },
    on: { type: 'string' },
  },
  async run(call, surroundings) {
    const { out, err } = surroundings
    const format = choiceOption(call, 'format', formats)
    const asOf = dayOption(call, 'on', surroundings.today())
    const knowledge = await knowledgeHere(surroundings)
    const hours = hoursOfLine(textOption(call, 'hours') ?? '', knowledge)
    if (!hours.ok) {
      for (const flaw of hours.problems) err(`--hours: ${hoursFlawWords(flaw, knowledge)}\n`)
      return exit.wrongCall
    }
    const sampling = call.options['sampling'] === true
    const asText = format === 'text'
    const opened = await openRecords(call, surroundings, {
      knowledge,
      asOf,
      asText,
      so: 'nothing is asked for',
    })
    if (opened === null) return exit.wrongCall
    const { planned, done } = opened
    const asked = { allowances: hours.value, sampling, further: 1 }
    const analyses = await askAnalyses(planned.records(), asked, knowledge, asOf)
    if (format === 'json') await out(`${JSON.stringify(planJson(analyses, knowledge, asOf, sampling))}\n`)
    else {
      const { finds, open, assemblage } = analyses
      await out(
        `Planned for ${asOf}: ${consideredWords(finds, open, assemblage.candidates)}\n\n${requestsText(assemblage, knowledge)}\n`,
      )
    }
    return done
  },
}
