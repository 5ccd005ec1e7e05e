import type { Metadata } from 'next'
import Link from 'next/link'
import { capital } from '../../../../lib/wording/capital.ts'
import { dayWords } from '../../../../lib/wording/day.ts'
import { countWords } from '../../../../lib/wording/list.ts'
import { wrongWords } from '../../../../lib/wording/store-wrong.ts'
import { Invented } from '../../../_marks/invented.tsx'
import { PrintButton } from '../../../_papers/print-button.tsx'
import { personHere } from '../../../_server/person.ts'
import { orElsewhere, servicesHere } from '../../../_server/services.ts'
import { StopsToday } from '../../../_start/stops-today.tsx'
import { Stop } from '../../../_statement/stop.tsx'
import { roundEveryDays } from '../../round-every.ts'
import { wrongOf } from '../../wrong-of.ts'
import { Asks } from './asks.tsx'
import { Contents } from './contents.tsx'
import { Diary } from './diary.tsx'
import { distributionHere } from './distribution-here.ts'
import { Excursions } from './excursions.tsx'
import { Gel } from './gel.tsx'
import { Forecast, Humidity } from './humidity.tsx'
import { LoggersHere } from './loggers-here.tsx'
import style from '../../store.module.css'

interface Props {
  readonly params: Promise<{ readonly id: string }>
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const services = await servicesHere()
  const shown = await services.showBox({ boxId: (await params).id })
  return { title: shown.ok ? `Box ${shown.value.line.box.given.box}` : 'Box' }
}

export default async function BoxPage({ params }: Props) {
  const services = await servicesHere()
  const { id } = await params
  const shown = await orElsewhere(services.showBox({ boxId: id }))
  const { project, today, line, room } = shown
  const { box, kind, tub } = line
  const person = await personHere()
  const { knowledge } = services
  const stopped = shown.finds.filter(({ line: find }) => find.stops.length > 0)
  const wrong = wrongOf(line, { today, roundEveryDays: roundEveryDays(knowledge) }).filter(
    ({ code }) => code !== 'stop',
  )
  const serials = (await orElsewhere(services.listLoggers(project.id))).map((logger) => logger.given.serial)
  const { setting } = await orElsewhere(services.showStoreSetting(project.id))
  const zone = setting.timeZone ?? 'UTC'
  const is = [
    kind === 'tub' ? 'tub' : kind,
    box.given.model ?? '',
    box.given.volume_l === undefined ? '' : `${box.given.volume_l} L`,
    room.name,
    box.given.shelf === undefined ? '' : `shelf ${box.given.shelf}`,
  ]
  return (
    <>
      <StopsToday stops={stopped} total={stopped.length} invented={project.invented} />
      {line.stops.map((caution) => (
        <Stop key={caution.rule} caution={caution} knowledge={knowledge} />
      ))}
      <header className="head">
        <h1>{`Box ${box.given.box}`}</h1>
        <p className="soft">
          {is.filter((text) => text !== '').join(', ')} {project.invented && <Invented />}
        </p>
      </header>
      {wrong.length > 0 && (
        <ul className={style.wrongHere} aria-label="What is wrong">
          {wrong.map((one, at) => (
            <li key={one.code}>
              {at === 0 ? <strong>{`${capital(wrongWords(one))}.`}</strong> : `${capital(wrongWords(one))}.`}
            </li>
          ))}
        </ul>
      )}
      {tub !== null && (
        <p>
          {tub.filledOn === null
            ? 'Nobody has written since when it is full of water.'
            : `In water since ${dayWords(tub.filledOn)}: ${countWords(tub.daysHeld ?? 0, 'day')} of ${tub.daysAllowed} at most.`}{' '}
          {tub.waterDueOn !== null && `Water to be changed by ${dayWords(tub.waterDueOn)}.`}
        </p>
      )}
      {box.given.seal_note !== undefined && <p>{`On its seal: ${box.given.seal_note}`}</p>}
      <div className="row no-print">
        <a className="button first" href="#asks">
          Write down what you did
        </a>
        <PrintButton says="Print this page" />
        <Link className="button" href={`/sheets/box-labels?box=${encodeURIComponent(box.given.box)}`}>
          Box label
        </Link>
        <Link className="button" href={`/sheets/bag?box=${encodeURIComponent(box.given.box)}`}>
          Bag sheet of its finds
        </Link>
      </div>
      {tub === null && <Humidity shown={shown} distribution={await distributionHere(shown)} />}
      <Forecast shown={shown} />
      <Gel shown={shown} />
      <Asks shown={shown} knowledge={knowledge} serials={serials} known={person !== null} />
      <LoggersHere shown={shown} zone={zone} />
      <Excursions
        excursions={shown.excursions}
        belowRangeHours={shown.belowRangeHours}
        zone={zone}
        knowledge={knowledge}
        read={shown.sightings.some(({ kind }) => kind === 'logger' || kind === 'below-range')}
      />
      <Contents shown={shown} />
      <Diary shown={shown} />
    </>
  )
}
