import { costOf, type LevelProblem, type Weeks } from './level-weeks.ts'

/** The same problem as a model in LP text, for an exact solver: a variable for every renewal and week. Small cases only. */
export interface LevelModel {
  readonly text: string
  readonly read: (values: ReadonlyMap<string, number>) => Weeks
}

export function levelModel(problem: LevelProblem): LevelModel {
  const { jobs, room, usedG, stock } = problem
  const weeks = room.map((_, week) => week)
  const x = (job: number, week: number | null) => `x_${job}_${week ?? 'none'}`
  const names = jobs.flatMap((_, job) => [...weeks.map((week) => x(job, week)), x(job, null)])
  const goal = jobs.flatMap((_, job) =>
    [...weeks, null].flatMap((week) => {
      const cost = costOf(problem, job, week)
      return cost === 0 ? [] : [`${cost} ${x(job, week)}`]
    }),
  )
  const rows: string[] = jobs.map(
    (_, job) => `${[...weeks, null].map((week) => x(job, week)).join(' + ')} = 1`,
  )
  for (const week of weeks) {
    const here = jobs.map((_, job) => x(job, week))
    if (Number.isFinite(room[week]!) && here.length > 0) rows.push(`${here.join(' + ')} <= ${room[week]}`)
    // d: dried in the week. Dried so far never beyond what was spent before it; used so far never beyond what lay dry.
    const used = (until: number) =>
      jobs.flatMap(({ gelG }, job) =>
        gelG === 0 ? [] : weeks.slice(0, until).map((one) => ({ gelG, name: x(job, one) })),
      )
    const fixed = (until: number) => usedG.slice(0, until).reduce((sum, one) => sum + one, 0)
    const dried = weeks.slice(0, week + 1).map((one) => `d_${one}`)
    const spentBefore = used(week).map(({ gelG, name }) => `- ${gelG} ${name}`)
    if (Number.isFinite(stock.spentG))
      rows.push(`${dried.join(' + ')} ${spentBefore.join(' ')} <= ${stock.spentG + fixed(week)}`)
    const taken = used(week + 1).map(({ gelG, name }) => `${gelG} ${name}`)
    const before = weeks.slice(0, week).map((one) => `- d_${one}`)
    if (taken.length > 0 && Number.isFinite(stock.dryG))
      rows.push(`${taken.join(' + ')} ${before.join(' ')} <= ${stock.dryG - fixed(week + 1)}`)
  }
  const text = [
    'Minimize',
    ` goal: ${goal.length > 0 ? goal.join(' + ') : `0 ${names[0] ?? 'd_0'}`}`,
    'Subject To',
    ...rows.map((row, at) => ` c${at}: ${row}`),
    'Bounds',
    ...weeks.map((week) => ` 0 <= d_${week}${Number.isFinite(stock.ovenG) ? ` <= ${stock.ovenG}` : ''}`),
    'Binaries',
    ...names.map((name) => ` ${name}`),
    'End',
  ].join('\n')
  const read = (values: ReadonlyMap<string, number>): Weeks =>
    jobs.map((_, job) => weeks.find((week) => (values.get(x(job, week)) ?? 0) > 0.5) ?? null)
  return { text, read }
}
