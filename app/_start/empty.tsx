import Link from 'next/link'
import type { Project } from '../../lib/services/kept.ts'
import { LoadDemo } from './load-demo.tsx'

/** The first morning: what this is, and three ways to begin. */
export function Empty({ known, project }: { readonly known: boolean; readonly project?: Project }) {
  return (
    <>
      <header className="head">
        <h1>From a bag of records to a plan</h1>
        <p className="lead">
          Say what each find is and what you see on it. You are told how to keep it, how soon to act, how to
          pack it, what to ask for and whom to call; every line with its reason and its source.
        </p>
        {project !== undefined && (
          <p className="soft">{`The project “${project.name}” holds no finds yet.`}</p>
        )}
      </header>
      <section className="section" aria-labelledby="begin">
        <h2 id="begin">Begin</h2>
        <ul className="plain-list stack">
          <li>
            <Link className="button first" href="/intake">
              Type or paste a bag
            </Link>
          </li>
          <li>
            <Link className="button" href="/import">
              Import a spreadsheet
            </Link>
            <span className="soft"> CSV, XLSX or JSON; you see what would happen before it does.</span>
          </li>
          <li>
            <LoadDemo known={known} />
          </li>
        </ul>
      </section>
    </>
  )
}
