import type { Knowledge } from '../knowledge/knowledge.ts'
import type { LogRead } from '../logger/read/read-log.ts'
import { readLogAt } from '../services/read-log-at.ts'
import { tellLog, type LogTold } from '../services/tell-log.ts'
import { logProblemWords } from '../wording/log-problems.ts'
import { limitTakenWords, logText, zoneSaid } from '../wording/logger-text.ts'
import { logAskWords, logBecauseWords } from '../wording/store-log.ts'
import { exit, Hindered, type Command } from './command.ts'
import { fileArgument } from './file-argument.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { channelJson } from './logger-json.ts'
import { loggerCall, loggerOptions } from './logger-options.ts'

/** Taken where a call names no limit: what a museum manual allows for iron that holds chloride. */
const usualLimit = 'iron-chloride-museum-rh-ceiling'

/** The option that answers a question of the file. */
const answeredBy = {
  'date-order': '--date-order day-first|month-first|year-first',
  'time-zone': '--time-zone, as Europe/London or +01:00',
  'temperature-unit': '--temperature-unit celsius|fahrenheit',
  'humidity-scale': '--humidity-scale percent|fraction',
  columns: '--columns, each column in order, as stamp,temperature,humidity',
} as const

/** Asked, and nothing can be told before it is answered: readings on the wrong day are worse than none. */
const mustBeAnswered = (read: LogRead) =>
  read.asks.filter(
    (ask) => ask.about === 'date-order' || (ask.about === 'time-zone' && ask.because === 'not-a-zone'),
  )

function asksWords(asks: LogRead['asks']): string {
  return asks
    .map((ask) => {
      const shown = ask.examples.slice(0, 2).map(({ line, text }) => `line ${line} has ${text}`)
      const where = shown.length === 0 ? '' : ` (${shown.join('; ')})`
      return `${logAskWords[ask.about]} ${logBecauseWords(ask)}${where} Give ${answeredBy[ask.about]}.\n`
    })
    .join('')
}

function asJson(read: LogRead, told: readonly LogTold[]): object {
  const first = told.find(({ statistics }) => statistics.humidity !== null) ?? told[0]!
  return {
    ...channelJson(first),
    timeZone: read.form?.timeZone.zone ?? null,
    timeZoneFrom: read.form?.timeZone.how ?? null,
    dateOrder: read.form?.dates.order ?? null,
    rows: read.rows,
    questions: read.asks.map((ask) => ({
      about: ask.about,
      proposed: ask.proposed,
      answerWith: answeredBy[ask.about],
    })),
    problems: read.problems.map((problem) => ({ ...problem, text: logProblemWords(problem) })),
    channels: told.map((one) => ({ name: one.name, serial: one.serial, ...channelJson(one) })),
  }
}

function asText(
  name: string,
  read: LogRead,
  told: readonly LogTold[],
  knowledge: Knowledge,
  limitGiven: boolean,
): string {
  const zone = read.form?.timeZone.zone ?? 'UTC'
  const blocks = told.map((one) => {
    const who = [one.name, one.serial].filter(Boolean).join(', ')
    return `${who === '' ? '' : `${who}\n`}${logText(one, zone)}`
  })
  const taken = limitGiven ? '' : `${limitTakenWords(knowledge.figures[usualLimit]!, knowledge)}\n`
  const said = read.form === null ? '' : `${zoneSaid(read.form)}\n`
  return `${name}\n${said}${taken}\n${blocks.join('\n\n')}\n`
}

export const command: Command = {
  usage:
    'logger FILE [--limit-rh-percent NUMBER] [--low-limit-rh-percent NUMBER] [--time-zone ZONE] [--date-order ORDER] [--sensor-error-rh-percent NUMBER] [--format text|json]',
  says: 'What a logger read: time above a limit, excursions, dose, worst day, gaps, and how sure that is.',
  help: `
FILE is the text of any logger, told apart by its content, or a workbook it was saved as; - reads standard input.
--limit-rh-percent         the highest relative humidity what lies there bears; where left out, 15
--low-limit-rh-percent     the lowest; none where left out
--sensor-error-rh-percent  how far the sensor may be off, ±; where left out, what data sheets print
--floor-rh-percent         the least this logger can read; where left out, told from its readings
--time-zone                as Europe/London, +01:00 or UTC; where the file names none, UTC
--date-order               day-first, month-first or year-first, where its dates leave it open
--temperature-unit, --humidity-scale, --columns   where the file leaves those open
--percent-method           linear (type 7, where left out), inverse (1), hazen (5), weibull (6)
--dose-method              rectangle (each reading stands till the next) or trapezoid

Exit code 0: told. 1: told, but something could not be read. 2: nothing could be read, a question must be answered
first, or the call is wrong.`,
  options: loggerOptions,
  async run(call, surroundings) {
    const { out, err } = surroundings
    const { format, answers, asked } = loggerCall(call, surroundings.today())
    const file = fileArgument(call)
    const knowledge = await knowledgeHere(surroundings)
    const read = await readLogAt(file.path, answers)
    const open = mustBeAnswered(read)
    if (open.length > 0) throw new Hindered(`${file.name}:\n${asksWords(open)}`.trimEnd())
    for (const problem of read.problems) err(`${logProblemWords(problem)}\n`)
    if (read.channels.length === 0) {
      err(`${file.name}: no readings in it could be read, so nothing is told.\n`)
      return exit.wrongCall
    }
    const limit = asked.maxRhPercent ?? knowledge.figures[usualLimit]!.value
    const told = read.channels.map((channel) =>
      tellLog(channel, { ...asked, maxRhPercent: limit }, knowledge),
    )
    if (format === 'json') await out(`${JSON.stringify(asJson(read, told))}\n`)
    else {
      err(asksWords(read.asks))
      await out(asText(file.name, read, told, knowledge, asked.maxRhPercent !== null))
    }
    return read.problems.some(({ severity }) => severity === 'error') ? exit.someUnreadable : exit.done
  },
}
