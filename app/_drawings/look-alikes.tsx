import type { ReactNode } from 'react'
import { Drawing } from './drawing.tsx'
import style from './drawings.module.css'

/** What stands below a drawing: its name and what to look for, from the vocabulary or from a question. */
export interface LookAlikeWords {
  readonly label: string
  readonly tell?: string
}

interface Props {
  /** As `seen/orange-droplets`; what has no drawing stands in its words alone. */
  readonly keys: readonly string[]
  readonly words: (key: string) => LookAlikeWords
  /** What further belongs to each, such as a button that takes it as the answer. */
  readonly beside?: (key: string) => ReactNode
  /** Begins the ids of the drawings where the same ones stand twice on a page. */
  readonly prefix?: string
}

/** Things that are taken for one another, side by side: the same object and the same view, so that the difference shows. */
export function LookAlikes({ keys, words, beside, prefix = 'alike' }: Props) {
  return (
    <ul className={style['lookAlikes']}>
      {keys.map((key) => {
        const { label, tell } = words(key)
        return (
          <li key={key}>
            <figure className={style['lookAlike']}>
              <Drawing of={key} prefix={prefix} />
              <figcaption>
                <strong>{label}</strong>
                {tell !== undefined && <span>{tell}</span>}
              </figcaption>
            </figure>
            {beside?.(key)}
          </li>
        )
      })}
    </ul>
  )
}
