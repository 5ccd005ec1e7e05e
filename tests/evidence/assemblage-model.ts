import type { AssemblageProblem } from '../../lib/evidence/assemblage-problem.ts'

/** The same problem for an exact solver, as LP text. */
export function assemblageModel({ slots, finds }: AssemblageProblem): string {
  const name = (find: number, option: number) => `x${find}_${option}`
  const all = finds.flatMap((options, find) =>
    options.map(({ uses, worth }, option) => ({ name: name(find, option), uses, worth })),
  )
  const sum = (terms: readonly (readonly [number, string])[]) =>
    terms.length === 0 ? '0 x0_0' : terms.map(([times, name]) => `${times} ${name}`).join(' + ')
  const rows = [
    ...finds.map(
      (options, find) => `f${find}: ${options.map((_, option) => name(find, option)).join(' + ')} <= 1`,
    ),
    ...slots.map((most, method) => {
      const terms = all.flatMap(({ name, uses }) =>
        uses[method]! > 0 ? [[uses[method]!, name] as const] : [],
      )
      return `m${method}: ${sum(terms)} <= ${most}`
    }),
  ]
  const aim = sum(all.flatMap(({ name, worth }) => (worth > 0 ? [[worth, name] as const] : [])))
  return `Maximize\n obj: ${aim}\nSubject To\n ${rows.join('\n ')}\nBinary\n ${all.map(({ name }) => name).join(' ')}\nEnd\n`
}
