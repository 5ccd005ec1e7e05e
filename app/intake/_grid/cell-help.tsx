import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import type { FieldName } from '../../../lib/record/fields.ts'
import { fieldLabel } from '../../../lib/wording/fact.ts'
import style from './below.module.css'

interface Props {
  readonly field: FieldName
  readonly flaw: string | null
  readonly knowledge: Knowledge
}

/** What the active cell asks for and what is wrong with it; the cell itself points here. */
export function CellHelp({ field, flaw, knowledge }: Props) {
  const words = knowledge.vocabulary.fields[field]
  return (
    <div className={style.help}>
      <p id="cell-help">
        <strong>{fieldLabel(field, knowledge)}. </strong>
        {flaw !== null && <span className="wrong">{`${flaw} `}</span>}
        {[words?.means, words?.tell].filter((text) => text !== undefined && text !== '').join(' ')}{' '}
        {(words?.values.length ?? 0) > 0 && (
          <a href={`/sources/words#${field}`}>All words and how to tell them</a>
        )}
      </p>
      <p id="grid-keys" className="soft small">
        Tab right, Enter down or on to the next find, F2 to change a cell, Ctrl+D to fill down, Ctrl+Enter for
        another part, Ctrl+Z to undo. Paste a block from a spreadsheet anywhere. Esc, then Tab, leaves the
        grid.
      </p>
    </div>
  )
}
