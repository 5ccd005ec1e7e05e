import type { Metadata } from 'next'
import { urgencies, urgencyWords } from '../../lib/wording/marks.ts'
import { countWords } from '../../lib/wording/list.ts'
import { FindList } from '../_finds/find-list.tsx'
import { NoProject } from '../_finds/no-project.tsx'
import { PageTurner } from '../_finds/page-turner.tsx'
import { Invented } from '../_marks/invented.tsx'
import { asked, type SearchParams } from '../_server/asked.ts'
import { projectsHere } from '../_server/project.ts'
import { orElsewhere, servicesHere } from '../_server/services.ts'

export const metadata: Metadata = { title: 'Finds' }

export default async function Finds({ searchParams }: { readonly searchParams: SearchParams }) {
  const { chosen } = await projectsHere()
  if (chosen === null) {
    return (
      <>
        <h1>Finds</h1>
        <NoProject shows="Every find of a project stands here with its plan." />
      </>
    )
  }
  const words = await asked(searchParams)
  const urgency = urgencies.find((one) => one === words['urgency'])
  const services = await servicesHere()
  const page = await orElsewhere(
    services.listFinds({
      projectId: chosen.id,
      order: words['order'] === 'number' ? 'number' : 'urgency',
      ...(urgency === undefined ? {} : { urgency: [urgency] }),
      ...(words['q'] === undefined ? {} : { search: words['q'] }),
      ...(words['band'] === undefined ? {} : { band: words['band'] }),
      ...(words['stops'] === undefined ? {} : { stopsOnly: true }),
      after: words['after'] ?? null,
    }),
  )
  return (
    <>
      <header className="head">
        <h1>Finds</h1>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      <form className="row" role="search">
        {words['band'] !== undefined && <input type="hidden" name="band" value={words['band']} />}
        <div className="field">
          <label htmlFor="q">Number, object, context, box, material</label>
          <input id="q" name="q" type="search" defaultValue={words['q']} />
        </div>
        <div className="field">
          <label htmlFor="urgency">How soon</label>
          <select id="urgency" name="urgency" defaultValue={urgency ?? ''}>
            <option value="">any</option>
            {urgencies.map((one) => (
              <option key={one} value={one}>
                {urgencyWords[one].label}
              </option>
            ))}
          </select>
        </div>
        <div className="field">
          <label htmlFor="order">Order</label>
          <select id="order" name="order" defaultValue={words['order'] ?? 'urgency'}>
            <option value="urgency">most pressing first</option>
            <option value="number">by number</option>
          </select>
        </div>
        <button className="button first">Search</button>
      </form>
      <p role="status">
        {page.total === 0
          ? 'No find matches. Take a word out, or choose any urgency.'
          : countWords(page.total, 'find')}
      </p>
      <FindList finds={page.finds} invented={chosen.invented} tells="step" />
      <PageTurner path="/finds" asked={words} next={page.next} />
      <p className="no-print">
        All records of the project as a file:{' '}
        {['csv', 'xlsx', 'json'].map((format) => (
          <a
            key={format}
            className="tall"
            href={`/export?format=${format}`}
            download
            style={{ paddingInlineEnd: '1rem' }}
          >
            {format.toUpperCase()}
          </a>
        ))}
      </p>
    </>
  )
}
