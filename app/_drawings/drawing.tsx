import style from './drawings.module.css'
import { changes } from './changes.tsx'
import { copper } from './copper.tsx'
import { skins } from './evidence-skins.tsx'
import { fills } from './fills.tsx'
import { glass } from './glass.tsx'
import { iron } from './iron.tsx'
import type { Drawings } from './kit/drawn.ts'
import { tone } from './kit/tones.ts'
import { leadAndTin } from './lead-and-tin.tsx'
import { making } from './making.tsx'
import { organics } from './organics.tsx'
import { answers } from './questions/answers.ts'
import { record } from './record.tsx'
import { silver } from './silver.tsx'

const drawings: Drawings = {
  ...iron,
  ...copper,
  ...leadAndTin,
  ...silver,
  ...glass,
  ...changes,
  ...skins,
  ...fills,
  ...organics,
  ...making,
  ...record,
  ...answers,
}

/** Every key there is a drawing of. */
export const drawn: readonly string[] = Object.keys(drawings)

export const hasDrawing = (key: string): boolean => Object.hasOwn(drawings, key)

interface Props {
  /** As `evidence/white-metal-sheen` or `skin-edge/lifting-edge`. */
  readonly of: string
  /** What it shows, in words; left out where the words stand beside it. */
  readonly label?: string
  /** Where one drawing stands twice on a page: begins its ids. */
  readonly prefix?: string
}

/** A drawing of what may be seen; nothing where there is none. */
export function Drawing({ of, label, prefix = 'drawn' }: Props) {
  const draw = hasDrawing(of) ? drawings[of] : undefined
  if (draw === undefined) return null
  const named = label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label }
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
      {draw(`${prefix}-${of.replaceAll(/[^a-z0-9]+/g, '-')}`)}
    </svg>
  )
}
