import type { Metadata } from 'next'
import Link from 'next/link'
import type { LoggerLine } from '../../../lib/services/show-store.ts'
import { dayWords } from '../../../lib/wording/day.ts'
import { instantDayWords } from '../../../lib/wording/chart-time.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { floorWords } from '../../../lib/wording/store-log.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Scroll } from '../../_frame/scroll.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Ask } from '../_forms/ask.tsx'
import { AskForm } from '../_forms/ask-form.tsx'
import { Cautions } from '../_forms/cautions.tsx'
import { keepNewLogger } from './act.ts'
import { loggerQuestions } from './logger-questions.ts'
import style from './loggers.module.css'

export const metadata: Metadata = { title: 'Loggers' }

export default async function LoggersPage() {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Loggers</h1>
        <NoProject shows="The register of loggers stands here: what each can read, when it is due to be calibrated, where it stood." />
      </>
    )
  }
  const services = await servicesHere()
  const { loggers, setting } = await orElsewhere(services.showStore(chosen.id))
  const zone = setting.timeZone ?? 'UTC'
  const overdue = loggers.filter(({ calibrationOverdue }) => calibrationOverdue).length
  return (
    <>
      <header className="head">
        <h1>Loggers</h1>
        <p className="lead">
          {loggers.length === 0
            ? 'No logger is in the register yet.'
            : `${countWords(loggers.length, 'logger')}${overdue === 0 ? '' : `, ${overdue} past calibration`}.`}
        </p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      <p>
        <Link className="button first" href="/store/loggers/import">
          Bring in logger files
        </Link>
      </p>
      {loggers.length > 0 && <Register loggers={loggers} zone={zone} />}
      <section className="section" aria-labelledby="more">
        <h2 id="more">What did you do?</h2>
        <Ask says="I have a new logger">
          <AskForm
            id="logger"
            action={keepNewLogger}
            questions={loggerQuestions({})}
            hidden={{ project: chosen.id }}
            submit="Enter it"
          />
          <Cautions knowledge={services.knowledge} task="calibrate-with-salts" />
        </Ask>
      </section>
    </>
  )
}

function Register({ loggers, zone }: { readonly loggers: readonly LoggerLine[]; readonly zone: string }) {
  return (
    <Scroll name="Register of loggers">
      <table className={`broad ${style.register}`}>
        <thead>
          <tr>
            <th scope="col">Logger</th>
            <th scope="col">Stands</th>
            <th scope="col">Reads down to</th>
            <th scope="col">Calibration due</th>
            <th scope="col">Last reading</th>
          </tr>
        </thead>
        <tbody>
          {loggers.map(({ logger, box, room, calibrationOverdue, lastReadingMs, readings }) => (
            <tr key={logger.id}>
              <th scope="row">
                <Link className="tall" href={`/store/loggers/${logger.id}`}>
                  {logger.given.serial}
                </Link>{' '}
                <span className="soft">{logger.given.model}</span>
              </th>
              <td>
                {box === null ? (room === null ? 'nowhere that is written' : `room ${room}`) : `box ${box}`}
              </td>
              <td>{floorWords(logger.given.floor_rh_percent)}</td>
              <td>
                {logger.given.calibration_due === undefined
                  ? 'not written down'
                  : dayWords(logger.given.calibration_due)}
                {calibrationOverdue && <strong>, past</strong>}
              </td>
              <td>
                {lastReadingMs === null
                  ? 'none yet'
                  : `${instantDayWords(lastReadingMs, zone)}, of ${countWords(readings, 'reading')}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  )
}
