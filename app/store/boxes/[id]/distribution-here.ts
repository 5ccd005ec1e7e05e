import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { spreadWords } from '../../../../lib/wording/box-outlook.ts'
import { seenWords } from '../../../../lib/wording/store-wrong.ts'
import type { Distribution } from '../../../_ruler/distribution.tsx'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'

/** How the readings of the logger that stands or stood last in the box spread over the humidities; else the last look into it. */
export async function distributionHere({
  loggers,
  line,
}: Pick<BoxShown, 'loggers' | 'line'>): Promise<Distribution | null> {
  const here = loggers.toSorted((a, b) => ((a.from ?? '') < (b.from ?? '') ? 1 : -1))[0]
  if (here === undefined) return lastSeen(line)
  const services = await servicesHere()
  const { from, to, logger } = here
  const days = { ...(from === null ? {} : { from }), ...(to === null ? {} : { to }) }
  const { shares, hours } = await orElsewhere(services.logSpread({ loggerId: logger.id, ...days }))
  if (shares.length === 0) return lastSeen(line)
  return { name: `Logger ${logger.given.serial}`, words: spreadWords(shares, hours), shares }
}

/** A strip lies anywhere in its interval, each place as likely as another. */
function lastSeen({ newest }: BoxShown['line']): Distribution | null {
  if (newest === null) return null
  const [low, high] = [
    Math.floor(newest.lowRhPercent),
    Math.max(Math.ceil(newest.highRhPercent), Math.floor(newest.lowRhPercent) + 1),
  ]
  const shares = Array.from({ length: 101 }, (_, at) => (at >= low && at < high ? 1 / (high - low) : 0))
  return { name: 'Last seen', words: seenWords(newest), shares }
}
