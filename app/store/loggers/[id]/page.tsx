import type { Metadata } from 'next'
import Link from 'next/link'
import { notFound } from 'next/navigation'
import type { ChannelShown, LoggerShown } from '../../../../lib/services/show-logger.ts'
import { correctionThrough } from '../../../../lib/climate/fixed-points-correction.ts'
import { dayWords } from '../../../../lib/wording/day.ts'
import { correctionWords } from '../../../../lib/wording/humidity-salts.ts'
import { LoggerChart } from '../../../_charts/logger-chart.tsx'
import { Invented } from '../../../_marks/invented.tsx'
import { asked, type SearchParams } from '../../../_server/asked.ts'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'
import { Ask } from '../../_forms/ask.tsx'
import { AskForm } from '../../_forms/ask-form.tsx'
import { Cautions } from '../../_forms/cautions.tsx'
import { Excursions } from '../../boxes/[id]/excursions.tsx'
import { mendLogger } from '../act.ts'
import { keepSalts } from '../keep-salts.ts'
import { loggerQuestions } from '../logger-questions.ts'
import { saltQuestions } from '../salt-questions.ts'
import { viewAddress, viewOf } from '../view-of.ts'
import { Files, Stood } from './stood.tsx'
import { Told } from './told.tsx'

interface Props {
  readonly params: Promise<{ readonly id: string }>
  readonly searchParams: SearchParams
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const services = await servicesHere()
  const { id } = await params
  const shown = await services.showLogger({ loggerId: id })
  return { title: shown.ok ? `Logger ${shown.value.logger.given.serial}` : 'Logger' }
}

export default async function LoggerPage({ params, searchParams }: Props) {
  const services = await servicesHere()
  const shown = await orElsewhere(services.showLogger({ loggerId: (await params).id }))
  const wanted = (await asked(searchParams))['channel']
  const { project, logger, channels, files, excursions, today } = shown
  const channel = wanted === undefined ? channels[0] : channels.find((one) => one.channel === wanted)
  if (wanted !== undefined && channel === undefined) notFound()
  const { setting } = await orElsewhere(services.showStoreSetting(project.id))
  const zone = setting.timeZone ?? 'UTC'
  const { serial, model, calibration_due } = logger.given
  const overdue = calibration_due !== undefined && calibration_due < today
  const corrected = correctionThrough(logger.given.salts ?? [])
  const hidden = { id: logger.id, project: project.id, version: String(logger.version), serial }
  return (
    <>
      <header className="head">
        <h1>{`Logger ${serial}`}</h1>
        <p className="soft">
          {model} {project.invented && <Invented />}
        </p>
        {corrected.ok && <p>{`Its readings are corrected. ${correctionWords(corrected.value)}`}</p>}
        {overdue && (
          <p>
            <strong>{`It was due to be calibrated on ${dayWords(calibration_due)}: read what follows with care.`}</strong>
          </p>
        )}
      </header>
      {channel === undefined ? (
        <p>
          None of its readings have been brought in yet.{' '}
          <Link href="/store/loggers/import">Bring in logger files</Link>
        </p>
      ) : (
        <Readings shown={shown} channel={channel} zone={zone} />
      )}
      <Excursions
        excursions={excursions}
        belowRangeHours={0}
        zone={zone}
        knowledge={services.knowledge}
        read={channels.length > 0 && logger.given.stood.some(({ box }) => box !== undefined)}
      />
      <Stood logger={logger} />
      <Files files={files} loggerId={logger.id} zone={zone} />
      <section className="section no-print" aria-labelledby="mend">
        <h2 id="mend">The register</h2>
        <Ask says="Mend what is written about this logger">
          <AskForm
            id="logger"
            action={mendLogger}
            questions={loggerQuestions(logger.given).filter(({ name }) => name !== 'serial')}
            hidden={hidden}
            submit="Keep"
          />
        </Ask>
        <Ask says="I held it over salts">
          <AskForm
            id="salts"
            action={keepSalts}
            questions={saltQuestions(today)}
            hidden={hidden}
            submit="Correct it by these"
          />
          <Cautions knowledge={services.knowledge} task="calibrate-with-salts" />
        </Ask>
      </section>
    </>
  )
}

interface ReadingsProps {
  readonly shown: LoggerShown
  readonly channel: ChannelShown
  readonly zone: string
}

async function Readings({ shown: { logger, channels }, channel, zone }: ReadingsProps) {
  const { statistics, floor } = channel.told
  const limitRhPercent = statistics.humidity?.above?.limitRhPercent ?? null
  const lower = statistics.humidity?.below?.limitRhPercent ?? 0
  const view = {
    loggerId: logger.id,
    channel: channel.channel,
    zone,
    ground: {
      band: limitRhPercent === null && lower === 0 ? null : { min: lower, max: limitRhPercent ?? 100 },
      limitRhPercent,
      floorRhPercent: floor?.atRhPercent ?? logger.given.floor_rh_percent ?? null,
    },
  }
  const found = await orElsewhere(viewOf({ ...view, span: {} }))
  return (
    <section className="section" aria-labelledby="readings">
      <h2 id="readings">What it read</h2>
      {channels.length > 1 && (
        <nav aria-label="Sensors">
          <ul className="plain-list row">
            {channels.map((one) => (
              <li key={one.channel}>
                <Link
                  className="button"
                  href={`/store/loggers/${logger.id}?channel=${encodeURIComponent(one.channel)}`}
                  aria-current={one.channel === channel.channel ? 'page' : undefined}
                >
                  {one.channel === '' ? 'without a name' : one.channel}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
      )}
      <Told told={channel.told} zone={zone} />
      {found !== null && (
        <LoggerChart
          key={channel.channel}
          name={`logger ${logger.given.serial}${channel.channel === '' ? '' : `, ${channel.channel}`}`}
          first={found.view}
          whole={found.whole}
          ground={view.ground}
          address={viewAddress(view)}
        />
      )}
    </section>
  )
}
