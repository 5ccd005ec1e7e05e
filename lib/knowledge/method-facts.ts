import type { Group } from './evidence.ts'

/** The facts in which the record keeps what a method found; all else it finds is kept as answers to questions. */
export const methodFacts: Readonly<Record<string, readonly string[]>> = {
  xrf: ['xrf'],
  xrd: ['xrd'],
  raman: ['raman'],
  'x-radiography': ['radiograph', 'core'],
  'chloride-test': ['silver_nitrate', 'residual_chloride_ppm', 'bath_chloride_mg_l'],
}

/** The questions whose answers a group reads, as its own or beside other results. */
export function questionsRead({ question, states }: Pick<Group, 'question' | 'states'>): readonly string[] {
  const beside = states.flatMap(({ when }) =>
    when.flatMap(({ fact }) => (fact.startsWith('looked.') ? [fact.slice('looked.'.length)] : [])),
  )
  return [...new Set([...(question === null ? [] : [question]), ...beside])]
}
