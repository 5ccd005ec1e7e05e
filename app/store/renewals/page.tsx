import type { Metadata } from 'next'
import Link from 'next/link'
import { countWords } from '../../../lib/wording/list.ts'
import { yearWords } from '../../../lib/wording/renewal-weeks.ts'
import { saidOfUntold } from '../../../lib/wording/renewals.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { PrintButton } from '../../_papers/print-button.tsx'
import { personHere } from '../../_server/person.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { AskForm } from '../_forms/ask-form.tsx'
import { Ask } from '../_forms/ask.tsx'
import { Cautions } from '../_forms/cautions.tsx'
import { keepSetting } from './keep-setting.ts'
import { CannotTell, NotInTimeList } from './late.tsx'
import { settingQuestions } from './setting-questions.ts'
import { Week } from './week.tsx'
import { Year } from './year.tsx'

export const metadata: Metadata = { title: 'Gel to renew' }

/** Two months: as far as the dates of one reading carry. */
const weeksOpen = 8

export default async function RenewalsPage() {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Gel to renew</h1>
        <NoProject shows="A year of renewals stands here, week by week, levelled to the hours, the oven and the gel." />
      </>
    )
  }
  const services = await servicesHere()
  const person = await personHere()
  const shown = await orElsewhere(services.listRenewals(chosen.id))
  const { version } = await orElsewhere(services.showStoreSetting(chosen.id))
  const { plan, boxes, untold, setting } = shown
  const busy = plan.weeks.filter(({ renewals }) => renewals.length > 0)
  return (
    <>
      <header className="head">
        <h1>Gel to renew</h1>
        <p className="lead">{yearWords(plan.weeks)}</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
        {busy.length > 0 && (
          <p className="row no-print">
            <a className="button first" href="/store/renewals/calendar" download>
              Take the calendar along (.ics)
            </a>
            <PrintButton says="Print the list" />
          </p>
        )}
      </header>
      {untold.length > 0 && (
        <ul className="measure">
          {untold.map((one) => (
            <li key={one}>{saidOfUntold(one)}</li>
          ))}
        </ul>
      )}
      {person === null ? (
        <p className="no-print">
          <Link href="/person?back=/store/renewals">Say who you are</Link> to write down hours, oven and gel.
        </p>
      ) : (
        <Ask says="Hours, oven and gel of this store">
          <AskForm
            id="setting"
            action={keepSetting}
            questions={settingQuestions(setting)}
            hidden={{ project: chosen.id, version: version === null ? '' : String(version) }}
            submit="Keep these"
          />
        </Ask>
      )}
      <NotInTimeList plan={plan} boxes={boxes} />
      {busy.length > 0 && <Year weeks={plan.weeks} />}
      {busy.length > 0 && (
        <>
          <Cautions knowledge={services.knowledge} task="renew-gel" />
          <Cautions knowledge={services.knowledge} task="dry-gel-in-oven" />
        </>
      )}
      {busy.slice(0, weeksOpen).map((week) => (
        <Week key={week.on} week={week} boxes={boxes} />
      ))}
      {busy.length > weeksOpen && (
        <details className="section">
          <summary>{`${countWords(busy.length - weeksOpen, 'week')} further ahead; they move with what is read and done until then`}</summary>
          {busy.slice(weeksOpen).map((week) => (
            <Week key={week.on} week={week} boxes={boxes} />
          ))}
        </details>
      )}
      {busy.length === 0 && (
        <p className="measure">
          Gel falls due where a box says how much it holds, since when, and what its finds bear.{' '}
          <Link href="/store">The boxes</Link>
        </p>
      )}
      <CannotTell cannotTell={shown.cannotTell} />
    </>
  )
}
