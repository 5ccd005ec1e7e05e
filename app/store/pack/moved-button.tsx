'use client'

import { useActionState } from 'react'
import { sayMoved } from './moved.ts'

interface Props {
  readonly findId: string
  readonly find: string
  readonly box: string
}

/** Said of one find, by hand, after it was carried. */
export function MovedButton({ findId, find, box }: Props) {
  const [said, send, busy] = useActionState(sayMoved, null)
  return (
    <form action={send} className="row">
      <input type="hidden" name="find" value={findId} />
      <input type="hidden" name="box" value={box} />
      {said?.ok !== true && (
        <button className="button" disabled={busy}>
          {busy ? 'Keeping …' : 'It is there now'}
          <span className="visually-hidden">{`, ${find} in ${box}`}</span>
        </button>
      )}
      <p role="status" className={said?.ok === false ? 'wrong' : undefined}>
        {said?.says}
      </p>
    </form>
  )
}
