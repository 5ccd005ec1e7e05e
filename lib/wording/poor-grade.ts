import type { PoorGrade } from '../evidence/poor-grades.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { gradeMeans } from './evidence-table.ts'
import { explanationName } from './interpretation.ts'

/** What a state says, as the clause it is written as. */
function clause({ matter, group, state }: PoorGrade, knowledge: Knowledge): string {
  const written = knowledge.matters[matter]?.groups.find(({ id }) => id === group)
  return (written?.states.find(({ id }) => id === state) ?? written?.rest)?.says ?? state
}

/** `In tinning it is called rare that it has a rim that lifts; it was so in 9 of the 14 that were looked at.` */
export function poorGradeWords(poor: PoorGrade, knowledge: Knowledge): string {
  const { rival, grade, looked, showed } = poor
  const came = showed === 0 ? `it was so in none of the ${looked}` : `it was so in ${showed} of the ${looked}`
  return `In ${explanationName(rival, knowledge)} it is called ${grade} that ${clause(poor, knowledge)}; ${came} that were looked at.`
}

/** What the word stands for, to hold the count against. */
export const poorGradeMeans = ({ grade }: PoorGrade): string => `The word means ${gradeMeans(grade)}.`
