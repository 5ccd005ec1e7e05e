import type { BoxReport } from '../services/report-boxes.ts'
import { start } from '../start.ts'
import { boxText } from '../wording/boxes-text.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { choiceOption } from './options.ts'
import { orHindered, projectNamed } from './project.ts'

/** One object a box, units in every key. */
function boxJson({ line, findsAtRisk }: BoxReport) {
  const { box, outlook, newest, tub } = line
  return {
    box: box.given.box,
    room: line.room,
    shelf: box.given.shelf ?? '',
    kind: line.kind,
    finds: line.finds,
    findsAtRisk,
    bandRhPercent: line.needs,
    disagree: line.disagree,
    targetRhPercent: line.held,
    limitRhPercent: outlook?.limitRhPercent ?? null,
    heldRhPercent: outlook?.nowRhPercent ?? null,
    airChangesPerDay: outlook?.airChangesPerDay ?? null,
    airChangesFrom: outlook?.airChangesFrom ?? null,
    daysToLimit: outlook?.daysToLimit ?? null,
    renewOn: outlook?.renewOn ?? null,
    departedSince: outlook?.departedSince ?? null,
    modelDoubtful: outlook?.modelDoubtful ?? null,
    cannotTell: line.noOutlook,
    newestSighting: newest,
    lid: line.lid,
    loggers: line.loggers,
    daysInWater: tub?.daysHeld ?? null,
    waterDueOn: tub?.waterDueOn ?? null,
    stops: line.stops.map(({ code, text, who }) => ({ code, text, who })),
  }
}

const boxSaid = ({ line, findsAtRisk }: BoxReport) => ({
  box: line.box.given.box,
  room: line.room,
  shelf: line.box.given.shelf ?? '',
  finds: line.finds,
  findsAtRisk,
  needs: line.needs,
  disagree: line.disagree,
  held: line.outlook?.nowRhPercent ?? null,
  noOutlook: line.noOutlook,
  renewOn: line.outlook?.renewOn ?? null,
  departedSince: line.outlook?.departedSince ?? null,
  newest: line.newest,
  stops: line.stops.map(({ text, who }) => (who === '' ? text : `${text} Call: ${who}.`)),
})

export const command: Command = {
  usage: 'boxes [--project NAME] [--format text|json]',
  says: 'Tells of every box of a store: what it must hold, what it likely holds, how leaky it is, when its gel falls due.',
  help: `
--format        text, or json (one object a line)
--project NAME  the project; not needed where there is only one

Ranges are given as the values that one in ten lies below, half, and nine in ten.`,
  options: { format: { type: 'string' }, project: { type: 'string' } },
  async run(call, surroundings) {
    const format = choiceOption(call, 'format', ['text', 'json'])
    if (call.words.length > 0)
      throw new WrongCall(`"${call.words[0]}" is too much; boxes are read from the store.`)
    await knowledgeHere(surroundings)
    const services = await start(surroundings.root, surroundings.env)
    try {
      const project = await projectNamed(services, textOption(call, 'project'), null)
      const boxes = orHindered(await services.reportBoxes(project.id))
      for (const box of boxes) {
        await surroundings.out(
          format === 'json'
            ? `${JSON.stringify(boxJson(box))}\n`
            : `${boxText(boxSaid(box), services.today())}\n\n`,
        )
      }
      return exit.done
    } finally {
      await services.close()
    }
  },
}
