import type { ReactNode } from 'react'

/** Drawings by `field/value` or `question/answer`; each gets the word its ids begin with. */
export type Drawings = Readonly<Record<string, (id: string) => ReactNode>>
