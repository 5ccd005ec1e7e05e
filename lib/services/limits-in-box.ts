import type { BoxGiven } from '../record/places.ts'
import { limitOf } from './box-needs.ts'
import type { Reads } from './ports.ts'
import type { Standing } from './standing.ts'
import type { FindStay } from './stays.ts'

export interface LimitsInBox {
  readonly maxRhPercent: number | null
  readonly minRhPercent: number | null
  /** Every find that lay in it at any time, as planned today. */
  readonly finds: ReadonlyMap<string, Standing>
  readonly stays: readonly FindStay[]
}

const atOnce = 1000

async function standingsOf(
  reads: Reads,
  projectId: string,
  ids: readonly string[],
): Promise<readonly Standing[]> {
  const all: Standing[] = []
  for (let at = 0; at < ids.length; at += atOnce) {
    const findIds = ids.slice(at, at + atOnce)
    all.push(...(await reads.standings.list({ projectId, order: 'number', findIds, limit: atOnce })))
  }
  return all
}

/** The highest and lowest humidity [%] that the finds of a box bear, of whatever time they lay in it. */
export async function limitsInBox(reads: Reads, projectId: string, box: string): Promise<LimitsInBox> {
  const stays = await reads.stays.inBoxes(projectId, [box])
  const standings = await standingsOf(reads, projectId, [...new Set(stays.map(({ findId }) => findId))])
  const listed = (await reads.boxes.ofProject(projectId)).find(({ given }) => given.box === box)?.given
  const given: BoxGiven = listed ?? { box }
  const lows = standings.flatMap(({ line }) =>
    line.keep !== 'wet' && line.rhPercent !== null && line.rhPercent.min > 0 ? [line.rhPercent.min] : [],
  )
  return {
    maxRhPercent: limitOf(given, standings),
    minRhPercent: lows.length === 0 ? null : Math.max(...lows),
    finds: new Map(standings.map((one) => [one.findId, one])),
    stays,
  }
}
