import { percentAtMostWords, percentWords, type ToldRow } from './humidity-parts.ts'

/** A published humidity for iron, held against the air at a surface. */
export interface IronCeiling {
  readonly figure: string
  readonly ceilingPercent: number
  readonly surfacePercent: number
  /** Highest humidity of the room at which the air at the surface stays below the ceiling. */
  readonly roomAtMostPercent: number
}

export const overCeiling = ({ ceilingPercent, surfacePercent }: IronCeiling): boolean =>
  surfacePercent > ceilingPercent

/** Of all published humidities together. */
export function ironHeadline(ceilings: readonly IronCeiling[]): string {
  const over = ceilings.filter(overCeiling).length
  const surface = percentWords(ceilings[0]?.surfacePercent ?? 0)
  if (over === 0) return `Iron that may hold chloride: ${surface} at its surface is under every one of these.`
  return over === ceilings.length
    ? `Iron that may hold chloride: ${surface} at its surface is over every one of these.`
    : `Iron that may hold chloride: ${surface} at its surface is over ${over} of these ${ceilings.length}.`
}

export function ironHereWords(ceiling: IronCeiling): string {
  const apart = Math.abs(ceiling.surfacePercent - ceiling.ceilingPercent)
  const points = `${apart.toLocaleString('en-GB', { maximumFractionDigits: apart < 10 ? 1 : 0 })} points`
  return overCeiling(ceiling) ? `over, by ${points}` : `under, by ${points}`
}

export const ironRoomWords = ({ roomAtMostPercent }: IronCeiling): string =>
  roomAtMostPercent > 100 ? 'any' : `up to ${percentAtMostWords(roomAtMostPercent)}`

/** The same for a table: `printed` is the published humidity, `says` what it is. */
export function ironRows(
  ceilings: readonly IronCeiling[],
  told: (figure: string) => { readonly printed: string; readonly says: string },
): readonly ToldRow[] {
  return ceilings.map((ceiling) => {
    const { printed, says } = told(ceiling.figure)
    return {
      name: `Iron: ${printed}, ${says.charAt(0).toLowerCase()}${says.slice(1)}`,
      text: `${ironHereWords(ceiling)}; the room may be ${ironRoomWords(ceiling)}`,
    }
  })
}
