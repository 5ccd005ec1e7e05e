import type { KeyboardEvent, PointerEvent } from 'react'
import type { Crosshair } from './use-crosshair.ts'
import style from './chart.module.css'

interface Props {
  /** What the chart shows, for who does not see it. */
  readonly name: string
  readonly cross: Crosshair
  readonly index: number
  readonly places: number
  /** The reading under the line; null where no line stands. */
  readonly words: string | null
  readonly onKeyDown: (event: KeyboardEvent) => void
  readonly pointer: Readonly<Record<`onPointer${string}`, (event: PointerEvent) => void>>
}

/**
 * The sheet of glass over a drawing: takes keys, mouse and finger, and carries the line and what is marked. The drawing below
 * is inert, or its every shape would be a stop of its own.
 */
export function Reader({ name, cross, index, places, words, onKeyDown, pointer }: Props) {
  const { at, markedFrom } = cross
  return (
    <div
      className={style.reader}
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-valuemin={1}
      aria-valuemax={Math.max(1, places)}
      aria-valuenow={index + 1}
      aria-valuetext={words ?? 'no line set; arrow keys set it'}
      onKeyDown={onKeyDown}
      {...pointer}
    >
      {at !== null && markedFrom !== null && (
        <div
          className={style.marked}
          style={{
            insetInlineStart: `${Math.min(at, markedFrom) * 100}%`,
            width: `${Math.abs(at - markedFrom) * 100}%`,
          }}
        />
      )}
      {at !== null && <div className={style.crosshair} style={{ insetInlineStart: `${at * 100}%` }} />}
    </div>
  )
}
