import type { PackBox, PackFigures, PackFind } from './pack-find.ts'
import { refusal } from './pack-place.ts'
import type { Nowhere } from './pack-proposal.ts'
import type { Bagged } from './pack-size.ts'

/** Why a find that may be packed has no box: what every box refuses it for, each reason once, by the box that came nearest. */
export function whyNowhere(
  find: PackFind,
  bagged: Bagged,
  boxes: readonly PackBox[],
  figures: PackFigures,
): readonly Nowhere[] {
  const refusals = boxes.map((box) => refusal(find, bagged, box, figures))
  if (refusals.includes(null)) return [{ code: find.alone ? 'no-box-alone' : 'no-box-left' }]
  const said = refusals.filter((why) => why !== null)
  // A box of the wrong kind says nothing where there is one of the right kind.
  const telling = said.filter(({ code }) => code !== 'no-box' && code !== 'no-tub')
  if (telling.length === 0)
    return [
      { code: find.keep === 'wet' && said.every(({ code }) => code === 'no-tub') ? 'no-tub' : 'no-box' },
    ]
  return [...Map.groupBy(telling, ({ code }) => code).values()].map((group) =>
    group.reduce((nearest, one) => (short(one) < short(nearest) ? one : nearest)),
  )
}

/** By how much it does not go in. */
function short(why: Nowhere): number {
  switch (why.code) {
    case 'too-long':
      return why.byMm
    case 'too-big':
      return why.volumeL - why.mostL
    case 'too-heavy':
      return why.massKg - why.mostKg
    default:
      return 0
  }
}
