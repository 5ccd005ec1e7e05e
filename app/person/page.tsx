import type { Metadata } from 'next'
import { choosePerson } from '../_frame/actions.ts'
import { asked, type SearchParams } from '../_server/asked.ts'
import { personHere, roles } from '../_server/person.ts'
import { capital } from '../../lib/wording/capital.ts'
import { whoWords } from '../../lib/wording/marks.ts'

export const metadata: Metadata = { title: 'Who are you?' }

export default async function PersonPage({ searchParams }: { readonly searchParams: SearchParams }) {
  const person = await personHere()
  const words = await asked(searchParams)
  return (
    <>
      <header className="head">
        <h1>Who are you?</h1>
        <p className="lead">
          Every record carries who wrote it and from which device. There are no accounts yet, so it stands as
          unverified wherever it is shown.
        </p>
      </header>
      <form action={choosePerson} className="stack">
        <input type="hidden" name="back" value={words['back'] ?? '/'} />
        <div className="field">
          <label htmlFor="name">Your name</label>
          <input
            id="name"
            name="name"
            required
            maxLength={80}
            autoComplete="name"
            defaultValue={person?.name}
          />
        </div>
        <fieldset className="choices">
          <legend>Your work here</legend>
          {roles.map((role) => (
            <label key={role} className="tall">
              <input
                type="radio"
                name="role"
                value={role}
                required
                defaultChecked={role === (person?.role ?? 'assistant')}
              />
              {capital(whoWords[role])}
            </label>
          ))}
        </fieldset>
        <div>
          <button className="button first">That is me</button>
        </div>
      </form>
      {person !== null && (
        <p className="soft small">
          {'This device: '}
          <code>{person.device}</code>
        </p>
      )}
    </>
  )
}
