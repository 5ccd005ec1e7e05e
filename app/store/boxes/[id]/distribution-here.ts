import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { spreadWords } from '../../../../lib/wording/box-outlook.ts'
import type { Distribution } from '../../../_ruler/distribution.tsx'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'

/** How the readings of the logger that stands or stood last in the box spread over the humidities; null: there are none. */
export async function distributionHere({ loggers }: Pick<BoxShown, 'loggers'>): Promise<Distribution | null> {
  const here = loggers.toSorted((a, b) => ((a.from ?? '') < (b.from ?? '') ? 1 : -1))[0]
  if (here === undefined) return null
  const services = await servicesHere()
  const { from, to, logger } = here
  const days = { ...(from === null ? {} : { from }), ...(to === null ? {} : { to }) }
  const { shares, hours } = await orElsewhere(services.logSpread({ loggerId: logger.id, ...days }))
  if (shares.length === 0) return null
  return { name: `Logger ${logger.given.serial}`, words: spreadWords(shares, hours), shares }
}
