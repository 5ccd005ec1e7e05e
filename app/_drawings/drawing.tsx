import { Suspense, use, type ReactNode } from 'react'
import style from './drawings.module.css'
import type { Drawings } from './kit/drawn.ts'
import { tone } from './kit/tones.ts'
import { drawingsComing, drawingsHere, hasDrawing } from './register.ts'

interface Props {
  /** As `evidence/white-metal-sheen` or `skin-edge/lifting-edge`. */
  readonly of: string
  /** What it shows, in words; left out where the words stand beside it. */
  readonly label?: string
  /** Where one drawing stands twice on a page: begins its ids. */
  readonly prefix?: string
}

/** A drawing of what may be seen; nothing where there is none. Its frame is there before its lines are. */
export function Drawing({ of, label, prefix = 'drawn' }: Props) {
  if (!hasDrawing(of)) return null
  const named = label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label }
  const id = `${prefix}-${of.replaceAll(/[^a-z0-9]+/g, '-')}`
  const here = drawingsHere(of)
  return (
    <svg
      className={style['drawing']}
      viewBox="0 0 160 120"
      fill="none"
      stroke={tone.line}
      strokeWidth="1.1"
      strokeLinejoin="round"
      focusable="false"
      {...named}
    >
      {here === undefined ? (
        <Suspense>
          <Fetched of={of} id={id} drawings={drawingsComing(of)} />
        </Suspense>
      ) : (
        here[of]?.(id)
      )}
    </svg>
  )
}

interface FetchedProps {
  readonly of: string
  readonly id: string
  /** From outside: asked for here, what failed would be asked for again without end. */
  readonly drawings: Promise<Drawings>
}

function Fetched({ of, id, drawings }: FetchedProps): ReactNode {
  return use(drawings)[of]?.(id)
}
