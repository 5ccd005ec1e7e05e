import { useEffect, useRef } from 'react'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { namesOf } from '../../../lib/knowledge/names.ts'
import { fieldOfHeading } from '../../../lib/record/heading.ts'
import { fieldLabel } from '../../../lib/wording/fact.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { placeBlock, type Block } from '../_sheet/paste.ts'
import { selected, type GridState } from '../_sheet/state.ts'
import style from './below.module.css'

interface Props {
  readonly cells: readonly (readonly string[])[]
  readonly state: GridState
  readonly knowledge: Knowledge
  readonly onPaste: (block: Block) => void
  readonly onLeave: () => void
}

const shown = 8

/** A block from a spreadsheet, shown as it would land before it lands. */
export function PastePreview({ cells, state, knowledge, onPaste, onLeave }: Props) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  const { top, left } = selected(state)
  const block = placeBlock(cells, left, state.columns, (heading) =>
    fieldOfHeading(heading, namesOf(knowledge.vocabulary).fields),
  )
  const over = state.sheet.rows
    .slice(top, top + block.rows.length)
    .filter(({ cells: there }) => Object.keys(there).length > 0)
  const lost = block.fields.filter((field) => field === null).length
  return (
    <dialog ref={dialog} className={style.dialog} aria-labelledby="paste-title" onClose={onLeave}>
      <h2 id="paste-title">{`Paste ${countWords(block.rows.length, 'row')}`}</h2>
      <p>
        {block.headed
          ? 'Its first line names the columns.'
          : 'Its columns are taken as they stand from the active cell on.'}{' '}
        {over.length > 0 &&
          `It goes over ${countWords(over.length, 'row')} that already hold something; one undo brings them back. `}
        {lost > 0 &&
          `${countWords(lost, 'column')} without a place here will not be taken over; import the file to keep them.`}
      </p>
      <div className={style.preview} tabIndex={0} role="region" aria-label="The first rows">
        <table>
          <thead>
            <tr>
              {block.fields.map((field, at) => (
                // A pasted column has no identity but its place.
                // oxlint-disable-next-line react/no-array-index-key
                <th key={at} scope="col">
                  {field === null ? (
                    <span className="wrong">{`${cells[0]?.[at] ?? ''} (not taken)`}</span>
                  ) : (
                    fieldLabel(field, knowledge)
                  )}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {block.rows.slice(0, shown).map((row, at) => (
              // oxlint-disable-next-line react/no-array-index-key
              <tr key={at}>
                {block.fields.map((field, column) => (
                  // oxlint-disable-next-line react/no-array-index-key
                  <td key={column} className={field === null ? 'soft' : undefined}>
                    {row[column]}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        {block.rows.length > shown && (
          <p className="soft">{`and ${countWords(block.rows.length - shown, 'more row')}`}</p>
        )}
      </div>
      <div className="row">
        <button className="button first" type="button" onClick={() => onPaste(block)}>
          Paste
        </button>
        <button className="button" type="button" onClick={onLeave}>
          Leave it
        </button>
      </div>
    </dialog>
  )
}
