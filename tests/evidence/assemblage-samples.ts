import { below, drawsFrom } from '../../lib/boxes/bins-chance.ts'
import type { AssemblageProblem, Option } from '../../lib/evidence/assemblage-problem.ts'

/** Finds whose methods tell less together than each by itself, as analyses do; weights as of finds that differ in significance. */
export function drawnAssemblage(
  seed: number,
  finds: number,
  methods: number,
  how: { readonly alike?: boolean; readonly share?: number } = {},
): AssemblageProblem {
  const draw = drawsFrom(seed)
  const weights = [0.5, 1, 2, 3, 6]
  const gains = [0.1, 0.3, 0.6, 0.9]
  const one = (): readonly Option[] => {
    const open = 0.5 + 2 * draw()
    const weight = weights[below(draw, weights.length)]!
    const tells = Array.from({ length: methods }, () =>
      draw() < 0.25 ? 0 : how.alike ? gains[below(draw, gains.length)]! : draw() ** 2,
    )
    const twice = tells.map(() => draw() < 0.15)
    const options: Option[] = []
    for (let set = 0; set < 2 ** methods; set++) {
      const asked = tells.map((tell, method) => (set & (2 ** method) && tell > 0 ? tell : 0))
      const count = asked.filter((tell) => tell > 0).length
      if (count > 3 || count !== set.toString(2).replaceAll('0', '').length) continue
      const left = asked.reduce((open, tell) => open * (1 - tell), 1)
      const gain = open * (1 - left) * (count < 2 || how.alike ? 1 : 0.9 + 0.1 * draw())
      options.push({
        uses: asked.map((tell, method) => (tell === 0 ? 0 : twice[method] ? 2 : 1)),
        worth: weight * gain,
      })
    }
    return options
  }
  const share = how.share ?? 0.1 + 0.5 * draw()
  return {
    finds: Array.from({ length: finds }, one),
    slots: Array.from({ length: methods }, () => Math.round(finds * share * (0.3 + draw()))),
  }
}
