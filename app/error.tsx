'use client'

import { startTransition, useEffect } from 'react'
import { useRouter } from 'next/navigation'

interface Props {
  readonly error: Error & { readonly digest?: string }
  readonly reset: () => void
}

/** Something of ours broke: said plainly, with what to try and what to tell. */
export default function Fault({ error, reset }: Props) {
  const router = useRouter()
  // The page is made anew on the server too: what broke there broke before this was drawn.
  const again = () =>
    startTransition(() => {
      router.refresh()
      reset()
    })
  useEffect(() => {
    document.title = 'Error · Quietmetal'
  }, [])
  return (
    <div className="stack" role="alert">
      <h1>This page could not be made</h1>
      <p className="measure">
        The fault is ours, not yours. What was kept before is still kept, and what you typed in Intake is on
        this device. Try again; if it happens twice, tell whoever looks after this machine the number below.
      </p>
      {error.digest !== undefined && (
        <p>
          Number: <code>{error.digest}</code>
        </p>
      )}
      <div>
        <button className="button first" type="button" onClick={again}>
          Try again
        </button>
      </div>
    </div>
  )
}
