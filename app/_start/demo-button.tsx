'use client'

import type { ReactNode } from 'react'
import { useFormStatus } from 'react-dom'

export function DemoButton({ children }: { readonly children: ReactNode }) {
  const { pending } = useFormStatus()
  return (
    <>
      <button className="button" disabled={pending}>
        {children}
      </button>
      <span role="status">{pending ? ' Planning the invented finds; this takes some seconds …' : ''}</span>
    </>
  )
}
