'use client'

import { useActionState } from 'react'
import { keepSiteContacts, type ContactLine } from './keep-site-contacts.ts'
import style from './contacts.module.css'

interface Props {
  readonly siteId: string
  readonly lines: readonly ContactLine[]
}

export function ContactsForm({ siteId, lines }: Props) {
  const [said, action, busy] = useActionState(keepSiteContacts, null)
  return (
    <form action={action} className="stack">
      <input type="hidden" name="site" value={siteId} />
      {lines.map(({ kind, label, means, name, reach, version }) => (
        <fieldset key={kind} className={style.line}>
          <legend>{label}</legend>
          {means !== '' && <p className="small soft">{means}</p>}
          <input type="hidden" name={`${kind}.version`} value={version ?? ''} />
          <input type="hidden" name={`${kind}.before`} value={`${name}\n${reach}`} />
          <div className="row">
            <div className="field">
              <label htmlFor={`${siteId}-${kind}-name`}>Name</label>
              <input
                id={`${siteId}-${kind}-name`}
                name={`${kind}.name`}
                defaultValue={name}
                maxLength={120}
              />
            </div>
            <div className="field">
              <label htmlFor={`${siteId}-${kind}-reach`}>How to reach them</label>
              <input
                id={`${siteId}-${kind}-reach`}
                name={`${kind}.reach`}
                defaultValue={reach}
                maxLength={200}
              />
            </div>
          </div>
        </fieldset>
      ))}
      <div className="row">
        <button className="button first" disabled={busy}>
          {busy ? 'Keeping …' : 'Keep these'}
        </button>
        <p role="status" className={said?.ok === false ? 'wrong' : undefined}>
          {said?.says}
        </p>
      </div>
    </form>
  )
}
