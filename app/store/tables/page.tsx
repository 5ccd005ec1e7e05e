import type { Metadata } from 'next'
import Link from 'next/link'
import { storeTables } from '../../../lib/record/store-tables.ts'
import { storeTableWords } from '../../../lib/wording/store-tables.ts'
import { Invented } from '../../_marks/invented.tsx'
import { personHere } from '../../_server/person.ts'
import { projectsHere } from '../../_server/project.ts'
import { TableForm } from './table-form.tsx'

export const metadata: Metadata = { title: 'Tables of the store' }

export default async function TablesPage() {
  const { chosen } = await projectsHere()
  const person = await personHere()
  return (
    <>
      <header className="head">
        <h1>Tables of the store</h1>
        <p className="lead">Rooms, boxes, rounds, loggers and the diary come in and leave as plain tables.</p>
        {chosen !== null && (
          <p className="soft">
            {chosen.name} {chosen.invented && <Invented />}
          </p>
        )}
      </header>
      <section className="section" aria-labelledby="in">
        <h2 id="in">Bring one in</h2>
        {person === null ? (
          <p>
            <Link href="/person?back=/store/tables">Say who you are</Link> first: every change carries who
            made it.
          </p>
        ) : (
          <TableForm named={chosen !== null} />
        )}
        <p className="measure small soft">
          Boxes and rooms that are known by name are changed in the columns the table has; none is taken away.
          The same rounds again add nothing.
        </p>
      </section>
      {chosen !== null && (
        <section className="section" aria-labelledby="out">
          <h2 id="out">Take them along</h2>
          <ul className="stack">
            {storeTables.map((table) => (
              <li key={table}>
                <a className="tall" href={`/store/tables/file?table=${table}&format=csv`} download>
                  {`${storeTableWords[table].name} as CSV`}
                </a>
                {`: ${storeTableWords[table].holds}`}
              </li>
            ))}
          </ul>
          <div className="row">
            <a className="button" href="/store/tables/file?format=xlsx" download>
              All as one workbook (XLSX)
            </a>
            <a className="button" href="/store/tables/file?format=json" download>
              All as JSON
            </a>
          </div>
        </section>
      )}
    </>
  )
}
