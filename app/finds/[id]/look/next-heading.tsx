'use client'

import { useEffect, useRef, type ReactNode } from 'react'

/** The question. When another takes its place, whoever goes by keyboard or listens is taken on to it. */
export function NextHeading({ asked, children }: { readonly asked: string; readonly children: ReactNode }) {
  const heading = useRef<HTMLHeadingElement>(null)
  const before = useRef(asked)
  useEffect(() => {
    if (before.current !== asked) heading.current?.focus()
    before.current = asked
  }, [asked])
  return (
    <h2 id="look-next" ref={heading} tabIndex={-1}>
      {children}
    </h2>
  )
}
