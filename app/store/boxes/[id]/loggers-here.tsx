import Link from 'next/link'
import { addDays } from '../../../../lib/base/calendar.ts'
import type { BoxShown } from '../../../../lib/services/show-box.ts'
import { instantOf } from '../../../../lib/wording/chart-clock.ts'
import { dayWords } from '../../../../lib/wording/day.ts'
import { LoggerChart } from '../../../_charts/logger-chart.tsx'
import { orElsewhere } from '../../../_server/services.ts'
import { viewAddress, viewOf } from '../../loggers/view-of.ts'

interface Props {
  readonly shown: BoxShown
  readonly zone: string
}

/** The readings of the logger that stands in it, or stood in it last, and links to those before. */
export async function LoggersHere({ shown, zone }: Props) {
  const { loggers, line } = shown
  const newest = loggers.toSorted((a, b) => ((a.from ?? '') < (b.from ?? '') ? 1 : -1))
  const here = newest[0]
  if (here === undefined) return null
  const { needs, outlook } = line
  const asked = {
    loggerId: here.logger.id,
    channel: null,
    zone,
    ground: {
      band: needs,
      limitRhPercent: outlook?.limitRhPercent ?? (needs === null || needs.max >= 100 ? null : needs.max),
      floorRhPercent: here.logger.given.floor_rh_percent ?? null,
    },
  }
  const found = await orElsewhere(viewOf({ ...asked, span: spanOf(here, zone) }))
  const { serial } = here.logger.given
  return (
    <section className="section" aria-labelledby="readings">
      <h2 id="readings">{`What logger ${serial} read here`}</h2>
      {found === null || found.view.stretches.fromMs.length === 0 ? (
        <p>Nothing it read here has been brought in yet.</p>
      ) : (
        <LoggerChart
          name={`logger ${serial} in box ${line.box.given.box}`}
          first={found.view}
          whole={{ fromMs: found.view.fromMs, toMs: found.view.toMs }}
          ground={asked.ground}
          address={viewAddress(asked)}
        />
      )}
      <ul className="plain-list">
        {newest.map(({ logger, from, to }) => (
          <li key={`${logger.id} ${from}`}>
            <Link className="tall" href={`/store/loggers/${logger.id}`}>
              {`Logger ${logger.given.serial}`}
            </Link>
            {`${from === null ? '' : `, here from ${dayWords(from)}`}${to === null ? ', still here' : `, to ${dayWords(to)}`}`}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** The time it stood in this box, on the clock of the store; what it read elsewhere is no reading of the box. */
function spanOf({ from, to }: Pick<BoxShown['loggers'][number], 'from' | 'to'>, zone: string) {
  const startOf = (day: string) => {
    const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
    return instantOf({ year, month, day: date, hour: 0, minute: 0 }, zone)
  }
  const span = {
    ...(from === null ? {} : { fromMs: startOf(from) }),
    ...(to === null ? {} : { toMs: startOf(addDays(to, 1)) }),
  }
  return span
}
