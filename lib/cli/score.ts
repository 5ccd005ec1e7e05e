import { start } from '../start.ts'
import { poorGradeWords } from '../wording/poor-grade.ts'
import {
  guesserWords,
  leaderWords,
  missWords,
  noneOfTheseCountWords,
  pointWords,
  reliabilityWords,
  tooFewWords,
} from '../wording/score.ts'
import type { Score } from '../evidence/score.ts'
import { exit, textOption, WrongCall, type Command } from './command.ts'
import { knowledgeHere } from './knowledge-here.ts'
import { choiceOption } from './options.ts'
import { orHindered, projectNamed } from './project.ts'

const scoreLines = (score: Score): readonly string[] => [
  leaderWords(score),
  noneOfTheseCountWords(score) ?? '',
  reliabilityWords(score),
  ...score.reliability.map((point) => `- ${pointWords(point)}`),
  guesserWords(score),
  `How far off, from 0 (always sure and right) to 2 (always sure and wrong): the tool ${missWords(score.brier)}, a guesser ${missWords(score.brierOfGuessing)}.`,
]

export const command: Command = {
  usage: 'score [--project NAME] [--format text|json|csv]',
  says: 'Holds what was thought of surfaces against what they were found to be.',
  help: `
--format        text; json (one object; the score is null while there are too few results); or csv:
                every identification, as a table that comes back as the same
--project NAME  the project; not needed where there is only one`,
  options: { format: { type: 'string' }, project: { type: 'string' } },
  async run(call, surroundings) {
    const format = choiceOption(call, 'format', ['text', 'json', 'csv'])
    if (call.words.length > 0)
      throw new WrongCall(`"${call.words[0]}" is too much; results are read from the project.`)
    const knowledge = await knowledgeHere(surroundings)
    const services = await start(surroundings.root, surroundings.env)
    try {
      const project = await projectNamed(services, textOption(call, 'project'), null)
      if (format === 'csv') {
        await surroundings.out(orHindered(await services.exportIdentifications(project.id)).content)
        return exit.done
      }
      const shown = orHindered(await services.showScore(project.id))
      const { score, poor } = shown
      const said = score === null ? [tooFewWords(shown)] : scoreLines(score)
      const lines = [
        project.invented ? `${project.name} (invented)` : project.name,
        ...said,
        ...poor.map((one) => poorGradeWords(one, knowledge)),
      ]
      await surroundings.out(
        format === 'json'
          ? `${JSON.stringify({ project: project.name, invented: project.invented, ...shown })}\n`
          : `${lines.filter((line) => line !== '').join('\n')}\n`,
      )
      return exit.done
    } finally {
      await services.close()
    }
  },
}
