import type { Metadata } from 'next'
import Link from 'next/link'
import { dayWords } from '../../../lib/wording/day.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { PrintButton } from '../../_papers/print-button.tsx'
import { asked, type SearchParams } from '../../_server/asked.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { BoxByBox } from './box-by-box.tsx'
import { Drier } from './drier.tsx'
import { Events } from './events.tsx'
import { GelUsed } from './gel-used.tsx'
import { InShort } from './in-short.tsx'
import { AtRisk } from './at-risk.tsx'
import { Movements } from './movements.tsx'
import { States } from './states.tsx'
import { Years } from './years.tsx'
import style from './report.module.css'

export const metadata: Metadata = { title: 'The year in the store' }

/** The year asked for; this one where none is, or where none can be. */
function yearOf(
  words: string | undefined,
  thisYear: number,
): { readonly year: number; readonly wrong: boolean } {
  if (words === undefined) return { year: thisYear, wrong: false }
  const year = /^\d{4}$/.test(words) ? Number(words) : Number.NaN
  return year >= 1900 && year <= thisYear ? { year, wrong: false } : { year: thisYear, wrong: true }
}

export default async function ReportPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>The year in the store</h1>
        <NoProject shows="How boxes stood, what gel was used, what was done in time and which finds were at risk stands here for each year." />
      </>
    )
  }
  const services = await servicesHere()
  const words = (await asked(searchParams))['year']
  const { year, wrong } = yearOf(words, Number(services.today().slice(0, 4)))
  const told = await orElsewhere(services.reportYear({ projectId: chosen.id, year }))
  const { report, running, today, lines } = told
  return (
    <div className={style.report}>
      <header className="head">
        <h1>{`The store in ${year}`}</h1>
        <p className="lead">
          {running
            ? `The year is running still: told up to ${dayWords(today)}.`
            : `1 January to ${dayWords(report.to)}.`}
        </p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
          {!running && ` As known on ${dayWords(today)}.`}
        </p>
      </header>
      {wrong && <p className="wrong">{`Nothing is kept of a year “${words}”. This is ${year}.`}</p>}
      <Years years={told.years} year={year} />
      {lines.length === 0 ? (
        <p className="measure">
          No box is listed yet. <Link href="/import">Import a table of boxes</Link>, or{' '}
          <Link href="/store/boxes/new">write down the first one</Link>.
        </p>
      ) : (
        <>
          <div className="row no-print">
            <PrintButton says="Print" />
            <a className="button" href={`/store/report/file?year=${year}&format=csv&table=boxes`} download>
              Boxes as CSV
            </a>
            <a className="button" href={`/store/report/file?year=${year}&format=json`} download>
              All as JSON
            </a>
          </div>
          <InShort told={told} />
          <States told={told} />
          <GelUsed told={told} />
          <AtRisk told={told} />
          <Events told={told} />
          <Movements told={told} />
          <Drier told={told} />
          <BoxByBox told={told} />
        </>
      )}
    </div>
  )
}
