import type { ReactNode } from 'react'

/** A table that may be wider than the window: reached by keyboard, named, and scrolled by itself. */
export function Scroll({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    // Scrolling by keyboard needs a place for focus.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section className="scroll" tabIndex={0} aria-label={name}>
      {children}
    </section>
  )
}
